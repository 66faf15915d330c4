/**
 * The figure of the tapping pacer: two large shapes, of which the side whose turn it is is filled.
 * Each lights once a cycle, so both together light twice the rate a second: `safety` keeps that at
 * three or less.
 */
import { extremeAt } from "../live/path";
import type { Timeline } from "../wire/Timeline";
import type { Figure, Shape } from "./dot";
import { keyframes, Track } from "../live/track";

/** The side that is filled at `phase`: from each extreme, where its tone sounds, to the next; none before the first. */
export function sideAt(phase: number): "left" | "right" | undefined {
  const reached = Math.floor(phase * 2 + 1e-9);
  if (reached < 1) return undefined;
  return extremeAt(reached / 2) === "first" ? "left" : "right";
}

const lit =
  (side: "left" | "right") =>
  (phase: number): Keyframe => ({ opacity: sideAt(phase) === side ? 1 : 0 });

/** See the head of this file. */
export class Pacer implements Figure {
  private readonly left: Track;
  private readonly right: Track;

  /** @param element holds both shapes; `left` and `right` are their fillings */
  constructor(
    private readonly element: HTMLElement,
    left: HTMLElement,
    right: HTMLElement,
  ) {
    this.left = new Track(left, "opacity");
    this.right = new Track(right, "opacity");
  }

  show(): void {
    this.element.style.visibility = "visible";
  }

  play(shown: Timeline, _shape: Shape, from: number, to: number): void {
    this.left.play(keyframes(shown, lit("left"), from, to), from, to);
    this.right.play(keyframes(shown, lit("right"), from, to), from, to);
  }

  get reached(): number | undefined {
    return this.left.reached;
  }

  /** At rest it is off the screen: a shape that stays filled would ask for a tap. */
  freeze(): void {
    this.left.freeze();
    this.right.freeze();
    this.element.style.visibility = "hidden";
  }
}
