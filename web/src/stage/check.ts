/**
 * The questions of the device check, one a page, in order. Pure. Each can be skipped. The one about
 * movement, when the system asks for less of it, is skipped to the safe side: only a Yes lets a dot move.
 */

/** One question. `sides` is asked again later, when the desk wishes: the rest of `sound`, and no part of the check. */
export type Step = "start" | "settle" | "card" | "distance" | "motion" | "call" | "sound" | "buzz" | "awake" | "full" | "sides";

/** What this browser and system have. */
export interface Abilities {
  /** The system asks for reduced motion. */
  readonly reducedMotion: boolean;
  /** It is held in a hand or set on a table, and can be turned: a phone or a tablet. */
  readonly handheld: boolean;
  /** It may be able to vibrate: browsers without a motor claim it too. */
  readonly vibrates: boolean;
  /** The screen can be kept on. */
  readonly wakeLock: boolean;
  /** Picture and voice go by this page. */
  readonly call: boolean;
  /** The page can fill the screen. */
  readonly fullScreen: boolean;
}

/** The questions that this device is asked. */
export function stepsFor(abilities: Abilities): Step[] {
  const steps: Step[] = ["start", "settle", "card", "distance"];
  if (abilities.reducedMotion) steps.push("motion");
  // The microphone is open when left and right are asked: headphones often play mono then.
  if (abilities.call) steps.push("call");
  steps.push("sound");
  if (abilities.vibrates) steps.push("buzz");
  if (abilities.wakeLock) steps.push("awake");
  if (abilities.fullScreen) steps.push("full");
  return steps;
}

/** Where a question stands among those that are asked, counted from 1. */
export interface Place {
  readonly at: number;
  readonly of: number;
}

/** The place of `step` among all questions of this device. The first page asks nothing and has none, nor has what is no part of the check. */
export function placeOf(step: Step, abilities: Abilities): Place | undefined {
  const at = stepsFor(abilities).indexOf(step);
  return at > 0 ? { at, of: stepsFor(abilities).length - 1 } : undefined;
}

/** The question after `step`; `undefined`: the check is done. */
export function stepAfter(step: Step, abilities: Abilities): Step | undefined {
  const steps = stepsFor(abilities);
  const at = steps.indexOf(step);
  return at < 0 ? undefined : steps[at + 1];
}

/** Where skipping all leads to from `step`: past everything but an unanswered question about movement. */
export function stepAfterSkippingAll(step: Step, abilities: Abilities): Step | undefined {
  const steps = stepsFor(abilities);
  return steps.includes(step) && steps.indexOf("motion") > steps.indexOf(step) ? "motion" : undefined;
}
