/** Which question is shown, and what is kept next. Pure. */

/** An answer as a form sends it; null: none yet. */
export type Given = string | null;

/** The first question without an answer, from 0; the last when all have one. */
export function firstOpen(given: readonly Given[]): number {
  const at = given.indexOf(null);
  return at < 0 ? Math.max(0, given.length - 1) : at;
}

/** Where to go on after an answer to the question `at`; the same place at the end. */
export const after = (at: number, count: number): number => Math.min(at + 1, count - 1);

/** Whether every question was answered or left out. */
export const whole = (given: readonly Given[]): boolean => !given.includes(null);

/** What is sent and what is waiting. One sending at a time, and the latest state is what goes next. */
export class Keeper {
  private busy = false;
  private waiting = false;

  /**
   * `send` resolves to the version that is kept now, `null` when another device has kept more, `undefined` when nothing was reached: then it is tried
   * again after `again`.
   */
  constructor(
    private readonly send: () => Promise<number | null | undefined>,
    private readonly told: (how: "kept" | "unkept" | "elsewhere") => void,
    private readonly again: (retry: () => void) => void,
  ) {}

  /** Something changed. */
  async changed(): Promise<void> {
    if (this.busy) {
      this.waiting = true;
      return;
    }
    this.busy = true;
    this.waiting = false;
    const answer = await this.send();
    this.busy = false;
    if (answer === null) return this.told("elsewhere");
    if (answer === undefined) {
      this.told("unkept");
      this.again(() => void this.changed());
      return;
    }
    if (this.waiting) return this.changed();
    this.told("kept");
  }
}
