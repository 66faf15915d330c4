// What the desk says about the call: one line about who is seen and heard, one about the client's screen. Pure.
import type { CallState } from "../call/connection";
import type { Device } from "../wire/Device";
import type { Missing } from "../wire/Missing";
import type { OwnDevice } from "../wire/OwnDevice";
import type { Sends } from "../wire/Sends";
import type { Watch } from "../wire/Watch";

/** What it is read off. */
export interface Standing {
  readonly state: CallState;
  /** The client was let in. */
  readonly admitted: boolean;
  /** The session is over for good. */
  readonly closed: boolean;
  /** This desk is in control: the call is with it. */
  readonly leads: boolean;
  /** The browser plays nothing before somebody clicks. */
  readonly silent: boolean;
  /** It was tried for long. */
  readonly givesUp: boolean;
  /** What this desk sends. */
  readonly sends: Sends;
  /** What the client's page says that it sends. */
  readonly other: Sends | undefined;
  /** For how long nothing came of the client, ms. */
  readonly missing: Readonly<Record<Missing, number | undefined>>;
}

/** `urgent`: the client is not seen or not heard though they were. */
export interface Line {
  readonly words: string;
  readonly urgent: boolean;
}

const calm = (words: string): Line => ({ words, urgent: false });
const seconds = (ms: number): number => Math.floor(ms / 1000);

const NO_WAY: Partial<Record<CallState, string>> = {
  no_relay: "No relay is set up, so picture and voice do not go by here. By telephone.",
  too_much: "The connection is begun again and again; not all of that is passed on. By telephone, or load this page again between sets.",
  unfit: "What this browser sends to connect is not passed on. By telephone, or with another browser.",
};

/** Why the client is not seen, or not heard. */
const THEIRS: Record<Exclude<OwnDevice, "on">, string> = {
  off: "turned off",
  muted: "muted",
  spared: "held back, the line is poor",
  refused: "not allowed in their browser",
  absent: "they have none",
  taken: "another program or a phone call has it",
  stopped: "it stopped or was unplugged",
  unable: "their browser cannot",
};

/** What is in the way of the desk's own. */
const OWN: Record<Exclude<OwnDevice, "on" | "off" | "muted">, string> = {
  spared: "is held back: the line is poor, and the voice goes first",
  refused: "is not allowed: press the sign beside the address, allow it, then press again",
  absent: "was not found",
  taken: "is in use by another program",
  stopped: "stopped: it was unplugged, or the browser may not use it any more",
  unable: "cannot be used by this browser",
};

/** Who is seen and heard, the most pressing first. */
export function callLine(standing: Standing): Line {
  const { state, admitted, closed, leads, givesUp, silent } = standing;
  if (closed) return calm("The session is closed: camera and microphone are off.");
  if (!admitted) return calm("Nobody is seen or heard before you let them in.");
  if (!leads) return calm("Picture and voice are with the desk in control.");
  const noWay = NO_WAY[state];
  if (noWay !== undefined) return { words: noWay, urgent: true };
  const missed = missedLine(standing);
  if (missed !== undefined) return missed;
  if (state === "none") return calm("The call waits for the client\u2019s page.");
  if (state !== "there" && givesUp) return { words: "Picture and voice do not get through. By telephone; it is tried further.", urgent: true };
  if (state === "lost") return { words: "Picture and voice are lost; they are connected anew.", urgent: true };
  if (state !== "there") return calm("Picture and voice are on their way.");
  if (silent) return { words: "This browser plays nothing before a click: click here to see and hear them.", urgent: true };
  return bothLines(standing);
}

/** The desk's own trouble, and beside it the client's. */
function bothLines({ sends, other }: Standing): Line {
  const own = ownLine(sends);
  if (own === undefined) return calm(theirs(other));
  const theirsIsWell = other?.picture === "on" && other.voice === "on";
  return theirsIsWell ? own : { words: `${own.words} Client: ${theirs(other)}.`, urgent: own.urgent };
}

function missedLine({ missing, other }: Standing): Line | undefined {
  const { picture, voice } = missing;
  if (picture === undefined && voice === undefined) return undefined;
  const why = other !== undefined && picture !== undefined && other.picture !== "on" ? ` (${THEIRS[other.picture]})` : "";
  const parts = [picture === undefined ? "" : `NO PICTURE for ${seconds(picture)} s${why}`, voice === undefined ? "" : `NO SOUND for ${seconds(voice)} s`];
  return { words: parts.filter((part) => part !== "").join(", "), urgent: true };
}

function ownLine(sends: Sends): Line | undefined {
  if (sends.voice === "muted") return calm("YOU ARE MUTED: the client does not hear you.");
  if (sends.voice === "off") return calm("Your microphone is off: the client does not hear you.");
  if (sends.voice !== "on") return { words: `Your microphone ${OWN[sends.voice]}.`, urgent: true };
  return sends.picture === "on" || sends.picture === "off" || sends.picture === "muted" ? undefined : calm(`Your camera ${OWN[sends.picture]}.`);
}

function theirs(other: Sends | undefined): string {
  if (other === undefined) return "The client's page has not said yet what it sends.";
  const parts = [
    other.picture === "on" ? "picture on" : `no picture: ${THEIRS[other.picture]}`,
    other.voice === "on" ? "sound on" : `no sound: ${THEIRS[other.voice]}`,
  ];
  return parts.join(", ");
}

/** What the button of the microphone says: "heard" only where it is sent by a connection that is there. */
export function voiceWord(state: CallState, { voice }: Sends): string {
  if (voice === "muted") return "MUTED";
  if (voice !== "on") return "microphone off";
  return state === "there" ? "heard" : "microphone on";
}

/** The client's screen, as it found itself. */
export function screenLine(device: Device | null, other: Sends | undefined): string {
  if (device === null) return "";
  const { width_px: width, height_px: height } = device;
  const front = other === undefined ? [] : [other.visible ? "page in front" : "PAGE BEHIND ANOTHER"];
  return [...front, `${width > height ? "wide" : "upright"} ${width} × ${height}`, device.sound ? "tones heard" : "tones not heard"].join(" · ");
}

/** When a set comes to rest by itself. */
export function watchLine({ seconds, off }: Watch): string {
  if (off === "sound_only") return "sets go on without a picture: work by sound alone";
  if (off === "other_means") return "sets go on without a picture: seen and heard by other means";
  return `a set comes to rest after ${seconds} s without picture or sound`;
}
