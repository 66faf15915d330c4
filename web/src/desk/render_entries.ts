// Draws what is given between sets: where the words belong, the mark that stands, and the numbers of the armed scale.
import type { Moment } from "../wire/Moment";
import { attribute, part, text } from "./dom";
import { currentChanges, lastRating, presentSet, tooMuchHere } from "./log";
import { isBusy, type DeskState, type Scale } from "./model";

const SCALES: readonly Scale[] = ["sud", "voc"];
/** The least and the most of each scale, and what they mean, in a word that fits under the number. */
const ENDS: Record<Scale, { least: [number, string]; most: [number, string] }> = {
  sud: { least: [0, "none"], most: [10, "worst"] },
  voc: { least: [1, "false"], most: [7, "true"] },
};
/** When it was asked, as a sentence has it. */
const MOMENT_ASKED: Record<Moment, string> = {
  assessment: "at assessment",
  after_set: "after a set",
  back_at_target: "at the target",
  installation: "to install",
  closing: "at closing",
  reevaluation: "to re-evaluate",
  opening: "in the opening",
};
const NUMBERS = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10] as const;

function placeWords(state: DeskState): string {
  const last = state.view?.set?.number ?? state.log.sets.at(-1)?.number ?? 0;
  if (presentSet(state) === null) return "before set 1";
  return `${isBusy(state) ? "in" : "after"} set ${last}`;
}

function renderNumbers({ armed }: DeskState): void {
  const ends = armed === null ? null : ENDS[armed.scale];
  attribute(part("ratings"), "data-armed", armed?.scale ?? null);
  for (const number of NUMBERS) {
    const on = ends !== null && number >= ends.least[0] && number <= ends.most[0];
    attribute(part(`number-${number}`), "aria-disabled", on ? null : "true");
    text(part(`end-${number}`), ends?.least[0] === number ? ends.least[1] : ends?.most[0] === number ? ends.most[1] : "");
  }
  text(part("moment"), armed === null ? "s or v first" : armed.segment === null ? `asked ${MOMENT_ASKED[armed.moment]}` : `of segment ${armed.segment}`);
  attribute(part("moment-button"), "aria-disabled", armed === null ? "true" : null);
}

/** See the head of this file. */
export function renderEntries(state: DeskState): void {
  text(part("words-for"), placeWords(state));
  const mark = state.log.sets.at(-1)?.id === presentSet(state) ? currentChanges(state)[0] : null;
  for (const button of document.querySelectorAll<HTMLElement>("[data-act=mark]")) attribute(button, "aria-pressed", String(button.dataset.change === mark));
  attribute(part("too-much"), "aria-pressed", String(tooMuchHere(state) !== null));
  for (const scale of SCALES) {
    const last = lastRating(state, scale);
    text(part(`last-${scale}`), last === null ? "" : String(last));
    const button = document.querySelector(`[data-act="arm"][data-scale="${scale}"]`);
    if (button !== null) attribute(button, "aria-pressed", String(state.armed?.scale === scale));
  }
  renderNumbers(state);
}
