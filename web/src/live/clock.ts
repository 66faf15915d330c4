/**
 * The room's time on this page, from the beats of the server and their echoes. Pure: the caller
 * passes page time in.
 *
 * Offset = room time - page time. A beat that arrives proves that the offset is at least
 * `sent - arrival`; an answer that the server heard proves that it is at most `heard - page`.
 * The offset is taken halfway between the sharpest of both over the last minute and a half (with one exchange
 * alone that is the offset of RFC 5905, section 8); what one direction is slower than the other
 * cannot be seen by any exchange of messages, so `bound` keeps the whole way to the farther proof.
 * The clocks' relative speed is found by `skewOf`. Corrections are slewed at 5 ms a second while
 * something moves, stepped otherwise.
 *
 * What cannot be is left out: times that are no numbers, and echoes of another minute or of the
 * future. Proofs that contradict each other mean that a clock was set anew, or stood still while
 * the computer slept: then all of them are forgotten and found again.
 */
import type { Beat } from "../wire/Beat";
import type { ClockError } from "../wire/ClockError";
import type { Echo } from "../wire/Echo";
import { Proofs, skewOf, type Proof, type Skew } from "./skew";

/** How fast a correction may be worked in, ms per ms. */
const SLEW = 0.005;
/** An echo that the server heard longer ago is of no use, ms. */
const ECHO_AGE = 60_000;
/** The most that two clocks run apart: 50 ppm each, which ordinary oscillators keep. */
const MOST_SKEW = 100e-6;
/** No network delay explains proofs that contradict each other by this much, ms: a clock was set anew. */
const RESTART_GAP = 250;
/** As many estimates as `spread` looks back on. */
const RECENT = 24;

/** Clocks of which nothing is known but that they are ordinary ones. */
const ANY_SKEW: Skew = { rate: 0, sd: MOST_SKEW };

/** See the head of this file. One per socket's page; survives reconnects. */
export class RoomClock {
  private readonly atLeast = new Proofs(1);
  private readonly atMost = new Proofs(-1);
  private recent: Proof[] = [];
  private lastEcho: number | undefined;
  private held = false;
  /** There are not proofs enough, and the next estimate is stepped to. */
  private anew = true;

  /** The offset in use was `offset` at page time `at` and moves towards `target` from there. */
  private line: { at: number; offset: number; target: number; skew: number } | undefined;

  /** Takes in a beat that arrived at page time `pageNow`, ms. */
  onBeat(beat: Beat, pageNow: number): void {
    if (!Number.isFinite(beat.sent) || !Number.isFinite(pageNow)) return;
    this.notice({ at: pageNow, offset: beat.sent - pageNow }, this.atLeast);
    if (beat.echo && this.isOfUse(beat.echo, pageNow)) {
      this.lastEcho = beat.echo.id;
      this.notice({ at: beat.echo.page, offset: beat.echo.heard - beat.echo.page }, this.atMost);
    }
    this.estimate(pageNow);
  }

  /** Room time at page time `pageNow`, ms. `NaN` until `known`. */
  roomTime(pageNow: number): number {
    return pageNow + this.offsetAt(pageNow);
  }

  /** Page time at room time `room`, ms, near `pageNow`. `NaN` until `known`. */
  pageTime(room: number, pageNow: number): number {
    const first = room - this.offsetAt(pageNow);
    return room - this.offsetAt(Math.max(first, pageNow));
  }

  /** Whether both directions were heard, so that room time can be told. */
  get known(): boolean {
    return this.line !== undefined;
  }

  /**
   * Whether something moves by this clock. While it does, corrections are slewed and room time
   * never jumps; otherwise they take effect at once.
   */
  hold(on: boolean, pageNow: number): void {
    this.held = on;
    if (!on) this.settle(pageNow);
  }

  /** How unsteady the estimate is, ms: what to expect of it, one standard deviation. */
  spread(pageNow: number): number {
    if (!this.line) return Infinity;
    const { at, target, skew } = this.line;
    const squares = this.recent.map((past) => (past.offset + skew * (at - past.at) - target) ** 2);
    return Math.sqrt(squares.reduce((sum, s) => sum + s, 0) / squares.length) + Math.abs(this.pending(pageNow));
  }

  /** What the error cannot exceed, ms: half the least round trip, the pending slew, drift since. */
  bound(pageNow: number): number {
    const low = this.atLeast.best(pageNow, ANY_SKEW);
    const high = this.atMost.best(pageNow, ANY_SKEW);
    if (!this.line || low === undefined || high === undefined) return Infinity;
    const offset = this.offsetAt(pageNow);
    return Math.max(offset - low, high - offset);
  }

  /** Both of these, to be told to the other side; null while room time is not known. */
  error(pageNow: number): ClockError | null {
    const [spread, bound] = [this.spread(pageNow), this.bound(pageNow)];
    return Number.isFinite(spread) && Number.isFinite(bound) ? { spread, bound } : null;
  }

  /** Forgets all: the room's time began anew (another epoch). */
  restart(): void {
    this.forget();
    this.line = undefined;
  }

  /** Forgets the proofs. The last estimate stays in use until there is another, which is then stepped to. */
  private forget(): void {
    this.atLeast.clear();
    this.atMost.clear();
    this.recent = [];
    this.lastEcho = undefined;
  }

  private isOfUse({ id, page, heard }: Echo, pageNow: number): boolean {
    const told = id === this.lastEcho;
    return !told && Number.isFinite(heard) && page <= pageNow && page >= pageNow - ECHO_AGE;
  }

  private notice(proof: Proof, side: Proofs): void {
    if (this.contradicts(proof, side)) this.forget();
    side.add(proof);
  }

  private contradicts(proof: Proof, side: Proofs): boolean {
    const opposite = side === this.atLeast ? this.atMost : this.atLeast;
    const limit = opposite.best(proof.at, ANY_SKEW);
    if (limit === undefined) return false;
    return side === this.atLeast ? proof.offset > limit + RESTART_GAP : proof.offset < limit - RESTART_GAP;
  }

  private estimate(pageNow: number): void {
    this.atLeast.forget(pageNow);
    this.atMost.forget(pageNow);
    const skew = skewOf([this.atLeast, this.atMost], pageNow);
    const low = this.atLeast.best(pageNow, skew);
    const high = this.atMost.best(pageNow, skew);
    if (low === undefined || high === undefined) {
      this.anew = true;
      return;
    }
    const target = (low + high) / 2;
    this.recent = [...this.recent, { at: pageNow, offset: target }].slice(-RECENT);
    const stepped = this.anew || !this.line;
    this.line = { at: pageNow, offset: stepped ? target : this.offsetAt(pageNow), target, skew: skew.rate };
    this.anew = false;
    if (!this.held) this.settle(pageNow);
  }

  private settle(pageNow: number): void {
    if (!this.line) return;
    const offset = this.line.target + this.drifted(pageNow);
    this.line = { ...this.line, at: pageNow, offset, target: offset };
  }

  private drifted(pageNow: number): number {
    return this.line ? this.line.skew * (pageNow - this.line.at) : 0;
  }

  private pending(pageNow: number): number {
    if (!this.line) return 0;
    return this.line.target + this.drifted(pageNow) - this.offsetAt(pageNow);
  }

  private offsetAt(pageNow: number): number {
    if (!this.line) return NaN;
    const { at, offset, target } = this.line;
    const most = SLEW * Math.max(0, pageNow - at);
    return offset + this.drifted(pageNow) + Math.min(most, Math.max(-most, target - offset));
  }
}
