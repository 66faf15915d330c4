/**
 * Search as one types: the form is sent by itself, and of its answer only the list is taken. Without a script the same form is sent by its
 * button.
 */

/** Typing has come to rest, ms. */
const REST = 200;

/** Binds `form`, whose `data-live` names the list. */
export function liveSearch(form: HTMLFormElement): void {
  let pending: XMLHttpRequest | undefined;
  let resting: ReturnType<typeof setTimeout> | undefined;

  function search(): void {
    pending?.abort();
    const address = new URL(form.action);
    for (const [name, value] of new FormData(form)) if (typeof value === "string" && value !== "") address.searchParams.set(name, value);
    // Read as a document by the browser itself: the pages' policy lets no script turn text into markup.
    const request = new XMLHttpRequest();
    pending = request;
    request.open("GET", address);
    request.setRequestHeader("accept", "text/html");
    request.responseType = "document";
    request.onload = () => {
      const list = request.status === 200 ? request.responseXML?.getElementById(form.dataset["live"] ?? "") : undefined;
      // Whatever it is, the page that says so is the one to show.
      if (!list) return location.assign(address);
      document.getElementById(list.id)?.replaceWith(document.importNode(list, true));
      history.replaceState(null, "", address);
    };
    // The list would stand there as if nothing else fitted: sent as a form, the browser says what is wrong.
    request.onerror = () => form.requestSubmit();
    request.send();
  }

  form.addEventListener("input", () => {
    clearTimeout(resting);
    resting = setTimeout(search, REST);
  });
}
