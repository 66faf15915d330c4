// Parts of the call's own controls.
import { make } from "../desk/dom";

/** A button whose words change. */
export function button(words: string, press: () => void): HTMLButtonElement {
  const made = make("button", "", { type: "button" });
  made.append(make("span", words));
  made.addEventListener("click", press);
  return made;
}

/** A choice; `words` stand before it. */
export function choice(words: string, options: readonly (readonly [string, string])[], choose: (value: string) => void): HTMLSelectElement {
  const made = make("select", "", { "data-words": words });
  made.append(...options.map(([value, label]) => make("option", label, { value })));
  made.addEventListener("change", () => choose(made.value));
  return made;
}
