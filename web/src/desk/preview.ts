// The small preview: the same timeline and path as the client's page, on the same clock. It shows what was ordered; it claims nothing.
import type { DeskView } from "../wire/DeskView";
import { unitAt, type Point } from "../live/path";
import { endOf, phaseAt } from "../live/timeline";

/** Where the dot is in a box of the given size, px from its middle; `dot` is its diameter. */
export function previewPlace(view: DeskView, room: number, box: { width: number; height: number }, dot: number): Point {
  // At rest it stands where the next set begins.
  const set = view.set === null || view.set.ended !== null ? null : view.set;
  const plan = set?.plan ?? view.plan;
  const unit = unitAt(plan.path, plan.comfort.sweep, set === null ? 0 : phaseAt(set.timeline, room));
  // Diagonals fill the box, whatever its proportions: the direction is what matters at this size.
  const stretch = plan.path === "falling" || plan.path === "rising" ? Math.SQRT2 : 1;
  return { x: unit.x * stretch * (box.width - dot), y: unit.y * stretch * (box.height - dot) };
}

/** Whether the ordered stimulus moves at room time `room`. */
export function previewMoves(view: DeskView, room: number): boolean {
  if (view.set === null || view.set.ended !== null) return false;
  const first = view.set.timeline.segments[0];
  const end = endOf(view.set.timeline);
  return first !== undefined && end !== undefined && room >= first.starts_at && room < end;
}

/** Moves the preview's dot, frame by frame, while `read` gives a view and a room time; null leaves it where it is. */
export class Preview {
  private frame = 0;
  private readonly dot: HTMLElement;

  constructor(private readonly box: HTMLElement, private readonly read: (pageNow: number) => { view: DeskView; room: number } | null) {
    this.dot = box.querySelector<HTMLElement>("[data-part=dot]") ?? box;
  }

  /** Draws once, and goes on by itself while anything moves. */
  draw = (): void => {
    cancelAnimationFrame(this.frame);
    const now = this.read(performance.now());
    if (now === null) return;
    const { x, y } = previewPlace(now.view, now.room, { width: this.box.clientWidth, height: this.box.clientHeight }, this.dot.offsetWidth);
    this.dot.style.transform = `translate(${x.toFixed(2)}px, ${y.toFixed(2)}px)`;
    if (previewMoves(now.view, now.room)) this.frame = requestAnimationFrame(this.draw);
  };
}
