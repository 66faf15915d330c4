/** Words that stand beside a field, from the record: a button takes them into it. Nothing goes there by itself. */

/** Binds `button`, whose `data-words` go into the field that `data-into` names. Without a script they are there to be read. */
export function takesWords(button: HTMLButtonElement): void {
  const { into = "", words = "" } = button.dataset;
  const field = document.getElementById(into);
  if (!(field instanceof HTMLInputElement || field instanceof HTMLTextAreaElement)) return;
  button.hidden = false;
  button.addEventListener("click", () => {
    field.value = joined(field.value, words);
    // As if it had been typed: a form that was changed asks before it is left.
    field.dispatchEvent(new Event("input", { bubbles: true }));
    field.focus();
  });
}

/** What was typed stays: the words come after it, once. */
export function joined(typed: string, words: string): string {
  const before = typed.trim();
  if (before.includes(words)) return before;
  return before === "" ? words : `${before}, ${words}`;
}
