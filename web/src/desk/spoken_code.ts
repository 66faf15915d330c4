// The code that the clinician says aloud: how long it holds, and when it is of no use any more. Pure.

/** A code as it was made. */
export interface SpokenCode {
  digits: string;
  /** When it ends, ms as of `Date.now()`. */
  until: number;
}

/** The code of an answer, or null when the answer holds none. */
export function codeIn(digits: string | null, until: string | null): SpokenCode | null {
  const ends = Date.parse(until ?? "");
  return digits === null || Number.isNaN(ends) ? null : { digits, until: ends };
}

/** What stands beside a code: that it works once, and until when, in the clinician's own time. */
export function codeWords(code: SpokenCode, time: (at: number) => string): string {
  return `Say this code. It works once, until ${time(code.until)}.`;
}

/**
 * Why a code that is shown is of no use any more, or null while it may be used.
 *
 * @param used another device has come to the door since it was made
 */
export function whyGone(code: SpokenCode, used: boolean, now: number): string | null {
  if (used) return "The code was used. Another device needs a new code; the link stays the same.";
  return now >= code.until ? "The code has ended. Make a new code; the link stays the same." : null;
}
