/**
 * What this page sends: its own camera and microphone. Each may fail for itself, and what is left is sent: a client without a camera is still heard.
 * Nothing is asked for before it is needed, and nothing is kept on once the call is over.
 */
import type { OwnDevice } from "../wire/OwnDevice";
import type { Own } from "./connection";

/** What is in the way of a camera or a microphone; see getUserMedia of W3C's Media Capture and Streams for the names behind them. */
export type InTheWay = Extract<OwnDevice, "refused" | "absent" | "taken" | "unable">;

/** What became of one of the two. */
export type Standing = "off" | "on" | InTheWay;

/** A picture of a face, and a voice; echo is taken away, since the tones of the stage play beside it. */
const PICTURE: MediaTrackConstraints = { width: { ideal: 640 }, height: { ideal: 480 }, frameRate: { ideal: 24, max: 30 }, facingMode: "user" };
const VOICE: MediaTrackConstraints = { echoCancellation: true, noiseSuppression: true, autoGainControl: true };

/** The part of the browser that this needs. */
export interface Devices {
  getUserMedia(wanted: MediaStreamConstraints): Promise<MediaStream>;
}

/** See the head of this file. */
export class OwnMedia implements Own {
  picture: MediaStreamTrack | null = null;
  voice: MediaStreamTrack | null = null;
  /** Of camera and microphone. */
  standing: { picture: Standing; voice: Standing } = { picture: "off", voice: "off" };
  /** Nothing of the voice is sent, though the microphone is open. */
  muted = false;
  /** Neither was asked for yet. */
  fresh = true;

  /** `changed` is told of every change: what is sent, or what is in the way. */
  constructor(
    private readonly devices: Devices | undefined,
    private readonly changed: () => void,
  ) {}

  /** Opens what is wanted; what is open stays. Both at once, so that the browser asks once; each alone when that fails. */
  async open(wanted: { picture: boolean; voice: boolean; camera?: string; microphone?: string }): Promise<void> {
    this.fresh = false;
    const video = wanted.picture && chosen(PICTURE, wanted.camera);
    const audio = wanted.voice && chosen(VOICE, wanted.microphone);
    if (video !== false && audio !== false && (await this.take({ video, audio })) === undefined) return;
    if (audio !== false) this.note("voice", await this.take({ audio }));
    if (video !== false) this.note("picture", await this.take({ video }));
    this.changed();
  }

  /** Sends no voice, or sends it again; the microphone stays open, so that it is there at once. */
  mute(muted: boolean): void {
    this.muted = muted;
    if (this.voice) this.voice.enabled = !muted;
    this.changed();
  }

  /** Lets go of the camera: its light goes out. */
  hide(): void {
    this.letGo("picture");
    this.standing.picture = "off";
    this.changed();
  }

  /** Lets go of both, as whoever sits there wishes. */
  hush(): void {
    this.close();
    this.changed();
  }

  /** Lets go of both. */
  close(): void {
    this.letGo("picture");
    this.letGo("voice");
    this.standing = { picture: "off", voice: "off" };
  }

  /** What went wrong; undefined: what was wanted is open. */
  private async take(wanted: MediaStreamConstraints): Promise<InTheWay | undefined> {
    if (!this.devices) return "unable";
    try {
      const stream = await this.devices.getUserMedia(wanted);
      for (const track of stream.getTracks()) this.keep(track.kind === "video" ? "picture" : "voice", track);
      this.changed();
      return undefined;
    } catch (fault) {
      return inTheWay(fault);
    }
  }

  private keep(which: "picture" | "voice", track: MediaStreamTrack): void {
    this.letGo(which);
    this[which] = track;
    this.standing[which] = "on";
    if (which === "voice") {
      track.enabled = !this.muted;
      // Where the system asks what sound is for, tones go on beside an open microphone.
      const { audioSession } = (globalThis.navigator ?? {}) as { audioSession?: { type: string } };
      if (audioSession) audioSession.type = "play-and-record";
    }
    const stands = (standing: Standing) => {
      if (this[which] !== track) return;
      this.standing[which] = standing;
      this.changed();
    };
    // The system keeps it for itself, as while a phone rings, and gives it back.
    track.onmute = () => stands("taken");
    track.onunmute = () => stands("on");
    // Another program took it, it was unplugged, or the permission was taken back.
    track.onended = () => {
      if (this[which] === track) this[which] = null;
      else return;
      this.standing[which] = "taken";
      this.changed();
    };
  }

  private letGo(which: "picture" | "voice"): void {
    this[which]?.stop();
    this[which] = null;
  }

  private note(which: "picture" | "voice", fault: InTheWay | undefined): void {
    if (fault !== undefined) this.standing[which] = fault;
  }
}

const chosen = (usual: MediaTrackConstraints, id: string | undefined): MediaTrackConstraints =>
  id === undefined ? usual : { ...usual, deviceId: { exact: id } };

/** By the name of the fault. */
export function inTheWay(fault: unknown): InTheWay {
  switch (fault instanceof Error || fault instanceof DOMException ? fault.name : "") {
    case "NotAllowedError":
    case "SecurityError":
      return "refused";
    case "NotFoundError":
    case "OverconstrainedError":
      return "absent";
    case "NotReadableError":
    case "AbortError":
      return "taken";
    default:
      return "unable";
  }
}
