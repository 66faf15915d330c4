// Draws what was tried to reach a client who is gone, and what can be written down of it.
import { make, part } from "./dom";
import type { DeskState } from "./model";
import { stepsSoFar } from "./reach";
import { REACH } from "./words";

/** See the head of this file. */
export function renderReach(state: DeskState): void {
  const offers = part("reach-offers");
  if (offers.childElementCount === 0) offers.append(...REACH.map(([, words], at) => press(words, String(at + 1))));
  const list = part("reach-steps");
  const steps = stepsSoFar(state);
  const key = steps.join("\n");
  if (list.dataset.drawn === key) return;
  list.dataset.drawn = key;
  list.replaceChildren(...steps.map((step) => make("li", step)));
}

function press(words: string, digit: string): HTMLElement {
  const button = make("button", words, { type: "button", "data-act": "reach_digit", "data-value": digit });
  button.append(" ", make("kbd", digit));
  return button;
}
