/**
 * How long this page may go on without a sign of the desk. A sign of life is the desk's, not the
 * server's: every beat says how long ago the desk in control was known to be there. That is dated by the
 * beat which the desk answered, not by when its answer arrived, so that on any line a sign is as old as the
 * desk's round trip when it is told: so much more is borne. Pure; page time comes in.
 */

/** The silence that is borne on a link of which little is known yet, ms, on top of the desk's round trip as all limits. */
export const SILENCE_LIMIT = 1_500;
/**
 * The longest that is borne anywhere, ms: a packet lost twice over on a slow line takes about that long (at 150±75 ms
 * with 1 % loss, 1.5 s stopped three sets an hour for nothing in virtual time). The easing gets brisker with it, so rest comes no later.
 */
export const MOST_LIMIT = 1_850;
/** How long the easing to rest takes, ms. */
export const EASE = 600;
/** Limit and easing together, ms: whoever waits longer eases more briskly ... */
const LIMIT_AND_EASE = 1_400;
/** ... but not more briskly than this, ms, ... */
const BRISK_EASE = 300;
/** ... and than this when the page looked up late, ms. */
const LEAST_EASE = 200;
/** Nothing moves or sounds later than this after the last sign of the desk, ms. */
export const LAST_MOTION = 3_000;

/** The shortest, ms. */
export const LEAST_LIMIT = 750;
/** Of a round trip no more than this is borne on top, ms (`MOST_TRIP_MS` of leeward_core): limit, trip and easing end within LAST_MOTION. */
export const MOST_TRIP = 500;
const GAPS_NEEDED = 100;
const GAPS_KEPT = 400;
/** The same sign told again lies this much off at most, ms: the page's clock was corrected in between. */
const SAME_SIGN = 25;

/** See the head of this file. */
export class Watchdog {
  private lastSign = -Infinity;
  /** The round trip that is borne of the last sign, ms. */
  private trip = 0;
  /** What was usual beyond it, ms. */
  private gaps: number[] = [];

  /**
   * Takes in a beat.
   *
   * @param left page time at which the beat left the server, ms, as far as it is known: a beat that
   *   waited in a queue is no fresh sign.
   * @param arrived page time of its arrival, ms
   * @param deskSilent ms since the desk was known to be there when it left; `null`: there is no desk
   * @param deskTrip how much of that was the way of the beat and its answer, as far as it is usual on the desk's line, ms
   * @param measure whether the gap counts for the limit (beats are rare while nothing moves)
   */
  onBeat(left: number, arrived: number, deskSilent: number | null, deskTrip: number, measure: boolean): void {
    if (deskSilent === null) return;
    const sign = Math.min(left, arrived) - deskSilent;
    if (sign <= this.lastSign + SAME_SIGN) return;
    // A longer gap was a lost line, not what is usual on this one.
    const gap = arrived - this.lastSign - this.trip;
    this.trip = Math.min(MOST_TRIP, Math.max(0, deskTrip));
    if (measure && gap <= MOST_LIMIT) this.gaps = [...this.gaps, gap].slice(-GAPS_KEPT);
    this.lastSign = sign;
  }

  /** The room began anew: signs told in its old time say nothing any more. */
  restart(): void {
    this.lastSign = -Infinity;
  }

  /** ms since the desk was last known to be there; `Infinity` when there never was one. */
  silence(pageNow: number): number {
    return pageNow - this.lastSign;
  }

  /** The silence that is borne, ms. */
  get limit(): number {
    return this.beyondTrip + this.trip;
  }

  /** So much of it on top of the round trip: 1,500 at first, then twice the 99th percentile of what is usual here, within 750 to 1,850. */
  private get beyondTrip(): number {
    if (this.gaps.length < GAPS_NEEDED) return SILENCE_LIMIT;
    const sorted = [...this.gaps].sort((a, b) => a - b);
    const p99 = sorted[Math.ceil(sorted.length * 0.99) - 1] ?? SILENCE_LIMIT;
    return Math.min(MOST_LIMIT, Math.max(LEAST_LIMIT, 2 * p99));
  }

  /** Whether the silence has become too long. */
  tooSilent(pageNow: number): boolean {
    return this.silence(pageNow) > this.limit;
  }

  /** Page time at which motion rests whose easing begins at `now`, ms. */
  restBy(now: number): number {
    const ease = Math.min(EASE, Math.max(BRISK_EASE, LIMIT_AND_EASE - this.beyondTrip));
    const due = this.lastSign + this.limit + ease;
    return Math.max(now, Math.min(now + EASE, Math.max(now + LEAST_EASE, due), this.lastMotion));
  }

  /** Page time after which nothing may move or sound, whatever else happens. */
  get lastMotion(): number {
    return this.lastSign + LAST_MOTION;
  }
}
