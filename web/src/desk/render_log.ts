// Draws the log: one line a set with undo on the latest entry; opened, a line shows its order and every entry, each with its own.
import { make, part, shown, text } from "./dom";
import type { Chip, Row } from "./log";

/** So many characters of an entry fit on its undo. */
const UNDO_SHOWS = 14;
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

/** The latest entry that stands and can be taken back, of the latest line. */
const latestEntry = (row: Row): Chip | undefined => row.chips.filter((chip) => chip.standing === "current" && !chip.unreadable && !chip.refused).at(-1);

/** Cut between words, where there are two: what is seen is then part of what is read aloud. */
function cut(short: string): string {
  if (short.length <= UNDO_SHOWS) return short;
  const whole = short.slice(0, UNDO_SHOWS).replace(/\s+\S*$/, "");
  return `${whole.slice(0, UNDO_SHOWS - 1)}…`;
}

function undoButton({ id, text: entry, short }: Chip): HTMLButtonElement {
  const words = cut(short);
  const undo = button("take_back", id, `undo “${words}”`, `undo: ${entry}`);
  undo.className = "undo";
  return undo;
}

/** Of what was kept before, the minute is enough; the latest line says that it is kept. */
const statusWords = ({ saving, status }: Row, latest: boolean): string =>
  saving === "saved" && !latest ? status.replace(/^.*?(\d+:\d+):\d+( [ap]m)?.*$/, "$1$2") : status;

/** The line itself is what opens it. */
function drawLine(row: Row, open: boolean, latest: boolean): HTMLButtonElement {
  const line = make("button", "", { type: "button", class: "line", "data-act": "open_row", "data-row": row.set ?? "", "aria-expanded": String(open) });
  const said = make("span", "", { class: "said" });
  if (row.ending !== "") said.append(make("strong", row.ending, row.broken ? { "data-broken": "" } : {}));
  if (row.said !== "") said.append(row.ending === "" ? "" : " · ", row.said);
  line.append(
    make("b", row.number),
    " ",
    make("span", row.done, { class: "done" }),
    " ",
    said,
    " ",
    make("span", row.rated, { class: "rated" }),
    " ",
    make("small", statusWords(row, latest), { class: "status" }),
  );
  return line;
}

/** What needs to be seen is open by itself. */
const needsLook = (row: Row): boolean => row.chips.some((chip) => chip.saving === "failed" || chip.unreadable);

function drawRow(row: Row, open: boolean, isLatest: boolean): HTMLLIElement {
  const item = make("li", "", { "data-saving": row.saving ?? "saved", ...(isLatest ? { class: "latest" } : {}) });
  const undo = isLatest && !open ? latestEntry(row) : undefined;
  const more = make("div", "", { class: "more" });
  const chips = make("ul", "", { role: "list" });
  chips.append(...row.chips.map(drawChip));
  more.append(make("p", row.order, { class: "order" }), chips);
  more.hidden = !open;
  item.append(drawLine(row, open, isLatest), ...(undo === undefined ? [] : [undoButton(undo)]), more);
  return item;
}

const isOpen = (row: Row, opened: string | null): boolean => (row.set ?? "") === opened || needsLook(row);

/** Redraws the log when anything in it changed, and keeps the focus on the same button. `opened`: the set whose line is open, "" for what came before. */
export function renderLog(rows: Row[], opened: string | null, hint: string, unsaved: boolean): void {
  const key = JSON.stringify([rows, opened]);
  const hintPart = part("log-hint");
  text(hintPart, hint);
  shown(hintPart, hint !== "");
  document.documentElement.toggleAttribute("data-unsaved", unsaved);
  if (key === drawn) return;
  drawn = key;
  const list = part("log");
  const focused = document.activeElement instanceof HTMLElement && list.contains(document.activeElement) ? { ...document.activeElement.dataset } : null;
  list.replaceChildren(...rows.map((row, index) => drawRow(row, isOpen(row, opened), index === 0)));
  if (focused === null) return;
  const same = [...list.querySelectorAll<HTMLButtonElement>("button")].filter((one) => one.dataset.entry === focused.entry && one.dataset.row === focused.row);
  (same.find((one) => one.dataset.act === focused.act) ?? same[0])?.focus({ preventScroll: true });
}
