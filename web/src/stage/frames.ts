/**
 * Looks at animation frames, a few at a time: each one costs the page a whole turn of its script, while the dot is drawn without
 * them. Between the looks a script that is held up is noticed by its ticks. Pure; page time comes in, ms.
 */

/** `tick` is to be called so often, ms. */
export const TICK = 100;
/**
 * So many frames are looked at in a row. Three of 24 took the script's thread from 56 to 16 ms a second, and the whole browser, with sound,
 * from 13.4 to about 10.4 % of a processor (a desktop Chromium; no phone was measured).
 */
const ROW = 2;

/** See the head of this file. */
export class Frames {
  private left = 0;
  private last = 0;
  private ticked: number | undefined;
  private count = 0;
  private longest = 0;

  /** Looks at the next few frames from `now` on; goes on with those that are still awaited. */
  look(now: number): void {
    if (this.wanted) return;
    this.left = ROW;
    this.last = now;
  }

  /** Whether the next frame is to be told. */
  get wanted(): boolean {
    return this.left > 0;
  }

  /** A frame at `now`. */
  add(now: number): void {
    if (!this.wanted) return;
    this.longest = Math.max(this.longest, now - this.last);
    this.last = now;
    this.left--;
    this.count++;
  }

  /** The script ran at `now`. */
  tick(now: number): void {
    if (this.ticked !== undefined) this.longest = Math.max(this.longest, now - this.ticked - TICK);
    this.ticked = now;
  }

  /** What was seen since it was last taken: frames looked at, and the longest time for which none was drawn or the script was held up, ms. */
  take(): { frames: number; longest_gap: number } {
    const seen = { frames: this.count, longest_gap: this.longest };
    this.count = this.longest = 0;
    return seen;
  }
}
