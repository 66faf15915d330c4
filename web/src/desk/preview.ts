/**
 * The small preview: the same timeline and path as the client's page, on the same clock, and played in the same way, so that both show
 * in one frame what is due in it. It shows what was ordered; it claims nothing.
 */
import type { DeskView } from "../wire/DeskView";
import type { Plan } from "../wire/Plan";
import type { SetView } from "../wire/SetView";
import type { Timeline } from "../wire/Timeline";
import { unitAt, type Point } from "../live/path";
import { endOf, phaseAt, shifted } from "../live/timeline";
import { keyframes, PAST, REPLACE, Track, WINDOW } from "../live/track";

/** The preview's box and the diameter of its dot, px. */
export interface Field {
  readonly width: number;
  readonly height: number;
  readonly dot: number;
}

/** The set that the room has not ended, if there is one. */
const open = ({ set }: DeskView): SetView | null => (set === null || set.ended !== null ? null : set);

/** Where the dot is at `phase`, px from the middle of its box. */
export function previewPlace({ path, comfort }: Plan, phase: number, { width, height, dot }: Field): Point {
  const unit = unitAt(path, comfort.sweep, phase);
  // Diagonals fill the box, whatever its proportions: the direction is what matters at this size.
  const stretch = path === "falling" || path === "rising" ? Math.SQRT2 : 1;
  return { x: unit.x * stretch * (width - dot), y: unit.y * stretch * (height - dot) };
}

/** Plays the preview's dot while `read` gives a view and a room time; null halts it where it is. */
export class Preview {
  private readonly dot: HTMLElement;
  private readonly track: Track;
  /** The view whose window plays, and since when, page time in ms. */
  private baked: { view: DeskView; at: number } | undefined;

  constructor(
    private readonly box: HTMLElement,
    private readonly read: (pageNow: number) => { view: DeskView; room: number } | null,
  ) {
    this.dot = box.querySelector<HTMLElement>("[data-part=dot]") ?? box;
    this.track = new Track(this.dot, "transform");
  }

  /** Draws what is due; call it whenever something has happened, and several times a second: a window lasts `WINDOW`. */
  draw = (): void => {
    const now = performance.now();
    const due = this.read(now);
    if (due === null) return this.halt();
    const { view, room } = due;
    const set = open(view);
    if (set === null || room >= (endOf(set.timeline) ?? -Infinity)) this.rest(view, room);
    else if (this.baked?.view !== view || now - this.baked.at >= REPLACE) this.play(view, shifted(set.timeline, now - room), now);
  };

  private play(view: DeskView, ordered: Timeline, now: number): void {
    this.track.play(keyframes(ordered, this.placing(view), now - PAST, now + WINDOW), now - PAST, now + WINDOW);
    this.baked = { view, at: now };
  }

  /** Where the next set begins, or at the end of the one that the room is about to end. */
  private rest(view: DeskView, room: number): void {
    this.halt();
    const set = open(view);
    this.dot.style.transform = this.placing(view)(set === null ? 0 : phaseAt(set.timeline, room)).transform;
  }

  private halt(): void {
    this.track.freeze();
    this.baked = undefined;
  }

  /** The keyframe of one phase, in the box as large as it is now. */
  private placing(view: DeskView): (phase: number) => { transform: string } {
    const plan = open(view)?.plan ?? view.plan;
    const field = { width: this.box.clientWidth, height: this.box.clientHeight, dot: this.dot.offsetWidth };
    return (phase) => {
      const { x, y } = previewPlace(plan, phase, field);
      return { transform: `translate(${x.toFixed(3)}px, ${y.toFixed(3)}px)` };
    };
  }
}
