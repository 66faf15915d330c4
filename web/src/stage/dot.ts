/**
 * The dot, played by the browser's compositor as baked windows: keyframes of the pure position
 * function, 60 a second. It keeps moving while this page's script is busy, and comes to rest by
 * itself when the script hangs, because the window ends.
 */
import { placeAt } from "../live/path";
import { phaseAt } from "../live/timeline";
import type { Path } from "../wire/Path";
import type { Timeline } from "../wire/Timeline";

/** ms between keyframes. */
const KEYFRAME = 1000 / 60;

/** Where and how large; px. */
export interface Shape {
  readonly path: Path;
  /** From extreme to extreme. */
  readonly width: number;
  /** Diameter. */
  readonly dot: number;
}

/** The keyframes of a window: `shown` in page time, from `from` to `to`, ms. */
export function keyframes(shown: Timeline, shape: Shape, from: number, to: number): Keyframe[] {
  const steps = Math.max(1, Math.ceil((to - from) / KEYFRAME));
  return Array.from({ length: steps + 1 }, (_, i) => {
    const { x, y } = placeAt(shape.path, phaseAt(shown, from + ((to - from) * i) / steps), shape.width);
    return { transform: `translate(${x.toFixed(3)}px, ${y.toFixed(3)}px)` };
  });
}

/** See the head of this file. */
export class Dot {
  private animation: Animation | undefined;

  constructor(private readonly element: HTMLElement) {}

  /** Makes it visible in its size. */
  show(shape: Shape): void {
    const { style } = this.element;
    style.width = style.height = `${shape.dot}px`;
    style.margin = `${-shape.dot / 2}px`;
    style.visibility = "visible";
  }

  /** Plays `shown` (page time) from `from` to `to` in place of what played before. */
  play(shown: Timeline, shape: Shape, from: number, to: number): void {
    const next = this.element.animate(keyframes(shown, shape, from, to), { duration: to - from, fill: "both" });
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
    this.element.style.transform = getComputedStyle(this.element).transform;
    this.animation.cancel();
    this.animation = undefined;
  }

  /** Takes it off the screen. */
  hide(): void {
    this.freeze();
    this.element.style.visibility = "hidden";
  }
}
