// Parts of the call's own controls.
import { attribute, make } from "../desk/dom";

/** A button whose words change. */
export function button(words: string, press: () => void): HTMLButtonElement {
  const made = make("button", "", { type: "button" });
  made.append(make("span", words));
  made.addEventListener("click", press);
  return made;
}

/** One of a few, as buttons: a list would take the desk's keys, and a letter would choose in it. */
export interface Ways {
  readonly place: HTMLElement;
  /** The one in force. */
  show(value: string): void;
}

/** `words` stand before them. */
export function ways(words: string, options: readonly (readonly [string, string])[], choose: (value: string) => void): Ways {
  const place = make("div", "", { class: "call-ways", role: "group", "aria-label": words });
  place.append(make("span", words));
  const buttons = options.map(([value, label]) => [value, button(label, () => choose(value))] as const);
  place.append(...buttons.map(([, one]) => one));
  const show = (now: string) => {
    for (const [value, one] of buttons) attribute(one, "aria-pressed", String(value === now));
  };
  return { place, show };
}

/** A choice among devices; `words` stand before it. Letters choose nothing in it, and once something is chosen the keys are the desk's again. */
export function choice(words: string, options: readonly (readonly [string, string])[], now: string | undefined, choose: (value: string) => void): HTMLElement {
  const select = make("select", "");
  select.append(...options.map(([value, label]) => make("option", label, { value })));
  if (now !== undefined) select.value = now;
  select.addEventListener("keydown", (event) => {
    if (event.key.length === 1 && event.key !== " ") event.preventDefault();
  });
  select.addEventListener("change", () => {
    choose(select.value);
    select.blur();
  });
  const label = make("label", words);
  label.append(select);
  return label;
}
