/** Draws the page that the state asks for. Only a change of page changes the document. */
import { element } from "../live/element";
import { say } from "../live/words";
import { type Asking, ask } from "./ask";
import { held, showDot } from "./held";
import { answers, speech } from "./parts";
import { pad, steadying } from "./beside";
import type { Page } from "./screen";

/** Shows pages in `main`; see the head of this file. */
export class Renderer {
  private shown = "";

  constructor(
    private readonly main: HTMLElement,
    private readonly asking: Asking,
  ) {}

  /** Shows `page`. @returns whether it was another one. */
  show(page: Page): boolean {
    // The client has left: the page is blank and stays so.
    if (!this.main.isConnected) return false;
    const key = JSON.stringify(page);
    if (key === this.shown) return false;
    this.shown = key;
    document.body.dataset["page"] = page.name;
    this.main.replaceChildren(...content(page, this.asking));
    // A reader hears the new page; no button has focus, so a key that is still down presses none.
    this.main.querySelector("h1")?.focus({ preventScroll: true });
    this.main.scrollTop = 0;
    return true;
  }
}

function content(page: Page, asking: Asking): HTMLElement[] {
  switch (page.name) {
    case "check":
      return ask(page, asking);
    case "held":
      return held(page, asking);
    case "pad":
      return pad(page, asking);
    case "steadying":
      return steadying(page, asking);
    case "end":
      return [
        ...speech("end_heading"),
        ...(page.words ? [element("p", { class: "words" }, page.words)] : []),
        element("p", {}, say("end_text")),
        element("p", {}, say("end_next")),
      ];
    case "lost":
      return [...speech("lost_heading", "lost_text", "reconnecting")];
    case "connecting":
      return [...carried("sign"), ...speech("connecting_heading", "connecting_text")];
    case "refused":
      return speech("refused_heading", "refused_text");
    case "waiting":
    case "waiting-alone":
      return [...carried("sign"), ...speech("waiting_heading", page.name === "waiting" ? "waiting_text" : "waiting_alone_text"), ...carried("meets")];
    case "ready":
      return speech("ready_heading", "ready_text");
    case "ready-tones":
      // The desk cannot start the dot now, so the way back to it is here.
      return [...speech("ready_heading", "ready_tones_text"), answers(showDot(asking))];
    case "ready-alone":
      return speech("ready_heading", "ready_alone_text");
    case "between":
      return speech("between_heading", "between_text");
    case "between-still":
      return speech("between_still_heading", "between_still_text");
    case "running":
      return [element("h1", { class: "unseen", tabindex: -1 }, say("running_label"))];
  }
}

/** A copy of what the page's template of this id holds, if there is such a one: the sign of waiting, and whom the client meets. */
function carried(id: string): HTMLElement[] {
  const copy = document.querySelector<HTMLTemplateElement>(`template#${id}`)?.content.cloneNode(true);
  return copy ? ([...(copy as DocumentFragment).children] as HTMLElement[]) : [];
}
