/** A file can be chosen where its text can be pasted: `data-file` on the form names the field. Without a script it is pasted. */

/** More than any form of questions has; what a form may send ends there too. */
const MOST_BYTES = 200_000;

/** Binds `form`. What was chosen stands in the field, to be looked at before it is sent. */
export function takesFile(form: HTMLFormElement): void {
  const text = form.querySelector<HTMLTextAreaElement>(`[name="${form.dataset["file"] ?? ""}"]`);
  if (!text) return;
  const label = document.createElement("label");
  const input = document.createElement("input");
  const said = document.createElement("p");
  input.type = "file";
  input.accept = ".json,application/json";
  input.id = "chosen-file";
  label.htmlFor = input.id;
  label.textContent = "Or choose the file";
  said.className = "hint";
  said.setAttribute("aria-live", "polite");
  const row = document.createElement("p");
  row.append(label, input);
  text.closest("p")?.after(row, said);
  input.addEventListener("change", () => void read(input.files?.[0], text, said));
}

async function read(file: File | undefined, text: HTMLTextAreaElement, said: HTMLElement): Promise<void> {
  if (!file) return;
  if (file.size > MOST_BYTES) {
    said.textContent = `${file.name} is too large for a form of questions, so it was not taken. Look for the file that has one form alone.`;
    return;
  }
  text.value = await file.text();
  text.dispatchEvent(new Event("input", { bubbles: true }));
  said.textContent = `${file.name} stands above. Look at it, then load it.`;
}
