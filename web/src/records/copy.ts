/**
 * Numbers to call and links to send are copied by a button: `data-copy` names the element that holds the text. The button is hidden until
 * this script shows it; without one the text is selected by hand as ever.
 */
import { copied } from "../clipboard";

/** Binds `button`. What came of it stands beside it until something is copied again. */
export function copies(button: HTMLButtonElement): void {
  const source = document.getElementById(button.dataset["copy"] ?? "");
  if (!source) return;
  const said = document.createElement("span");
  said.className = "said";
  said.setAttribute("aria-live", "polite");
  button.after(said);
  button.hidden = false;
  button.addEventListener("click", () => {
    for (const other of document.querySelectorAll(".said")) other.textContent = "";
    void copy(source).then((done) => {
      said.textContent = done ? "Copied" : "Selected: copy it by hand";
    });
  });
}

/** Whether the clipboard has it; if the browser lets nobody at that, the text is selected. */
async function copy(source: HTMLElement): Promise<boolean> {
  const done = await copied(source instanceof HTMLTextAreaElement ? source.value : (source.textContent ?? "").trim());
  if (!done) select(source);
  return done;
}

function select(source: HTMLElement): void {
  if (source instanceof HTMLTextAreaElement) {
    source.focus();
    source.select();
  } else {
    getSelection()?.selectAllChildren(source);
  }
}
