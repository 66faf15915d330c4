// Draws the log: a block a set, a chip an entry, undo on the chip.
import { make, part, shown, text } from "./dom";
import type { Chip, Row } from "./log";

let drawn = "";

const button = (act: string, entry: string, words: string, label: string): HTMLButtonElement =>
  make("button", words, { type: "button", "data-act": act, "data-entry": entry, "aria-label": label });

function chipButtons(chip: Chip): HTMLButtonElement[] {
  if (chip.refused) {
    return [button("retry", chip.id, "retry", `retry: ${chip.text}`), button("edit", chip.id, "edit", `edit: ${chip.text}`)];
  }
  if (chip.standing === "replaced" || chip.unreadable) return [];
  if (chip.standing === "taken_back") return [button("put_back", chip.id, "put back", `put back: ${chip.text}`)];
  const undo = button("take_back", chip.id, "undo", `undo: ${chip.text}`);
  return chip.saving === "failed" ? [button("retry", chip.id, "retry", `retry: ${chip.text}`), undo] : [undo];
}

function drawChip(chip: Chip): HTMLLIElement {
  const item = make("li", "", { "data-standing": chip.standing, "data-saving": chip.saving });
  const said = make("span", "");
  const value = make(chip.standing === "current" ? "span" : "s", chip.text, { class: "value" });
  const status = chip.standing === "replaced" ? `corrected, ${chip.status}` : chip.status;
  said.append(value, " ", make("small", status, { class: "status" }));
  item.append(said, ...chipButtons(chip));
  return item;
}

function drawRow(row: Row): HTMLLIElement {
  const item = make("li", "");
  const head = make("p", "", { class: "head" });
  head.append(make("span", row.head, { class: "number" }), " ", make("strong", row.ending, row.broken ? { "data-broken": "" } : {}));
  const chips = make("ul", "", { role: "list" });
  chips.append(...row.chips.map(drawChip));
  item.append(head, chips);
  return item;
}

/** Redraws the log when anything in it changed, and keeps the focus on the same button. */
export function renderLog(rows: Row[], hint: string, unsaved: boolean): void {
  const key = JSON.stringify(rows);
  const hintPart = part("log-hint");
  text(hintPart, hint);
  shown(hintPart, hint !== "");
  document.documentElement.toggleAttribute("data-unsaved", unsaved);
  if (key === drawn) return;
  drawn = key;
  const list = part("log");
  const focused = document.activeElement instanceof HTMLElement && list.contains(document.activeElement) ? document.activeElement.dataset : null;
  list.replaceChildren(...rows.map(drawRow));
  if (focused?.entry === undefined) return;
  const again = [...list.querySelectorAll<HTMLButtonElement>("button")].filter((one) => one.dataset.entry === focused.entry);
  (again.find((one) => one.dataset.act === focused.act) ?? again[0])?.focus({ preventScroll: true });
}
