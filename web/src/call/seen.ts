/**
 * Whether the other is seen and heard, by what was decoded and not by whether the line stands: a picture that froze looks like one that is calm. Pure.
 */
import type { Missing } from "../wire/Missing";

/** What the browser has counted so far. */
export interface Counted {
  /** Pictures decoded. */
  readonly pictures: number;
  /** Packets of sound that came; silence comes in packets too. */
  readonly sound: number;
}

/** Nothing is said before this time, ms. */
export const SAID_AFTER = 2_000;

interface Watched {
  /** What was counted last. */
  last: number;
  /** When it last changed, or was not to, page time, ms. */
  at: number;
  /** It has come in this call, and is to go on coming. */
  expected: boolean;
}

const afresh = (): Watched => ({ last: 0, at: 0, expected: false });

/**
 * Follows what is counted. What came is missed when it stops, for whatever reason: a client who is not seen is not seen, whether the line is poor or
 * the camera was taken. Only between sets may they end it themselves.
 */
export class Seen {
  private picture = afresh();
  private voice = afresh();

  /** Takes in what is counted at the page time `now`; `sends`: what the other says that they send; `runs`: a set does. */
  count(counted: Counted, sends: { picture: boolean; voice: boolean }, runs: boolean, now: number): void {
    follow(this.picture, counted.pictures, sends.picture || runs, now);
    follow(this.voice, counted.sound, sends.voice || runs, now);
  }

  /** For how long nothing came that should, ms; undefined: it comes, it is not to, or it is too soon to say. */
  missing(now: number): Readonly<Record<Missing, number | undefined>> {
    return { picture: missingFor(this.picture, now), voice: missingFor(this.voice, now) };
  }

  /** Another connection counts from nothing. In a set (`runs`) who was seen and heard before goes on being missed: it runs on their being there. */
  anew(runs: boolean): void {
    for (const one of ["picture", "voice"] as const) this[one] = runs ? { ...this[one], last: 0 } : afresh();
  }
}

function follow(watched: Watched, count: number, goesOn: boolean, now: number): void {
  // Negotiated anew, a connection may count from nothing again.
  const came = count !== watched.last;
  if (came) watched.expected = true;
  else if (!goesOn) watched.expected = false;
  if (came || !watched.expected) watched.at = now;
  watched.last = count;
}

function missingFor({ expected, at }: Watched, now: number): number | undefined {
  const lasted = now - at;
  return expected && lasted >= SAID_AFTER ? lasted : undefined;
}

/** The two figures of a report that count here (W3C, Identifiers for WebRTC's Statistics API). */
export function countedIn(report: Iterable<unknown>): Counted {
  let [pictures, sound] = [0, 0];
  for (const entry of report) {
    const { type, kind, framesDecoded, packetsReceived } = entry as Record<string, unknown>;
    if (type !== "inbound-rtp") continue;
    if (kind === "video") pictures += Number(framesDecoded ?? 0);
    // Not the samples played: a browser makes sound up for what did not come.
    if (kind === "audio") sound += Number(packetsReceived ?? 0);
  }
  return { pictures, sound };
}
