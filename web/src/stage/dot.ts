/** The dot, played as baked windows of the pure position function. */
import { placeAt } from "../live/path";
import type { Path } from "../wire/Path";
import type { Sweep } from "../wire/Sweep";
import type { Timeline } from "../wire/Timeline";
import { keyframes, Track } from "../live/track";

/** Where and how large; px. */
export interface Shape {
  readonly path: Path;
  readonly sweep: Sweep;
  /** From extreme to extreme. */
  readonly width: number;
  /** Diameter. */
  readonly dot: number;
}

/** What the eyes follow: one at a time is on the screen. Times are page time, ms. */
export interface Figure {
  /** Makes it visible. */
  show(shape: Shape): void;
  /** Plays `shown` from `from` to `to` in place of what played before. */
  play(shown: Timeline, shape: Shape, from: number, to: number): void;
  /** How far the screen has got; `undefined` when nothing plays. */
  readonly reached: number | undefined;
  /** At rest, in this frame. */
  freeze(): void;
}

/** The keyframe of one phase. */
export const place =
  ({ path, sweep, width }: Shape) =>
  (phase: number): Keyframe => {
    const { x, y } = placeAt(path, sweep, phase, width);
    return { transform: `translate(${x.toFixed(3)}px, ${y.toFixed(3)}px)` };
  };

/** See the head of this file. */
export class Dot implements Figure {
  private readonly track: Track;

  constructor(element: HTMLElement) {
    this.track = new Track(element, "transform");
  }

  show(shape: Shape): void {
    const { style } = this.track.element;
    style.width = style.height = `${shape.dot}px`;
    style.margin = `${-shape.dot / 2}px`;
    style.visibility = "visible";
  }

  play(shown: Timeline, shape: Shape, from: number, to: number): void {
    this.track.play(keyframes(shown, place(shape), from, to), from, to);
  }

  get reached(): number | undefined {
    return this.track.reached;
  }

  freeze(): void {
    this.track.freeze();
  }

  /** Takes it off the screen. */
  hide(): void {
    this.freeze();
    this.track.element.style.visibility = "hidden";
  }
}
