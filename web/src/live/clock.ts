/**
 * The room's time on this page, from the beats of the server and their echoes. Pure: the caller
 * passes page time in.
 *
 * Offset = room time - page time. A beat that arrives proves that the offset is at least
 * `sent - arrival`; an answer that the server heard proves that it is at most `heard - page`.
 * The offset is taken halfway between the sharpest of both over the last minute; what one
 * direction is slower than the other cannot be seen by any exchange of messages, so `bound` keeps
 * the whole half gap. The clocks' relative speed is found from the corridor between both kinds of
 * proof, and trusted only as far as it beats a prior of 40 ppm. Corrections are slewed at
 * 5 ms a second while something moves, stepped otherwise.
 */
import type { Beat } from "../wire/Beat";

/** Exchanges older than this are forgotten, ms. */
const WINDOW = 60_000;
/** Only the sharpest proof of each of these is kept, ms. */
const BUCKET = 1_000;
/** How fast a correction may be worked in, ms per ms. */
const SLEW = 0.005;
/** How far two ordinary oscillators drift apart, as a standard deviation. */
const PRIOR_SKEW = 40e-6;
/** No network delay explains proofs that contradict each other by this much, ms: a clock was set anew. */
const RESTART_GAP = 250;
/** As many estimates as `spread` looks back on. */
const RECENT = 24;

/** At page time `at` the offset was at least, at most, or about, `offset`. */
interface Proof {
  readonly at: number;
  readonly offset: number;
}

/** Keeps the sharpest proof of each second of the last minute, in one direction. */
class Proofs {
  private kept: Proof[] = [];

  constructor(private readonly sharper: (a: number, b: number) => boolean) {}

  add(proof: Proof): void {
    const bucket = (p: Proof) => Math.floor(p.at / BUCKET);
    const twin = this.kept.findIndex((other) => bucket(other) === bucket(proof));
    const other = this.kept[twin];
    if (!other) this.kept.push(proof);
    else if (this.sharper(proof.offset, other.offset)) this.kept[twin] = proof;
  }

  forgetBefore(at: number): void {
    this.kept = this.kept.filter((proof) => proof.at >= at);
  }

  clear(): void {
    this.kept = [];
  }

  all(): readonly Proof[] {
    return this.kept;
  }

  /** The sharpest, each carried to page time `at` with the given skew. */
  best(at: number, skew: number): number | undefined {
    return this.kept
      .map((proof) => proof.offset + skew * (at - proof.at))
      .reduce<number | undefined>((best, o) => (best === undefined || this.sharper(o, best) ? o : best), undefined);
  }
}

/** See the head of this file. One per socket's page; survives reconnects. */
export class RoomClock {
  private readonly atLeast = new Proofs((a, b) => a > b);
  private readonly atMost = new Proofs((a, b) => a < b);
  private recent: Proof[] = [];
  private lastEcho: number | undefined;
  private lastExchange: number | undefined;
  private held = false;

  /** The offset in use was `offset` at page time `at` and moves towards `target` from there. */
  private line: { at: number; offset: number; target: number; skew: number } | undefined;
  private gap = Infinity;

  /** Takes in a beat that arrived at page time `pageNow`, ms. */
  onBeat(beat: Beat, pageNow: number): void {
    this.notice({ at: pageNow, offset: beat.sent - pageNow }, this.atLeast);
    if (beat.echo && beat.echo.id !== this.lastEcho) {
      this.lastEcho = beat.echo.id;
      this.lastExchange = pageNow;
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
    if (this.lastExchange === undefined) return Infinity;
    const drift = PRIOR_SKEW * Math.max(0, pageNow - this.lastExchange);
    return this.gap / 2 + Math.abs(this.pending(pageNow)) + drift;
  }

  /** Forgets all: the room's time began anew (another epoch). */
  restart(): void {
    this.atLeast.clear();
    this.atMost.clear();
    this.recent = [];
    this.lastEcho = this.lastExchange = this.line = undefined;
    this.gap = Infinity;
  }

  private notice(proof: Proof, side: Proofs): void {
    if (this.contradicts(proof, side)) this.restart();
    side.add(proof);
  }

  private contradicts(proof: Proof, side: Proofs): boolean {
    const opposite = side === this.atLeast ? this.atMost : this.atLeast;
    const limit = opposite.best(proof.at, 0);
    if (limit === undefined) return false;
    return side === this.atLeast ? proof.offset > limit + RESTART_GAP : proof.offset < limit - RESTART_GAP;
  }

  private estimate(pageNow: number): void {
    this.atLeast.forgetBefore(pageNow - WINDOW);
    this.atMost.forgetBefore(pageNow - WINDOW);
    const skew = skewOf(this.atLeast.all(), this.atMost.all());
    const low = this.atLeast.best(pageNow, skew);
    const high = this.atMost.best(pageNow, skew);
    if (low === undefined || high === undefined) return;
    const target = (low + high) / 2;
    this.gap = Math.max(0, high - low);
    this.recent = [...this.recent, { at: pageNow, offset: target }].slice(-RECENT);
    this.line = { at: pageNow, offset: this.line ? this.offsetAt(pageNow) : target, target, skew };
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

/**
 * The relative speed of both clocks, from the corridor: the slopes of all lines that lie above
 * every lower proof and below every upper one. The middle of those is shrunk towards 0 by how
 * wide the corridor is against the prior (the posterior mean of two normal distributions, the
 * corridor taken as uniform).
 */
function skewOf(lower: readonly Proof[], upper: readonly Proof[]): number {
  let least = -Infinity;
  let most = Infinity;
  for (const low of lower) {
    for (const high of upper) {
      const apart = high.at - low.at;
      if (apart === 0) continue;
      const slope = (high.offset - low.offset) / apart;
      if (apart > 0) most = Math.min(most, slope);
      else least = Math.max(least, slope);
    }
  }
  if (!Number.isFinite(least) || !Number.isFinite(most)) return 0;
  const variance = (most - least) ** 2 / 12;
  return ((least + most) / 2) * (PRIOR_SKEW ** 2 / (PRIOR_SKEW ** 2 + variance));
}
