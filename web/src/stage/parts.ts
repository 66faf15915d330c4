/** The parts that every page of the client's is made of. */
import { element } from "../live/element";
import { say } from "../live/words";

/** A button with words of the catalogue. */
export const button = (id: string, onclick: () => void, kind = ""): HTMLElement => element("button", { type: "button", class: kind, onclick }, say(id));

/** One answer of several, as wide as the page; `given`: it is the one that stands. */
export const choice = (id: string, onclick: () => void, given: boolean): HTMLElement => {
  const made = button(id, onclick, "choice");
  if (given) made.setAttribute("aria-pressed", "true");
  return made;
};

/** A heading and sentences, by their ids. */
export const speech = (heading: string, ...texts: string[]): HTMLElement[] => [
  element("h1", { tabindex: -1 }, say(heading)),
  ...texts.map((id) => element("p", {}, say(id))),
];

/** A group of buttons. */
export const answers = (...buttons: HTMLElement[]): HTMLElement => element("div", { class: "answers" }, ...buttons);
