// Draws the panels: which one is open, and what the seat and the switches say.
import type { SeatState } from "../wire/SeatState";
import { attribute, part, shown, text } from "./dom";
import { beside, digitWords, nextWords } from "./between";
import { isAtTheDoor, type DeskState, type Lower } from "./model";
import { SEEN, TRIED } from "./words";

const PANELS: readonly Lower[] = ["log", "join", "opening", "phase", "between", "steady", "safety", "closing", "card", "target", "mechanics", "keys"];
/** These have a place of their own in a wide window. */
const BESIDE: readonly Lower[] = ["target", "card"];

const SEATS: Record<SeatState, string> = {
  empty: "Nobody is in the client's seat. Send the link, then say the code.",
  waiting: "Somebody waits to be let in.",
  admitted: "The client is admitted.",
  left: "The client has left. They can come back by the link and a new code.",
};

const DIGITS = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9] as const;

function renderBetween(state: DeskState): void {
  const { saw, tried } = beside(state);
  const said = new Set<string>([...SEEN.filter(([code]) => saw.includes(code)), ...TRIED.filter(([code]) => tried.includes(code))].map(([, words]) => words));
  for (const digit of DIGITS) {
    const button = part(`between-${digit}`);
    const words = digitWords(digit);
    const label = button.querySelector("span");
    if (label !== null) text(label, words);
    attribute(button, "aria-pressed", String(said.has(words)));
  }
  text(part("between-hint"), nextWords(state.log.next) ?? "Each is optional, and can be taken back in the log.");
}

/** See the head of this file. */
export function renderPanels(state: DeskState): void {
  const { view, wide } = state;
  const lower = wide && BESIDE.includes(state.lower) ? "log" : state.lower;
  for (const name of PANELS) {
    const panel = document.querySelector<HTMLElement>(`[data-panel="${name}"]`);
    if (panel !== null) shown(panel, lower === name || (wide && (name === "log" || BESIDE.includes(name))));
    for (const button of document.querySelectorAll(`[data-act="lower"][data-shown="${name}"]`)) attribute(button, "aria-expanded", String(lower === name));
  }
  attribute(part("desk-state"), "data-lower", lower);
  shown(part("seat"), (view?.seat_asked_for ?? false) && view?.state !== "closed");
  shown(part("links"), view?.seat !== "waiting");
  shown(part("remove-seat"), view?.seat === "waiting" || view?.seat === "admitted");
  text(part("seat-state"), view === null ? "" : SEATS[view.seat]);
  text(part("link-tab"), isAtTheDoor(state) ? "Link: 1" : "Link");
  renderBetween(state);
  attribute(part("shortcuts"), "aria-pressed", String(state.shortcuts));
  text(part("shortcuts"), state.shortcuts ? "single keys are on" : "single keys are off");
  attribute(part("preview-toggle"), "aria-pressed", String(state.preview));
  text(part("preview-words"), state.preview ? "preview is shown" : "preview is hidden");
  attribute(part("preview"), "data-shown", state.preview ? "yes" : "no");
}
