/**
 * Search as one types: the form is sent by itself, and of its answer only the list is taken. Without a script the same form is sent by its
 * button.
 */

/** Typing has come to rest, ms. */
const REST = 200;

/** Binds `form`, whose `data-live` names the list. */
export function liveSearch(form: HTMLFormElement): void {
  let pending: AbortController | undefined;
  let resting: ReturnType<typeof setTimeout> | undefined;

  async function search(): Promise<void> {
    pending?.abort();
    const mine = new AbortController();
    pending = mine;
    const address = new URL(form.action);
    for (const [name, value] of new FormData(form)) if (typeof value === "string" && value !== "") address.searchParams.set(name, value);
    const answer = await fetch(address, { headers: { accept: "text/html" }, signal: mine.signal });
    // Whatever it is, the page that says so is the one to show.
    if (!answer.ok) return location.assign(address);
    const page = new DOMParser().parseFromString(await answer.text(), "text/html");
    const list = page.getElementById(form.dataset["live"] ?? "");
    if (!list || mine.signal.aborted) return;
    document.getElementById(list.id)?.replaceWith(document.importNode(list, true));
    history.replaceState(null, "", address);
  }

  form.addEventListener("input", () => {
    clearTimeout(resting);
    resting = setTimeout(() => {
      // A line that is gone says so when the form is sent.
      search().catch(() => undefined);
    }, REST);
  });
}
