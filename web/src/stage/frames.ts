/** Counts animation frames: how many, and the longest time between two. Pure; page time comes in. */
export class Frames {
  private last: number | undefined;
  private count = 0;
  private longest = 0;

  /** A frame at page time `now`, ms. */
  add(now: number): void {
    if (this.last !== undefined) this.longest = Math.max(this.longest, now - this.last);
    this.last = now;
    this.count++;
  }

  /** What was seen since it was last taken. */
  take(): { frames: number; longest_gap: number } {
    const seen = { frames: this.count, longest_gap: this.longest };
    this.count = this.longest = 0;
    return seen;
  }
}
