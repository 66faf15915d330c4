// Draws what is pressed while a set is led: what a start needs, the three main buttons, and the mechanics.
import { attribute, part, text } from "./dom";
import { hasSet, isBusy, isLive, shownPlan, type DeskState } from "./model";
import { whyNoStart } from "./orders";
import { isViewOnly } from "./status";
import { channelWords, degrees, hertz, lengthWords, PATH_WORDS, PURPOSE_WORDS } from "./words";

const off = (element: Element, unavailable: boolean): void => attribute(element, "aria-disabled", unavailable ? "true" : null);

/** A cell of what a start needs: met or not, by a sign and its ground. */
function check(name: string, met: boolean): void {
  attribute(part(name), "data-met", met ? "yes" : "no");
  attribute(part(`${name}-sign`), "href", met ? "#shape-met" : "#shape-open");
}

function renderChecks(state: DeskState): void {
  const live = isLive(state);
  // What a page that is gone had said is no sign of the one that comes.
  const here = live && state.view?.stage_here === true;
  const needs = state.view?.needs;
  const sightIsDue = live && needs?.sight === true;
  check("sight", live && needs?.sight === false);
  check("client-ready", here && needs?.client_ready === false);
  check("device-ready", here && needs?.check === false && !needs.sound && !needs.motion);
  off(part("sight"), !sightIsDue);
  off(part("cannot-see"), !live);
  attribute(part("sight"), "data-wanted", sightIsDue && state.view?.stage_here ? "yes" : null);
}

/** `now`: page time, ms. */
export function renderControls(state: DeskState, now: number): void {
  const closed = state.view?.state === "closed";
  for (const control of document.querySelectorAll(".main .stop, .ratings [data-act=arm]")) off(control, closed);
  // Whoever looks on can always stop, and changes nothing else.
  const looksOn = isViewOnly(state);
  for (const control of document.querySelectorAll(".mech [data-act=step], .steps [data-act]")) off(control, closed || looksOn);
  renderChecks(state);
  off(part("start"), whyNoStart(state, now) !== null);
  off(part("end"), !hasSet(state) || looksOn);
  off(part("extend"), !hasSet(state) || looksOn || shownPlan(state)?.length.kind === "open");
  const last = state.view?.set?.number ?? state.log.sets.at(-1)?.number ?? 0;
  text(part("next-set"), `SET ${isBusy(state) ? last : last + 1}`);
}

/** The plan as it is chosen. */
export function renderPlan(state: DeskState): void {
  const plan = shownPlan(state);
  const widest = state.view?.widest ?? null;
  text(part("rate"), plan === null ? "" : hertz(plan.rate));
  text(part("width"), plan === null ? "" : degrees(plan.width));
  attribute(part("width"), "title", widest === null ? null : `the client's screen shows up to ${degrees(Math.floor(widest * 10) / 10)}`);
  for (const name of ["length", "length-in-panel"]) text(part(name), plan === null ? "length" : lengthWords(plan.length));
  text(part("dot-size"), plan === null ? "dot" : `dot ${degrees(plan.dot)}`);
  text(part("path"), plan === null ? "path" : PATH_WORDS[plan.path]);
  text(part("purpose"), plan === null ? "purpose" : `for ${PURPOSE_WORDS[plan.purpose]}`);
  text(part("channels"), plan === null ? "channels" : channelWords(plan));
}
