/** Help at the top of the client's page: it takes its room from what is read, never covers it, and gives way to anything new. */

/** Binds the `details` of Help; `page`: where what is read stands. @returns what closes it. */
export function bindHelp(help: HTMLDetailsElement, page: HTMLElement): () => void {
  const close = (): void => {
    help.open = false;
  };
  help.addEventListener("toggle", () => {
    document.body.toggleAttribute("data-help", help.open);
    page.querySelector(".main")?.scrollIntoView({ block: "nearest" });
  });
  // A tap anywhere else is the second one.
  addEventListener("pointerdown", (event) => {
    if (!help.contains(event.target as Node)) close();
  });
  return close;
}
