/** Which question is shown, and what is kept next. Pure. */

/** An answer as a form sends it; null: none yet. */
export type Given = string | null;

/** The first question without an answer, from 0; the last when all have one. */
export function firstOpen(given: readonly Given[]): number {
  const at = given.indexOf(null);
  return at < 0 ? Math.max(0, given.length - 1) : at;
}

/** Where to go on after the question `at`: the next one; after the last, back to one that was passed over. */
export const after = (at: number, given: readonly Given[]): number => (at + 1 < given.length ? at + 1 : firstOpen(given));

/** Whether every question was answered or left out. */
export const whole = (given: readonly Given[]): boolean => !given.includes(null);

/** How a sending went. `again`: nothing was reached; `elsewhere`: another page has kept more, or it was handed in; `over`: the link holds no more. */
export type Went = "kept" | "again" | "elsewhere" | "over";

/** Where what was chosen stands. */
export type Standing = "kept" | "keeping" | "unkept" | "elsewhere" | "over";

const SHORTEST_MS = 2000;
const LONGEST_MS = 30_000;

/** Keeps what is chosen: one sending at a time, always of the latest, and after one that reached nothing again by itself, ever more slowly. */
export class Keeper {
  private sending = false;
  private dirty = false;
  private wait = SHORTEST_MS;
  private cancel: () => void = () => undefined;
  private waiting: ((standing: Standing) => void)[] = [];
  private standing: Standing = "kept";

  /** `send` sends the latest and never rejects; `later` runs something after so many milliseconds, and returns what takes that back. */
  constructor(
    private readonly send: () => Promise<Went>,
    private readonly told: (standing: Standing) => void,
    private readonly later: (run: () => void, milliseconds: number) => () => void,
  ) {}

  /** Something changed. */
  changed(): void {
    if (this.standing === "elsewhere" || this.standing === "over") return;
    this.dirty = true;
    if (this.standing === "kept") this.say("keeping");
    if (!this.sending) this.go();
  }

  /** Resolves once what was chosen is kept, or once it is clear that it cannot be now. */
  settled(): Promise<Standing> {
    if (this.standing === "unkept") {
      this.say("keeping");
      if (!this.sending) this.go();
    }
    if (this.standing !== "keeping") return Promise.resolve(this.standing);
    return new Promise((resolve) => this.waiting.push(resolve));
  }

  /** The page goes away: what is not on its way yet is sent now. */
  leaving(): void {
    if (this.dirty) void this.send();
  }

  private go(): void {
    this.cancel();
    this.sending = true;
    this.dirty = false;
    void this.send().then((went) => this.back(went));
  }

  private back(went: Went): void {
    this.sending = false;
    if (went === "again") {
      this.dirty = true;
      this.say("unkept");
      this.cancel = this.later(() => this.go(), this.wait);
      this.wait = Math.min(this.wait * 2, LONGEST_MS);
      return;
    }
    this.wait = SHORTEST_MS;
    if (went === "kept" && this.dirty) this.go();
    else this.say(went);
  }

  private say(standing: Standing): void {
    this.standing = standing;
    this.told(standing);
    if (standing === "keeping") return;
    for (const resolve of this.waiting.splice(0)) resolve(standing);
  }
}
