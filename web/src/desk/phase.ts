// Where the hour stands, and what the panel of the phases offers there, one digit each. Pure; the phase itself is the server's word.
import type { End } from "../wire/End";
import type { EntryValue } from "../wire/EntryValue";
import type { Phase } from "../wire/Phase";
import type { Procedure } from "../wire/Procedure";
import { lastRating, presentSet, standing, written } from "./log";
import type { Action, DeskState, Step } from "./model";
import { say, unchanged } from "./orders";
import { writeFound } from "./ratings";

export const PHASE_WORDS: Record<Phase, string> = {
  opening: "Opening",
  reevaluation: "Re-evaluation",
  preparation: "Preparation",
  assessment: "Assessment",
  desensitisation: "Desensitisation",
  installation: "Installation",
  scan: "Body scan",
  closing: "Closing",
  closed: "Closed",
};

const END_WORDS: Record<End, string> = { sud: "SUD", segments: "each segment", rehearsal: "rehearsal", voc: "VOC", scan: "scan" };

/** What to find out now and why it matters: ours, never a script. */
const PROMPTS: Record<Phase, string> = {
  opening: "The opening (f) comes first.",
  reevaluation: "Look at the target before: SUD, then VOC, then what is new.",
  preparation: "No reprocessing now: a calm place, a resource, or talk.",
  assessment: "The baseline: picture, both beliefs, VOC, emotions, SUD, body.",
  desensitisation: "Between sets only what comes by itself. SUD when you return to the target.",
  installation: "Does the belief still fit? Then VOC after each set, until it grows no more.",
  scan: "Picture and belief held together, head to toe. What is felt is worked on.",
  closing: "What the target's end asks for is reached. You decide; closing is always open.",
  closed: "The session is closed.",
};

/** How the target is worked on, where that is not the usual way. */
const PROCEDURES: Record<Procedure, string> = {
  standard: "",
  resource: "A resource: no SUD, no VOC.",
  restricted: "Restricted work: it ends reduced, never complete.",
  recent_event: "A recent event: SUD segment by segment; belief and body once, over the whole.",
  future: "A step to come: rehearse it, then the belief. No SUD, no scan.",
};
const OF_A_TARGET: readonly Phase[] = ["preparation", "assessment", "desensitisation", "installation", "scan", "closing"];

/** In the head of the desk: the phase, and what the target's end still asks for. Empty until the log was read. */
export function phaseWords({ log, logRead, view }: DeskState): string {
  if (view?.state === "closed") return PHASE_WORDS.closed;
  if (!logRead) return "";
  const open = log.asks.filter((one) => one.open).map((one) => END_WORDS[one.end]);
  const rest = log.asks.length === 0 || open.length === 0 || log.phase === "closed" ? "" : `, to reach: ${open.join(", ")}`;
  return PHASE_WORDS[log.phase] + rest;
}

export function promptWords({ log: { phase, procedure } }: DeskState): string {
  const how = procedure === null || !OF_A_TARGET.includes(phase) ? "" : PROCEDURES[procedure];
  return how === "" ? PROMPTS[phase] : `${PROMPTS[phase]} ${how}`;
}

/** What a digit does while the panel shows. */
export interface Offer {
  words: string;
  does: Action;
}

const found = (words: string, value: EntryValue): Offer => ({ words, does: { kind: "found", value } });

const assessment = ({ log }: DeskState): Offer[] => (log.phase === "assessment" ? [{ words: "write the assessment", does: { kind: "assess" } }] : []);

const RATE_HERE: readonly Phase[] = ["reevaluation", "assessment", "desensitisation", "installation", "scan", "closing"];

function ratings(state: DeskState): Offer[] {
  const { phase, asks } = state.log;
  if (!RATE_HERE.includes(phase)) return [];
  const asked = (end: End): boolean => asks.some((one) => one.end === end);
  const sud: Offer = { words: "back at the target: SUD", does: { kind: "arm_at", scale: "sud", moment: "back_at_target", segment: null } };
  const next = state.segment + 1;
  const segments: Offer[] = [
    { words: `segment ${state.segment}: SUD`, does: { kind: "arm_at", scale: "sud", moment: "back_at_target", segment: state.segment } },
    { words: `on to segment ${next}`, does: { kind: "segment", to: next } },
  ];
  const voc: Offer = { words: "VOC", does: { kind: "arm_at", scale: "voc", moment: "installation", segment: null } };
  return [...(asked("segments") ? segments : asked("rehearsal") ? [] : [sud]), ...(asked("voc") ? [voc] : [])];
}

function findings(state: DeskState): Offer[] {
  const { phase, asks } = state.log;
  if (!RATE_HERE.includes(phase)) return [];
  const asked = (end: End): boolean => asks.some((one) => one.end === end);
  const open = (end: End): boolean => asks.some((one) => one.end === end && one.open);
  const offers: Offer[] = [];
  if (asked("rehearsal")) {
    offers.push(found("rehearsed: nothing disturbed", { kind: "rehearsal", rehearsal: "undisturbed" }));
    offers.push(found("rehearsed: something disturbed", { kind: "rehearsal", rehearsal: "disturbed" }));
  }
  if (asked("voc") && ["installation", "scan", "closing"].includes(phase)) {
    offers.push(found("the belief still fits", { kind: "belief", belief: "still" }));
    offers.push(found("another belief fits better", { kind: "belief", belief: "another" }));
  }
  if (asked("scan") && ["scan", "closing"].includes(phase)) {
    offers.push(found("scan: clear", { kind: "scan", scan: "clear" }));
    offers.push(found("scan: something is felt", { kind: "scan", scan: "felt" }));
  }
  const voc = lastRating(state, "voc");
  if (open("sud") && lastRating(state, "sud") === 1) offers.push(found("this SUD of 1 fits the facts", { kind: "fits", scale: "sud" }));
  if (open("voc") && voc !== null && voc < 7 && phase !== "assessment") offers.push(found(`this VOC of ${voc} fits the facts`, { kind: "fits", scale: "voc" }));
  return offers;
}

function unmeasured(state: DeskState): Offer[] {
  if (state.log.phase !== "preparation") return [];
  return [
    found("not measured: in the same room", { kind: "unmeasured", way: "in_person" }),
    found("not measured: without stimulation", { kind: "unmeasured", way: "without" }),
    found("not measured: their own tapping", { kind: "unmeasured", way: "own_tapping" }),
  ];
}

/** In the order of the digits, from 1. */
export const offers = (state: DeskState): Offer[] => [...assessment(state), ...ratings(state), ...findings(state), ...unmeasured(state)];

/** The action of a digit, or null when it has none here. */
export const offered = (state: DeskState, value: number): Action | null => offers(state)[value - 1]?.does ?? null;

/** Whether exactly this is what was said last of its kind: shown as pressed. */
export function stands(state: DeskState, does: Action): boolean {
  if (does.kind !== "found") return false;
  const said = standing(written(state.log, state.queue)).filter((entry) => entry.value.kind === does.value.kind);
  return JSON.stringify(said.at(-1)?.value) === JSON.stringify(does.value);
}

/** Writes what was found; a scan that found something asks what and where. */
export function writeOffer(state: DeskState, value: EntryValue, id: string, now: number): Step {
  const step = writeFound(state, id, presentSet(state), value, now);
  if (value.kind !== "scan" || value.scan !== "felt") return step;
  const asked = say({ ...step.state, lower: "log" }, "What, and where? Write it down (w).", now);
  return { state: asked.state, commands: step.commands };
}

/** The segment of a recent event that is rated next. */
export const toSegment = (state: DeskState, to: number): Step => unchanged({ ...state, segment: Math.min(99, Math.max(1, to)) });
