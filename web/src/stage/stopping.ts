/** Everything that stops a set from the client's side, bound to the page. */
import type { Interruption } from "../wire/Interruption";

/** What the page does about it. */
export interface Stopping {
  /** Whether anything moves or sounds. */
  active(): boolean;
  stop(): void;
  interrupted(cause: Interruption): void;
  /** A tap or key came: what needs one may try again. */
  touched(): void;
}

/** Binds it all; `stopButton` stops in every state, everything else only while something moves. */
export function bindStopping(stopButton: HTMLElement, page: Stopping): void {
  const stop = (event: globalThis.Event) => {
    event.preventDefault();
    event.stopPropagation();
    page.stop();
  };
  bindTaps(page, stop);
  bindKeys(page, stop);
  stopButton.addEventListener("click", () => page.stop());
  bindInterruptions(page);
}

/**
 * A tap that stops presses nothing besides, not even Leave: with a finger its click goes to what lies there when the finger is lifted, which may be new, and
 * who taps anywhere to stop has not chosen to go.
 */
function bindTaps(page: Stopping, stop: (event: globalThis.Event) => void): void {
  let stopped = false;
  addEventListener(
    "pointerdown",
    (event) => {
      stopped = page.active();
      if (stopped) stop(event);
      else page.touched();
    },
    { capture: true },
  );
  // It became something else, and no click will come.
  addEventListener("pointercancel", () => (stopped = false), { capture: true });
  addEventListener(
    "click",
    (event) => {
      // By key or by script: no tap.
      if (!stopped || event.detail === 0) return;
      // A tap has one click. The next may be an aid's, which has no tap before it.
      stopped = false;
      event.preventDefault();
      event.stopPropagation();
    },
    { capture: true },
  );
}

function bindKeys(page: Stopping, stop: (event: globalThis.Event) => void): void {
  let heldDown = false;
  addEventListener(
    "keydown",
    (event) => {
      if (event.key !== " " && event.key !== "Escape") return;
      if (page.active()) {
        heldDown = true;
        stop(event);
      } else if (event.key === "Escape") page.stop();
      // The key that stopped a set must not press the next page's button while it is still down.
      else if (heldDown) event.preventDefault();
    },
    { capture: true },
  );
  addEventListener(
    "keyup",
    (event) => {
      if (heldDown) event.preventDefault();
      heldDown = false;
    },
    { capture: true },
  );
}

function bindInterruptions(page: Stopping): void {
  const hidden = () => document.visibilityState === "hidden" && page.interrupted("hidden");
  document.addEventListener("visibilitychange", hidden);
  addEventListener("pagehide", () => page.interrupted("hidden"));
  document.addEventListener("fullscreenchange", () => document.fullscreenElement === null && page.interrupted("full_screen_left"));
  screen.orientation?.addEventListener("change", () => page.interrupted("resized"));
}
