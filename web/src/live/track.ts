/**
 * One property of one element, played by the browser's compositor as baked windows of keyframes, 60
 * a second. It goes on while this page's script is busy, and comes to rest by itself when the script
 * hangs, because the window ends.
 */
import { phaseAt } from "./timeline";
import type { Timeline } from "../wire/Timeline";

/** A window is at most this long, ms. */
export const WINDOW = 1_600;
/** It is replaced after this, ms. */
export const REPLACE = 400;
/**
 * A window starts so much in the past, ms: a frame that is drawn late still shows what was due at its own time. One that began after that
 * time showed its own beginning, up to two frames' way ahead of the dot's place.
 */
export const PAST = 100;

/** ms between keyframes. */
const KEYFRAME = 1000 / 60;

/** The keyframes of a window: `shown` in page time, from `from` to `to`, ms; `at` draws one phase. */
export function keyframes(shown: Timeline, at: (phase: number) => Keyframe, from: number, to: number): Keyframe[] {
  const steps = Math.max(1, Math.ceil((to - from) / KEYFRAME));
  return Array.from({ length: steps + 1 }, (_, i) => at(phaseAt(shown, from + ((to - from) * i) / steps)));
}

/** See the head of this file. */
export class Track {
  private animation: Animation | undefined;

  constructor(
    readonly element: HTMLElement,
    private readonly property: "transform" | "opacity",
  ) {}

  /** Plays a window from `from` to `to` (page time, ms) in place of what played before. */
  play(frames: Keyframe[], from: number, to: number): void {
    const next = this.element.animate(frames, { duration: to - from, fill: "both" });
    // The document's timeline counts from the same origin as performance.now().
    next.startTime = from;
    this.animation?.cancel();
    this.animation = next;
  }

  /** Page time that the screen has got to, read back from the animation; `undefined` when none plays. */
  get reached(): number | undefined {
    const { startTime, currentTime } = this.animation ?? {};
    if (typeof startTime !== "number" || typeof currentTime !== "number") return undefined;
    const length = Number(this.animation?.effect?.getComputedTiming().endTime ?? 0);
    return startTime + Math.min(Math.max(currentTime, 0), length);
  }

  /** Halts where it is, in this frame. `cancel()` is quicker than `pause()`, which waits for the compositor. */
  freeze(): void {
    if (!this.animation) return;
    this.element.style[this.property] = getComputedStyle(this.element)[this.property];
    this.animation.cancel();
    this.animation = undefined;
  }
}
