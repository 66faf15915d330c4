// The opening of the hour: what is confirmed before work begins, one key a matter. Pure. What holds a start is the server's word.
import type { Answer } from "../wire/Answer";
import type { Because } from "../wire/Because";
import type { Hold } from "../wire/Hold";
import type { Matter } from "../wire/Matter";
import { standing, written } from "./log";
import type { DeskState, Step } from "./model";
import { say, unchanged } from "./orders";
import { ASKED, CODES, RATED, TIME } from "./opening_asks";
import { rateAt, writeOpening } from "./ratings";
import { appointment, appointmentWords, TIME_CHOICES } from "./time";

/** How a matter stands here, kept or on its way. */
export interface Found {
  answer: Answer | null;
  again: boolean;
  /** Gone past, for this reason. */
  because: Because | null;
}

/** What was said last of each matter. */
export function found(state: DeskState): Map<Matter, Found> {
  const all = new Map<Matter, Found>();
  for (const { value } of standing(written(state.log, state.queue))) {
    if (value.kind === "answered") all.set(matterOf(value.answer), { answer: value.answer, again: value.again, because: null });
    if (value.kind === "passed") all.set(value.matter, { answer: all.get(value.matter)?.answer ?? null, again: false, because: value.because });
  }
  return all;
}

const MATTERS = new Map(ASKED.flatMap(({ matter, answers }) => answers.map(([answer]) => [answer, matter] as const)));
const matterOf = (answer: Answer): Matter => MATTERS.get(answer) ?? "arrival";

const holdOf = (state: DeskState, matter: Matter): Hold | undefined => state.view?.holds.find((hold) => hold.matter === matter);

/** One line of the panel. */
export interface Line {
  matter: Matter;
  name: string;
  /** What was found, in words; "" while it is open. */
  said: string;
  /** It holds a start: open, or answered against it. */
  holds: boolean;
  /** It is the one that the digits answer. */
  current: boolean;
  why: string;
  /** What a digit gives. */
  choices: readonly string[];
  /** As last time, when that may be said. */
  before: string;
  /** Digits choose why it is gone past. */
  passing: boolean;
  /** It can be gone past. */
  mayPass: boolean;
}

/** The panel, line by line. */
export function lines(state: DeskState): Line[] {
  const all = found(state);
  const current = currentMatter(state);
  return matters(state).map((matter) => {
    if (matter === "time") return timeLine(state, current);
    const asked = ASKED.find((one) => one.matter === matter);
    const rated = RATED[matter];
    const one = all.get(matter);
    const hold = holdOf(state, matter);
    const passing = state.opening.passing && matter === current;
    return {
      matter,
      name: asked?.name ?? rated?.name ?? matter,
      said: rated === undefined ? saidWords(matter, one) : hold === undefined ? (one?.because == null ? "rated" : passWords(one.because)) : "",
      holds: hold !== undefined,
      current: matter === current,
      why: asked?.why ?? ratedWhy(state, matter),
      choices: passing ? CODES.map(([, words]) => words) : (asked?.answers.map(([, words]) => words) ?? []),
      before: asked?.repeats === undefined ? "" : answerWords(before(state, matter)),
      passing,
      mayPass: hold !== undefined && !(matter === "consent" && hold.against),
    };
  });
}

function timeLine(state: DeskState, current: Matter | null): Line {
  const said = appointmentWords(appointment(state));
  const choices = TIME_CHOICES.map(([words]) => words);
  return { ...TIME, matter: "time", said, holds: false, current: current === "time", choices, before: "", passing: false, mayPass: false };
}

const passWords = (because: Because): string => `gone past: ${CODES.find(([code]) => code === because)?.[1] ?? because}`;

function ratedWhy(state: DeskState, matter: Matter): string {
  const label = state.log.reevaluates;
  const whose = matter === "reevaluation" && label !== null && label !== "" ? `${label}. ` : "";
  return whose + (RATED[matter]?.why ?? "");
}

function saidWords(matter: Matter, one: Found | undefined): string {
  if (one === undefined) return "";
  if (one.because !== null) return passWords(one.because);
  const words = answerWords(one.answer);
  return one.again ? `${words}, as last time` : words || matter;
}

function answerWords(answer: Answer | null): string {
  if (answer === null) return "";
  const asked = ASKED.flatMap((one) => one.answers).find(([code]) => code === answer);
  return asked?.[1] ?? answer;
}

const before = (state: DeskState, matter: Matter): Answer | null => state.log.opened_before.find((answer) => matterOf(answer) === matter) ?? null;

function matters(state: DeskState): Matter[] {
  const first = state.log.opened_before.length === 0;
  const all = found(state);
  const due = (matter: Matter): boolean => holdOf(state, matter) !== undefined || all.has(matter);
  const asked = ASKED.filter((one) => one.later === undefined || !first).map((one) => one.matter);
  const rated = (["reevaluation", "assessment"] as const).filter(due);
  return [...asked.slice(0, -1), ...rated, ...asked.slice(-1), "time"];
}

/** The matter that the digits answer: the chosen one, else the first that is open. */
export function currentMatter(state: DeskState): Matter | null {
  if (state.opening.chosen !== null) return state.opening.chosen;
  const all = found(state);
  const open = matters(state).filter((matter) => matter !== "reprocessing" && matter !== "time" && !all.has(matter));
  const holding = state.view?.holds.map((hold) => hold.matter) ?? [];
  return open.find((matter) => RATED[matter] === undefined || holding.includes(matter)) ?? null;
}

const settled = (state: DeskState): DeskState => ({ ...state, opening: { chosen: null, passing: false } });

/** A digit while the panel shows, or 10 for t. */
export function digit(state: DeskState, value: number, id: string, now: number): Step {
  const matter = currentMatter(state);
  if (matter === null) return say(state, "All is answered. Choose a line to answer it anew.", now);
  if (state.opening.passing) {
    const because = CODES[value - 1]?.[0];
    if (because === undefined) return say(state, "Choose why by its number, or - to go back.", now);
    return writeOpening(settled(state), id, { kind: "passed", matter, because }, now);
  }
  if (matter === "time") return sayTime(state, value, id, now);
  if (matter === "reevaluation" || matter === "assessment") return rateAt(settled(state), "sud", value, matter, id, now);
  const answer = ASKED.find((one) => one.matter === matter)?.answers[value - 1]?.[0];
  if (answer === undefined) return say(state, "This number has no answer here.", now);
  // Risk comes first: the safety plan is in front, and the opening one key away.
  const front = answer === "acute" ? ({ ...settled(state), lower: "safety" } as const) : settled(state);
  return writeOpening(front, id, { kind: "answered", answer, again: false }, now);
}

/** The line stays at hand: more and less are often pressed more than once. */
function sayTime(state: DeskState, value: number, id: string, now: number): Step {
  const change = TIME_CHOICES[value - 1]?.[1];
  if (change === undefined) return say(state, "This number has no answer here.", now);
  return writeOpening({ ...state, opening: { chosen: "time", passing: false } }, id, { kind: "time", ...change(appointment(state)) }, now);
}

/** As last time, where that may be said. */
export function asBefore(state: DeskState, id: string, now: number): Step {
  const matter = currentMatter(state);
  const asked = ASKED.find((one) => one.matter === matter);
  if (matter === null || asked?.repeats === undefined) return say(state, "This is asked anew every time.", now);
  const answer = before(state, matter);
  if (answer === null) return say(state, "Nothing was said of it last time. Ask, then answer it.", now);
  return writeOpening(settled(state), id, { kind: "answered", answer, again: true }, now);
}

/** Digits choose why the matter is gone past, or answer it again. */
export function togglePass(state: DeskState, now: number): Step {
  const matter = currentMatter(state);
  const hold = matter === null ? undefined : holdOf(state, matter);
  if (matter === null) return say(state, "All is answered.", now);
  if (matter === "consent" && hold?.against) return say(state, "A consent that was withdrawn is not gone past: talk about it afresh, then answer it.", now);
  return unchanged({ ...state, opening: { chosen: matter, passing: !state.opening.passing } });
}

/** The digits answer this one from now on. */
export function choose(state: DeskState, matter: Matter): Step {
  return unchanged({ ...state, opening: { chosen: state.opening.chosen === matter ? null : matter, passing: false } });
}
