// Draws the phase in the head, the panel of what it offers, and what stands on the client's page.
import { attribute, make, part, shown, text } from "./dom";
import type { DeskState } from "./model";
import { offers, phaseWords, promptWords, stands } from "./phase";
import { standsOnPage } from "./steady";

/** See the head of this file. Only what changed is drawn anew, or a button would lose the focus that it has. */
export function renderPhase(state: DeskState): void {
  text(part("phase"), phaseWords(state));
  text(part("phase-hint"), promptWords(state));
  const form = document.querySelector<HTMLElement>('[data-part="assess"]');
  // What was typed stays in sight until it is kept, whatever the phase says meanwhile.
  if (form !== null) shown(form, state.log.phase === "assessment" || form.dataset.typed !== undefined || form.contains(document.activeElement));
  const list = part("phase-offers");
  const drawn = offers(state).map(({ words, does }) => [words, stands(state, does)] as const);
  const key = JSON.stringify(drawn);
  if (list.dataset.drawn !== key) {
    const at = document.activeElement instanceof HTMLElement && list.contains(document.activeElement) ? document.activeElement.dataset.value : undefined;
    list.dataset.drawn = key;
    list.replaceChildren(...drawn.map(([words, pressed], index) => press(words, pressed, String(index + 1))));
    list.querySelector<HTMLElement>(`[data-value="${at ?? ""}"]`)?.focus();
  }
  for (const button of document.querySelectorAll<HTMLElement>('[data-act="steady_digit"]'))
    attribute(button, "aria-pressed", String(standsOnPage(state, Number(button.dataset.value))));
}

function press(words: string, pressed: boolean, digit: string): HTMLElement {
  const button = make("button", words, { type: "button", "data-act": "phase_digit", "data-value": digit, "aria-pressed": String(pressed) });
  button.append(" ", make("kbd", digit));
  return button;
}
