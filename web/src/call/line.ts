/**
 * Whether the line carries a picture beside the voice. The voice goes first: when it suffers, the picture is held back, and tried again later. Pure.
 */

/** What the other end last reported of what is sent. */
export interface Sending {
  /** When it reported; the same report is found again and again. */
  readonly at: number | undefined;
  /** Of the voice, the part that was lost on the way, 0 to 1; undefined: not known yet. */
  readonly lost: number | undefined;
  /** There and back, ms; undefined: not known yet. */
  readonly trip: number | undefined;
}

/** From this loss on words are hard to follow; under the other it is good. Both are judgements: no source. */
const POOR_LOSS = 0.1;
const GOOD_LOSS = 0.03;
/** From this way there and back on people talk across each other (ITU-T G.114 has 400 ms one way as the limit of a planned network). */
const POOR_TRIP = 800;
/** So many reports in a row say so before the picture is held back: some ten seconds, since a voice is reported on every five (RFC 3550, section 6.2). */
const POOR_REPORTS = 2;
/** It is good for so long before the picture is tried again, ms; twice as long after each time that was too soon, up to the last. */
const GOOD_FOR = 10_000;
const GOOD_FOR_AT_MOST = 80_000;
/** A picture that holds so long was not tried too soon, ms. */
const HELD = 30_000;

/** Follows the line. */
export class Line {
  /** The picture is held back. */
  spares = false;
  private since: number | undefined;
  private poor = 0;
  private last: number | undefined;
  private wait = GOOD_FOR;
  private backAt = Number.NEGATIVE_INFINITY;

  /** Takes in what is known at the page time `now`. @returns whether something changed. */
  judge({ at, lost, trip }: Sending, now: number): boolean {
    if (at === undefined || at === this.last) return false;
    this.last = at;
    const poor = (lost ?? 0) >= POOR_LOSS || (trip ?? 0) >= POOR_TRIP;
    const good = (lost ?? 0) < GOOD_LOSS && (trip ?? 0) < POOR_TRIP;
    this.poor = poor ? this.poor + 1 : 0;
    this.since = good ? (this.since ?? now) : undefined;
    const turns = this.spares ? this.since !== undefined && now - this.since >= this.wait : this.poor >= POOR_REPORTS;
    if (turns) this.turn(now);
    return turns;
  }

  private turn(now: number): void {
    this.since = undefined;
    this.poor = 0;
    if (this.spares) this.backAt = now;
    else this.wait = now - this.backAt < HELD ? Math.min(this.wait * 2, GOOD_FOR_AT_MOST) : GOOD_FOR;
    this.spares = !this.spares;
  }
}

/** What a report says of the voice that is sent (W3C, Identifiers for WebRTC's Statistics API: remote-inbound-rtp). */
export function sendingIn(report: Iterable<unknown>): Sending {
  for (const entry of report) {
    const { type, kind, timestamp, fractionLost, roundTripTime } = entry as Record<string, unknown>;
    if (type !== "remote-inbound-rtp" || kind !== "audio") continue;
    return { at: numberOf(timestamp), lost: numberOf(fractionLost), trip: typeof roundTripTime === "number" ? roundTripTime * 1000 : undefined };
  }
  return { at: undefined, lost: undefined, trip: undefined };
}

const numberOf = (value: unknown): number | undefined => (typeof value === "number" ? value : undefined);
