/**
 * Vibration at each extreme: one long buzz for left, two short ones for right, so that the sides can
 * be told with the eyes closed. A page cannot schedule it, so each buzz is started by a timer a
 * moment ahead; when the script hangs none comes.
 */
import type { Timeline } from "../wire/Timeline";
import { extremes } from "./shown";
import { sideOf, type Side } from "./tone";

/** So far ahead timers are set, ms: a little more than a tick of the player. */
const AHEAD = 150;
/** ms on, off, on. Common practice, no source. */
const PATTERN: Record<Side, number[]> = { left: [90], right: [35, 30, 35] };

/** Runs something in `ms`, unless what it gives back is called before. */
type Later = (run: () => void, ms: number) => () => void;

const byTimer: Later = (run, ms) => {
  const timer = setTimeout(run, ms);
  return () => clearTimeout(timer);
};

/** See the head of this file. */
export class Buzz {
  private waiting: (() => void)[] = [];

  constructor(
    private readonly vibrate: (pattern: number[]) => void,
    private readonly later: Later = byTimer,
  ) {}

  /** One buzz of that side, now. */
  test(side: Side): void {
    this.vibrate(PATTERN[side]);
  }

  /** Sets what comes due before `until` in `shown` (both in page time, ms) and drops what no longer does. */
  schedule(shown: Timeline, pageNow: number, until: number): void {
    this.drop();
    const due = extremes(shown, pageNow, Math.min(until, pageNow + AHEAD));
    this.waiting = due.map(({ at, phase }) => this.later(() => this.test(sideOf(phase)), at - pageNow));
  }

  /** Still, at once. */
  cut(): void {
    this.drop();
    this.vibrate([]);
  }

  private drop(): void {
    for (const cancel of this.waiting) cancel();
    this.waiting = [];
  }
}
