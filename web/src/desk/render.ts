// Draws the state: one function, no decisions beyond what to show where. Words come from band.ts, status.ts and words.ts.
import type { ClockError } from "../wire/ClockError";
import { apartWords, asideWords, departures, isLost, lostWords, notesInShort, orderedName, orderedWords, progressPart, showingWords } from "./band";
import { attribute, make, part, shown, text } from "./dom";
import { hasUnsaved, isSignedOut } from "./entries";
import { rows, standing, written } from "./log";
import { isAtTheDoor, isBusy, type DeskState } from "./model";
import { renderControls, renderPlan } from "./render_controls";
import { renderCourse } from "./render_course";
import { renderEntries } from "./render_entries";
import { renderLog } from "./render_log";
import { renderOpening } from "./render_opening";
import { renderPhase } from "./render_phase";
import { renderReach } from "./render_reach";
import { renderPanels } from "./render_panels";
import { elapsedWords } from "./time";
import { bandStops, isUnknown, isViewOnly, keysOff, spokenWords, stateWord, stripWords, usualWords, titleWords, type StateWord } from "./status";

/** What the page knows beside the state. */
export interface Surroundings {
  /** Page time, ms. */
  now: number;
  /** Room time, or null while the clock is not known. */
  room: number | null;
  /** How well this page knows the room's time: what to expect and what it cannot exceed, ms. */
  clock: ClockError | null;
  callBack: string;
  /** How that number may be used, in words. */
  phoneUse: string;
  /** What the page is called, for the tab's title. */
  page: string;
}

const lowered = (word: StateWord): string => word.toLowerCase().replaceAll(" ", "-");

function renderBand(state: DeskState, around: Surroundings): void {
  const word = stateWord(state, around.now);
  text(part("word"), word);
  attribute(part("shape"), "href", `#shape-${lowered(word)}`);
  attribute(part("desk-state"), "data-word", lowered(word));
  attribute(part("desk-state"), "data-private", state.private ? "hidden" : null);
  const title = titleWords(state, around.now, around.page);
  if (document.title !== title) document.title = title;
  text(part("progress"), asideWords(state, around.now, around.room));
  const lost = isLost(state, around.now);
  shown(part("facts"), !lost);
  shown(part("call"), lost);
  text(part("call-number"), around.callBack);
  shown(part("call-known"), around.callBack !== "");
  shown(part("call-unknown"), around.callBack === "");
  shown(part("copy-number"), around.callBack !== "");
  const lostNow = lostWords(state, around.now);
  text(part("call-words"), lostNow === "" ? "" : `${lostNow} The number: ${around.phoneUse}.`);
  const closed = word === "CLOSED";
  shown(part("showing-name"), !closed);
  shown(part("ordered-name"), !closed);
  text(part("showing"), showingWords(state, around.now));
  text(part("ordered-name"), orderedName(state));
  text(part("ordered"), orderedWords(state));
  text(part("elapsed"), elapsedWords(state, around.now));
  const done = progressPart(state);
  part("bar").style.transform = `scaleX(${done === null ? 0 : done.toFixed(3)})`;
  attribute(part("private"), "aria-pressed", String(state.private));
  text(part("private-word"), state.private ? "hidden" : "hide");
}

function renderNotes(state: DeskState, around: Surroundings): void {
  const word = stateWord(state, around.now);
  const notes = word === "CLOSED" || isLost(state, around.now) ? [] : [...departures(state), ...apartWords(state, around.clock)];
  text(part("departures"), notesInShort(notes));
  shown(part("door"), isAtTheDoor(state) && word !== "AT THE DOOR");
  shown(part("view-only"), isViewOnly(state));
  shown(part("record-waits"), state.view?.record_waits ?? false);
  shown(part("band-stop"), bandStops(state, around.now));
  shown(part("keys-off"), keysOff(state));
  attribute(part("band-stop"), "data-off", keysOff(state) ? "" : null);
  const list = part("all-notes");
  const key = notes.join("\n");
  if (list.dataset.notes === key) return;
  list.dataset.notes = key;
  list.replaceChildren(...notes.map((note) => make("li", note)));
}

/** A stop by the client and a line that is lost break into what a reader is saying; the rest waits its turn. */
const PRESSING: readonly StateWord[] = ["LINK LOST", "STOPPED BY CLIENT"];

function renderStrip(state: DeskState, around: Surroundings): void {
  const words = stripWords(state, around.now, around.room);
  const seen = words.length === 0 ? usualWords(state, around.now) : words;
  text(part("message-1"), seen[0] ?? "");
  text(part("message-2"), seen[1] ?? "");
  attribute(part("messages"), "data-alone", seen.length === 1 ? "" : null);
  shown(part("take-control"), isViewOnly(state));
  shown(part("record"), state.view?.state === "closed");
  shown(part("sign-in"), isSignedOut(state.queue) || state.sentAway === "signed_out");
  const pressing = PRESSING.includes(stateWord(state, around.now));
  const spoken = spokenWords(state, around.now, words);
  text(part("announce"), pressing ? "" : spoken);
  text(part("announce-now"), pressing ? spoken : "");
}

/** Draws all of it. */
export function render(state: DeskState, around: Surroundings): void {
  renderBand(state, around);
  renderNotes(state, around);
  renderStrip(state, around);
  renderControls(state, around.now);
  renderPlan(state);
  renderEntries(state);
  renderPanels(state);
  renderOpening(state);
  renderPhase(state);
  renderReach(state);
  const hint = state.logRead ? (state.log.sets.length === 0 ? "No set yet. The first line comes with the first set." : "") : "The log is being read.";
  const running = isBusy(state) && !isUnknown(state, around.now) ? (state.view?.set?.id ?? null) : null;
  renderLog(rows(state.log, state.queue, around.now, running), state.openRow, hint, hasUnsaved(state.queue));
  const entries = standing(written(state.log, state.queue));
  for (const scale of ["sud", "voc"] as const) renderCourse(part(`course-${scale}`), state.log, entries, scale);
}
