/**
 * The small preview: the same timeline and path as the client's page, on the same clock, and played in the same way, so that both show
 * in one frame what is due in it. It shows what was ordered; it claims nothing.
 */
import type { DeskView } from "../wire/DeskView";
import type { SetView } from "../wire/SetView";
import { unitAt, type Point } from "../live/path";
import { endOf, phaseAt, shifted } from "../live/timeline";
import { keyframes, PAST, REPLACE, Track, WINDOW } from "../live/track";

interface Box {
  readonly width: number;
  readonly height: number;
}

/** The set that the room has not ended, if there is one. */
const open = ({ set }: DeskView): SetView | null => (set === null || set.ended !== null ? null : set);

/** Where the dot is at `phase` in a box of the given size, px from its middle; `dot` is its diameter. */
function placeIn(view: DeskView, phase: number, box: Box, dot: number): Point {
  const plan = open(view)?.plan ?? view.plan;
  const unit = unitAt(plan.path, plan.comfort.sweep, phase);
  // Diagonals fill the box, whatever its proportions: the direction is what matters at this size.
  const stretch = plan.path === "falling" || plan.path === "rising" ? Math.SQRT2 : 1;
  return { x: unit.x * stretch * (box.width - dot), y: unit.y * stretch * (box.height - dot) };
}

/** Where the dot is at room time `room`; at rest it stands where the next set begins. */
export function previewPlace(view: DeskView, room: number, box: Box, dot: number): Point {
  const set = open(view);
  return placeIn(view, set === null ? 0 : phaseAt(set.timeline, room), box, dot);
}

/** Plays the preview's dot while `read` gives a view and a room time; null halts it where it is. */
export class Preview {
  private readonly dot: HTMLElement;
  private readonly track: Track;
  /** The view whose window plays, and since when, page time in ms. */
  private baked: { view: DeskView; at: number } | undefined;

  constructor(private readonly box: HTMLElement, private readonly read: (pageNow: number) => { view: DeskView; room: number } | null) {
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

  private play(view: DeskView, ordered: SetView["timeline"], now: number): void {
    const frame = this.frameOf(view);
    this.track.play(keyframes(ordered, frame, now - PAST, now + WINDOW), now - PAST, now + WINDOW);
    this.baked = { view, at: now };
  }

  private rest(view: DeskView, room: number): void {
    this.halt();
    const set = open(view);
    this.dot.style.transform = String(this.frameOf(view)(set === null ? 0 : phaseAt(set.timeline, room))["transform"]);
  }

  private halt(): void {
    this.track.freeze();
    this.baked = undefined;
  }

  /** The keyframe of one phase, in the box as large as it is now. */
  private frameOf(view: DeskView): (phase: number) => Keyframe {
    const size = { width: this.box.clientWidth, height: this.box.clientHeight };
    const diameter = this.dot.offsetWidth;
    return (phase) => {
      const { x, y } = placeIn(view, phase, size, diameter);
      return { transform: `translate(${x.toFixed(3)}px, ${y.toFixed(3)}px)` };
    };
  }
}
