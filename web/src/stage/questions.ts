/**
 * The device check as the client goes through it: which question is open, and which way led there. Pure.
 * Nothing that was answered is taken back by going on, going back or passing over.
 */
import { type Abilities, type Step, stepAfter, stepAfterSkippingAll, stepsFor } from "./check";

/** What the client said about a moving dot. Only asked when the system wants less movement. */
export type Motion = "welcome" | "unasked" | "declined";

/** See the head of this file. */
export interface Questions {
  readonly abilities: Abilities;
  /** The open question; `undefined` when the check is done. */
  readonly check: Step | undefined;
  /** All but the question about movement is passed over: the client chose so, or had answered before. */
  readonly skipping: boolean;
  /** The questions that led to the open one, which Back returns to; empty when none is open. */
  readonly trail: readonly Step[];
  /** The questions that were answered, not passed over. */
  readonly given: ReadonlySet<Step>;
  readonly motion: Motion;
}

/** As the page is opened. */
export const unanswered = (abilities: Abilities): Questions => ({
  abilities,
  check: "start",
  skipping: false,
  trail: [],
  given: new Set(),
  motion: abilities.reducedMotion ? "unasked" : "welcome",
});

/** `step` was answered; `motion`: what was said about the dot. */
export function answer<S extends Questions>(state: S, step: Step, motion?: Motion): S {
  return leadOn({ ...state, motion: motion ?? state.motion, given: new Set([...state.given, step]) }, step);
}

/** `step` was passed over. Whoever never said that a moving dot is welcome is shown none. */
export function skip<S extends Questions>(state: S, step: Step): S {
  const unasked = step === "motion" && state.motion === "unasked";
  return leadOn(unasked ? { ...state, motion: "declined" } : state, step);
}

/** The open question is passed over, and all that come but the one about movement. */
export function skipAll<S extends Questions>(state: S): S {
  const skipping = { ...state, skipping: true };
  return state.check === undefined ? skipping : skip(skipping, state.check);
}

/** From `step` to the question before it. */
export function goBack<S extends Questions>(state: S, step: Step): S {
  const before = state.trail[state.trail.length - 1];
  if (before === undefined || state.check !== step) return state;
  // Back at the first page, all is still to be asked or skipped.
  return { ...state, check: before, trail: state.trail.slice(0, -1), skipping: state.skipping && before !== "start" };
}

/** The system began to ask for less movement: the client is asked, in its turn where that is still to come. */
export function askMotion<S extends Questions>(state: S): S {
  const abilities = { ...state.abilities, reducedMotion: true };
  const steps = stepsFor(abilities);
  const before = (step: Step) => steps.includes(step) && steps.indexOf(step) < steps.indexOf("motion");
  const ahead = state.check !== undefined && before(state.check);
  return {
    ...state,
    abilities,
    motion: "unasked",
    check: ahead ? state.check : "motion",
    // What comes after it is no way back from it.
    trail: state.trail.filter(before),
    given: new Set([...state.given].filter((step) => step !== "motion")),
    skipping: state.skipping || !isChecking(state),
  };
}

/** The device check is open, so that nothing else can be shown. A check that was only repeated gives way to a set. */
export const isChecking = ({ check }: Pick<Questions, "check">): boolean => check !== undefined && check !== "sides";

/** From `step`, if it is still open, to the next question. */
function leadOn<S extends Questions>(state: S, step: Step): S {
  if (state.check !== step) return state;
  // Whom no dot is shown hears tones, if anything, so the sound is asked about next.
  const asksSound = step === "motion" && state.motion === "declined";
  const check = (state.skipping && !asksSound ? stepAfterSkippingAll : stepAfter)(step, state.abilities);
  return { ...state, check, trail: check === undefined ? [] : [...state.trail, step] };
}
