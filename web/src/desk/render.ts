// Draws the state: one function, no decisions beyond what to show where. Words come from status.ts and words.ts.
import type { ClockError } from "../wire/ClockError";
import type { SeatState } from "../wire/SeatState";
import { hasUnsaved, isSignedOut } from "./entries";
import { lastRating, rows, standing, written } from "./log";
import { hasSet, isAtTheDoor, isBusy, isLive, shownPlan, type DeskState, type Lower, type Scale } from "./model";
import { whyNoStart } from "./orders";
import { attribute, part, shown, text } from "./dom";
import { renderCourse } from "./render_course";
import { renderLog } from "./render_log";
import {
  apartWords,
  bandStops,
  departures,
  holdWords,
  isStuck,
  isUnknown,
  keysOff,
  orderedWords,
  progressWords,
  showingWords,
  stateWord,
  stripWords,
  titleWords,
  type StateWord,
} from "./status";
import { channelWords, degrees, hertz, lengthWords, MOMENT_WORDS, PATH_WORDS } from "./words";

/** What the page knows beside the state. */
export interface Surroundings {
  /** Page time, ms. */
  now: number;
  /** Room time, or null while the clock is not known. */
  room: number | null;
  /** How well this page knows the room's time: what to expect and what it cannot exceed, ms. */
  clock: ClockError | null;
  callBack: string;
  /** What the page is called, for the tab's title. */
  page: string;
  /** The window is wide enough for the target card and the course beside the column. */
  wide: boolean;
}

const shapeOf = (word: StateWord): string => `#shape-${word.toLowerCase().replaceAll(" ", "-")}`;

function renderBand(state: DeskState, around: Surroundings): void {
  const word = stateWord(state, around.now);
  text(part("word"), word);
  attribute(part("shape"), "href", shapeOf(word));
  attribute(part("desk-state"), "data-word", word.toLowerCase().replaceAll(" ", "-"));
  const title = titleWords(state, around.now, around.page);
  if (document.title !== title) document.title = title;
  shown(part("door"), isAtTheDoor(state) && word !== "AT THE DOOR");
  text(part("progress"), word === "HOLD" ? holdWords(state, around.now) : word === "UNKNOWN" ? "" : progressWords(state));
  const closed = word === "CLOSED";
  const lost = word === "LINK LOST" || word === "CLIENT HAS LEFT" || (word === "UNKNOWN" && state.view !== null);
  shown(part("showing-name"), !lost && !closed);
  shown(part("ordered-line"), !lost && !closed);
  attribute(part("showing-line"), "data-lost", lost ? "" : null);
  text(part("showing"), showingWords(state, around.now, around.callBack));
  text(part("ordered"), orderedWords(state));
  const notes = closed ? "" : [...departures(state), ...apartWords(state, around.clock)].join("; ");
  text(part("departures"), notes);
  // In a narrow window the line is cut off: the pointer reads all of it.
  attribute(part("departures"), "title", notes === "" ? null : notes);
  shown(part("record-waits"), state.view?.record_waits ?? false);
  shown(part("band-stop"), bandStops(state, around.now));
  shown(part("keys-off"), keysOff(state));
  attribute(part("band-stop"), "data-off", keysOff(state) ? "" : null);
}

function renderStrip(state: DeskState, around: Surroundings): void {
  const words = stripWords(state, around.now, around.room);
  text(part("message-1"), words[0] ?? "");
  text(part("message-2"), words[1] ?? "");
  attribute(part("messages"), "data-alone", words.length === 1 ? "" : null);
  shown(part("take-control"), state.view !== null && !state.view.in_control && state.view.state !== "closed");
  shown(part("record"), state.view?.state === "closed");
  shown(part("sign-in"), isSignedOut(state.queue) || state.sentAway === "signed_out");
  // Seconds that count up are for the eye only; a reader hears each message once.
  const spoken = [
    stateWord(state, around.now),
    keysOff(state) ? "keys off" : "",
    state.view?.seat_asked_for ? "At the door: another device asks to join" : "",
    holdWords(state, around.now),
    ...words.slice(0, 2),
  ];
  text(
    part("announce"),
    spoken
      .filter((one) => one !== "")
      .map((one) => one.replace(/\.$/, ""))
      .join(". ")
      .replace(/, \d+ s/g, "")
      .replace(/in \d+ s/g, "soon"),
  );
}

function renderControls(state: DeskState, around: Surroundings): void {
  const closed = state.view?.state === "closed";
  const running = hasSet(state);
  const off = (name: string, unavailable: boolean): void => attribute(part(name), "aria-disabled", unavailable ? "true" : null);
  for (const control of document.querySelectorAll(".controls [data-act]:not([data-part]), .marks [data-act=arm]"))
    attribute(control, "aria-disabled", closed ? "true" : null);
  off("start", whyNoStart(state, around.now) !== null);
  off("end", !running);
  off("extend", !running || shownPlan(state)?.length.kind === "open");
  const live = isLive(state);
  const sight = live && state.view?.needs.sight === true;
  off("sight", !sight);
  off("cannot-see", !live);
  attribute(part("sight"), "data-wanted", sight && state.view?.stage_here ? "yes" : null);
  const last = state.view?.set?.number ?? state.log.sets.at(-1)?.number ?? 0;
  text(part("next-set"), `SET ${isBusy(state) ? last : last + 1}`);
}

function renderPlan(state: DeskState): void {
  const plan = shownPlan(state);
  const widest = state.view?.widest ?? null;
  text(part("rate"), plan === null ? "" : hertz(plan.rate));
  text(part("width"), plan === null ? "" : degrees(plan.width));
  attribute(part("width"), "title", widest === null ? null : `the client's screen shows up to ${degrees(Math.floor(widest * 10) / 10)}`);
  text(part("length"), plan === null ? "length" : lengthWords(plan.length));
  text(part("dot-size"), plan === null ? "dot" : `dot ${degrees(plan.dot)}`);
  text(part("path"), plan === null ? "path" : PATH_WORDS[plan.path]);
  text(part("channels"), plan === null ? "channels" : channelWords(plan));
}

const SCALES: Scale[] = ["sud", "voc"];

function renderRatings(state: DeskState): void {
  for (const scale of SCALES) {
    const armed = state.armed?.scale === scale;
    const last = lastRating(state, scale);
    text(part(`last-${scale}`), last === null ? scale.toUpperCase() : `${scale.toUpperCase()} ${last}`);
    const button = document.querySelector(`[data-act="arm"][data-scale="${scale}"]`);
    if (button !== null) attribute(button, "aria-expanded", String(armed));
    const pad = document.querySelector<HTMLElement>(`[data-pad="${scale}"]`);
    if (pad !== null) shown(pad, armed);
    text(part(`moment-${scale}`), state.armed === null ? "" : MOMENT_WORDS[state.armed.moment]);
  }
}

const PANELS: Lower[] = ["log", "join", "card", "target", "presets", "keys"];

function renderPanels(state: DeskState, wide: boolean): void {
  // In a wide window the target card has a place of its own, so the log need not give way to it.
  const lower = wide && state.lower === "target" ? "log" : state.lower;
  for (const name of PANELS) {
    const panel = document.querySelector<HTMLElement>(`[data-panel="${name}"]`);
    if (panel !== null) shown(panel, lower === name || (wide && name === "target"));
    const button = document.querySelector(`[data-act="lower"][data-shown="${name}"]`);
    if (button !== null) attribute(button, "aria-pressed", String(lower === name));
  }
  attribute(part("desk-state"), "data-lower", lower);
  shown(part("seat"), (state.view?.seat_asked_for ?? false) && state.view?.state !== "closed");
  const seats: Record<SeatState, string> = {
    empty: "Nobody is in the client's seat. Send the link, then say the code.",
    waiting: "Somebody waits. Confirm who it is and where, then admit.",
    admitted: "The client is admitted.",
    left: "The client has left. They can come back by the link and a new code.",
  };
  shown(part("remove-seat"), state.view?.seat === "waiting" || state.view?.seat === "admitted");
  text(part("seat-state"), state.view === null ? "" : seats[state.view.seat]);
  attribute(part("shortcuts"), "aria-pressed", String(state.shortcuts));
  text(part("shortcuts"), state.shortcuts ? "single keys are on" : "single keys are off");
  attribute(part("preview"), "data-shown", state.preview ? "yes" : "no");
}

/** Draws all of it. */
export function render(state: DeskState, around: Surroundings): void {
  renderBand(state, around);
  renderStrip(state, around);
  renderControls(state, around);
  renderPlan(state);
  renderRatings(state);
  renderPanels(state, around.wide);
  shown(part("stuck"), !isBusy(state) && isStuck(state));
  const hint = state.logRead ? "" : "The log is being read.";
  const running = isBusy(state) && !isUnknown(state, around.now) ? (state.view?.set?.id ?? null) : null;
  renderLog(rows(state.log, state.queue, around.now, running), hint, hasUnsaved(state.queue));
  const entries = standing(written(state.log, state.queue));
  for (const scale of SCALES) renderCourse(part(`course-${scale}`), state.log, entries, scale);
}
