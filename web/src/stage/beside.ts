/** Draws what the clinician has put on the page beside the sets: a scale to rate on, or something to steady by. */
import { element } from "../live/element";
import { say } from "../live/words";
import type { Asking } from "./ask";
import { waysOn } from "./held";
import { answers, button, speech } from "./parts";
import type { Page } from "./screen";

type Of<N extends Page["name"]> = Extract<Page, { name: N }>;

/** Of each scale its ends, its question, and what the ends mean. */
const SCALES = { sud: [0, 10, "pad_sud_heading", "pad_sud_text"], voc: [1, 7, "pad_voc_heading", "pad_voc_text"] } as const;

/** Each number is a button; it can be passed over. */
export function pad(page: Of<"pad">, { act }: Asking): HTMLElement[] {
  const [least, most, heading, ends] = SCALES[page.scale];
  const words = speech(heading, ends);
  if (page.said) return [...words, element("p", { role: "status" }, say("pad_said"))];
  const rate = (value: number | null): void => act({ type: "rated", id: crypto.randomUUID(), value });
  const numbers = Array.from({ length: most - least + 1 }, (_, at) => {
    const value = least + at;
    return element("button", { type: "button", onclick: () => rate(value) }, String(value));
  });
  return [...words, element("div", { class: "numbers" }, ...numbers), answers(button("skip", () => rate(null)))];
}

/** Still, and nothing to answer; what lets a held page go stays beneath. */
export function steadying(page: Of<"steadying">, asking: Asking): HTMLElement[] {
  const shown =
    page.words === undefined
      ? speech("orient_heading", "orient_text")
      : [...speech("resource_heading"), element("p", { class: "words" }, page.words), element("p", {}, say("resource_text"))];
  return page.held === undefined ? shown : [...shown, ...waysOn(page.held, asking)];
}
