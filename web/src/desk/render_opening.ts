// Draws the opening: a line a matter, and under the one that the digits answer what they give.
import { attribute, make, part, text } from "./dom";
import { isLive, type DeskState } from "./model";
import { lines, type Line } from "./opening";

const key = (name: string): HTMLElement => make("kbd", name);

function press(words: string, name: string, data: Record<string, string>): HTMLElement {
  const button = make("button", words, { type: "button", ...data });
  button.append(" ", key(name));
  return button;
}

function choices(line: Line): HTMLElement {
  const group = make("div", "", { class: "answers", role: "group", "aria-label": line.passing ? `Why ${line.name} is gone past` : line.name });
  group.append(...line.choices.map((words, at) => press(words, String(at + 1), { "data-act": "opening_digit", "data-value": String(at + 1) })));
  if (line.before !== "" && !line.passing) group.append(press(`as last time: ${line.before}`, "=", { "data-act": "as_before" }));
  if (line.mayPass) group.append(press(line.passing ? "back" : "go past it", "-", { "data-act": "toggle_pass" }));
  return group;
}

function row(line: Line): HTMLElement {
  const item = make("li", "", line.current ? { "aria-current": "step" } : {});
  const button = make("button", "", { type: "button", "data-act": "choose", "data-matter": line.matter, class: "matter" });
  button.append(make("span", line.name), make("b", line.said === "" ? (line.holds ? "open" : "not asked") : line.said));
  if (line.holds) button.dataset.holds = "";
  item.append(button);
  if (!line.current) return item;
  item.append(make("p", line.choices.length === 0 ? `${line.why} Press 0 to 9, t for 10.` : line.why, { class: "hint" }), choices(line));
  return item;
}

/** Only what changed is drawn anew, or a button would lose the focus that it has. */
export function renderOpening(state: DeskState): void {
  const all = lines(state);
  const holds = state.view?.holds ?? [];
  const live = isLive(state);
  attribute(part("opening-check"), "data-met", live && holds.length === 0 ? "yes" : "no");
  attribute(part("opening-sign"), "href", live && holds.length === 0 ? "#shape-met" : "#shape-open");
  const list = part("opening-list");
  const now = JSON.stringify(all);
  if (list.dataset.drawn === now) return;
  list.dataset.drawn = now;
  const focused = document.activeElement instanceof HTMLElement && list.contains(document.activeElement) ? document.activeElement.dataset : null;
  const again = focused === null ? null : JSON.stringify(focused);
  list.replaceChildren(...all.map(row));
  const done = all.every((line) => !line.holds);
  text(part("opening-hint"), done ? "No set waits for any of it." : "One key a line. Underlined: a set waits for it.");
  list.querySelector("[aria-current]")?.scrollIntoView({ block: "nearest" });
  if (again !== null) for (const one of list.querySelectorAll<HTMLElement>("button")) if (JSON.stringify(one.dataset) === again) one.focus();
}
