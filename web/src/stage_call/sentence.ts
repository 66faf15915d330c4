/** The one sentence about the call that the client most needs now. Pure. */
import type { CallState, Own } from "../call/connection";
import type { Sends } from "../wire/Sends";

/** What it is read off. */
export interface Standing {
  readonly state: CallState;
  /** What this page sends. */
  readonly sends: Sends;
  /** What the other says that they send. */
  readonly other: Sends | undefined;
  /** What of its own is open, as `null` is not. */
  readonly own: Own;
}

/** Its ids in the catalogue, one after the other; none: all is well, or there is nothing to say. `givesUp`: it was tried for long. */
export function sentencesFor(standing: Standing, givesUp: boolean): readonly string[] {
  const first = sentenceFor(standing, givesUp);
  if (first === undefined) return [];
  const which = IN_THE_WAY.exec(first)?.[1] as keyof Own | undefined;
  // What the system keeps for a while it gives back by itself: there is no button for that.
  return which !== undefined && standing.own[which] === null ? [first, "call_in_help"] : [first];
}

const IN_THE_WAY = /^call_(picture|voice)_(?:refused|absent|taken|stopped)$/;

function sentenceFor({ state, sends, other }: Standing, givesUp: boolean): string | undefined {
  if (state === "none") return undefined;
  if (state === "no_relay" || state === "too_much" || state === "unfit" || (givesUp && state !== "there")) return "call_unreached";
  if (state === "connecting") return "call_connecting";
  if (state === "lost") return "call_lost";
  if (sends.voice === "muted") return "call_muted";
  if (sends.voice === "off") return "call_voice_off";
  if (sends.voice !== "on") return `call_voice_${sends.voice}`;
  if (sends.picture === "spared") return "call_spared";
  if (sends.picture !== "on" && sends.picture !== "off") return `call_picture_${sends.picture}`;
  if (other?.voice === "muted") return "call_their_mute";
  if (other !== undefined && other.voice !== "on") return "call_their_silent";
  return other !== undefined && other.picture !== "on" ? "call_their_dark" : undefined;
}
