/** Draws a page that is held, and what lets it go. */
import { element } from "../live/element";
import { say } from "../live/words";
import type { Asking } from "./ask";
import { answers, button, speech } from "./parts";
import type { Held } from "./screen";

/** For whom no moving dot was welcome, and now is. */
export const showDot = ({ act, device }: Asking): HTMLElement =>
  button("declined_show", () => {
    device.learn({ reduced_motion: false });
    act({ type: "answered", step: "motion", motion: "welcome" });
  });

/** See the head of this file. */
export function held(page: Held, asking: Asking): HTMLElement[] {
  const parts = page.why === "page" ? speech("paused_heading", "paused_text") : speech("stopped_heading");
  if (page.why === "declined") parts.push(element("p", {}, say("declined_text")));
  return [...parts, ...waysOn(page, asking)];
}

/** What is told of the hold, and what can be pressed. */
export function waysOn(page: Held, asking: Asking): HTMLElement[] {
  const parts = [element("p", {}, say(page.longer === "said" ? "longer_said" : page.asksReady ? "stopped_text" : "paused_wait"))];
  if (page.why !== "page") parts.push(element("p", { role: "status" }, say(page.told ? "stopped_told" : "stopped_untold")));
  if (!page.online) return [...parts, element("p", {}, say("reconnecting"))];
  if (!page.asksReady) return parts;
  const choice = page.why === "declined" ? [showDot(asking)] : [];
  const longer = page.longer === "may" ? [button("longer_button", () => asking.act({ type: "longer" }))] : [];
  const ready = button("ready_button", () => asking.act({ type: "ready" }), "main");
  return [...parts, answers(ready, ...longer, ...choice)];
}
