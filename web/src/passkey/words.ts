/** What went wrong with a passkey, in plain words: what happened, what is safe, what to do. */

/** The portal said no, in its own words. */
export class Refused extends Error {}

/** The names of the browser's errors (W3C Web Authentication Level 3, sections 5.1.3 and 5.1.4) in plain words. */
const WORDS: Readonly<Record<string, string>> = {
  NotAllowedError: "No passkey was used: it was cancelled, took too long, or this device has none for this portal. Nothing has changed. Try again.",
  InvalidStateError: "This device already has a passkey of yours for this portal. Use another device or a security key.",
  ConstraintError: "This device cannot check that it is you. Set up a screen lock, a PIN, a finger or a face on it, or use another device.",
  NotSupportedError: "This device cannot make the kind of passkey that is needed. Use another device or a security key.",
  SecurityError: "Passkeys work only at this portal's own address. Check the address at the top of the browser.",
  AbortError: "It was stopped before it was done. Nothing has changed. Try again.",
};

/** The browser lacks what passkeys need. */
export const TOO_OLD = "This browser cannot use passkeys. Update it, or use a current Firefox, Chrome, Edge or Safari.";

/** The link has no token. */
export const INCOMPLETE = "This link is not complete. Copy all of it, to its last character, from the message you were sent.";

/** A sentence for whatever was thrown; never a code or the browser's own text. */
export function inWords(fault: unknown): string {
  if (fault instanceof Refused) return fault.message;
  const name = fault instanceof Error || fault instanceof DOMException ? fault.name : "";
  if (name === "TypeError") return "The portal could not be reached. Nothing has changed. Check the connection and try again.";
  return WORDS[name] ?? "Something went wrong on this page. Nothing has changed. Reload it and try again.";
}
