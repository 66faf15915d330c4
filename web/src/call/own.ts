/**
 * What this page sends: its own camera and microphone. Each may fail for itself, and what is left is sent: a client without a camera is still heard.
 * Nothing is asked for before it is needed, nothing is kept on once the call is over, and what was wished last holds, however late a device comes.
 */
import type { OwnDevice } from "../wire/OwnDevice";
import type { Own } from "./connection";

/** What is in the way of a camera or a microphone; see getUserMedia of W3C's Media Capture and Streams for the names behind them. */
export type InTheWay = Extract<OwnDevice, "refused" | "absent" | "taken" | "stopped" | "unable">;

/** What became of one of the two. */
export type Standing = "off" | "on" | InTheWay;

/** Camera or microphone. */
export type Which = "picture" | "voice";

/** Which are wanted, and of these which device, where one was chosen. */
export interface Wanted {
  readonly picture: boolean;
  readonly voice: boolean;
  readonly camera?: string | undefined;
  readonly microphone?: string | undefined;
}

/** A picture of a face, and a voice; echo is taken away, since the tones of the stage play beside it. */
const PICTURE: MediaTrackConstraints = { width: { ideal: 640 }, height: { ideal: 480 }, frameRate: { ideal: 24, max: 30 }, facingMode: "user" };
const VOICE: MediaTrackConstraints = { echoCancellation: true, noiseSuppression: true, autoGainControl: true };

/** The part of the browser that this needs. */
export interface Devices {
  getUserMedia(wanted: MediaStreamConstraints): Promise<MediaStream>;
}

/** One wish for one of the two: a later one makes it void. */
interface Wish {
  readonly which: Which;
  readonly number: number;
  readonly constraints: MediaTrackConstraints;
}

/** See the head of this file. */
export class OwnMedia implements Own {
  picture: MediaStreamTrack | null = null;
  voice: MediaStreamTrack | null = null;
  /** Of camera and microphone. */
  standing: { picture: Standing; voice: Standing } = { picture: "off", voice: "off" };
  /** Nothing of the voice is sent, though the microphone is open. */
  muted = false;

  private readonly wishes: Record<Which, number> = { picture: 0, voice: 0 };
  /** The browser was asked for it and has not answered. */
  private readonly asked: Record<Which, number> = { picture: 0, voice: 0 };

  /** `changed` is told of every change: what is sent, or what is in the way. */
  constructor(
    private readonly devices: Devices | undefined,
    private readonly changed: () => void,
  ) {}

  /** The microphone was asked for and has not come. */
  get opensVoice(): boolean {
    return this.asked.voice > 0;
  }

  /** Opens what is wanted; what is open stays. Both at once, so that the browser asks once; each alone when that fails. */
  async open({ picture, voice, camera, microphone }: Wanted): Promise<void> {
    const wishes = [...(voice ? [this.wish("voice", VOICE, microphone)] : []), ...(picture ? [this.wish("picture", PICTURE, camera)] : [])];
    if (wishes.length === 2 && (await this.take(wishes)) === undefined) return;
    for (const wish of wishes) if (this.holds(wish)) this.note(wish, await this.take([wish]));
    this.changed();
  }

  /** Another device of a kind that is open. On phones the second camera opens only once the first is let go of; what was open comes back if that fails. */
  async change(which: Which, id: string): Promise<void> {
    const before = this[which]?.getSettings().deviceId;
    this.letGo(which);
    // Nothing is sent until it is there.
    this.standing[which] = "off";
    this.changed();
    const kind = which === "picture" ? "camera" : "microphone";
    const openThis = (device: string) => this.open({ picture: which === "picture", voice: which === "voice", [kind]: device });
    const opened = openThis(id);
    const wish = this.wishes[which];
    await opened;
    const failed = this[which] === null && this.wishes[which] === wish;
    if (failed && before !== undefined && before !== id) await openThis(before);
  }

  /** Sends no voice, or sends it again; the microphone stays open, so that it is there at once. */
  mute(muted: boolean): void {
    this.muted = muted;
    if (this.voice) this.voice.enabled = !muted;
    this.changed();
  }

  /** Lets go of the camera: its light goes out. */
  hide(): void {
    this.shut("picture");
    this.changed();
  }

  /** Lets go of both, as whoever sits there wishes. */
  hush(): void {
    this.close();
    this.changed();
  }

  /** Lets go of both. */
  close(): void {
    this.shut("picture");
    this.shut("voice");
  }

  private wish(which: Which, usual: MediaTrackConstraints, id: string | undefined): Wish {
    this.wishes[which] += 1;
    return { which, number: this.wishes[which], constraints: id === undefined ? usual : { ...usual, deviceId: { exact: id } } };
  }

  private holds({ which, number }: Wish): boolean {
    return this.wishes[which] === number;
  }

  /** What went wrong; undefined: what was wanted is open, or is not wanted any more. */
  private async take(wishes: readonly Wish[]): Promise<InTheWay | undefined> {
    if (!this.devices) return "unable";
    const of = (which: Which) => wishes.find((wish) => wish.which === which);
    const wanted = { ...constraintsOf("video", of("picture")), ...constraintsOf("audio", of("voice")) };
    for (const { which } of wishes) this.asked[which] += 1;
    try {
      const stream = await this.devices.getUserMedia(wanted);
      for (const track of stream.getTracks()) this.arrived(track, of(track.kind === "video" ? "picture" : "voice"));
      return undefined;
    } catch (fault) {
      return inTheWay(fault);
    } finally {
      for (const { which } of wishes) this.asked[which] -= 1;
      this.changed();
    }
  }

  /** A device that comes when it is not wanted any more is let go of at once. */
  private arrived(track: MediaStreamTrack, wish: Wish | undefined): void {
    if (wish && this.holds(wish)) this.keep(wish.which, track);
    else track.stop();
  }

  private keep(which: Which, track: MediaStreamTrack): void {
    this.letGo(which);
    this[which] = track;
    this.standing[which] = track.muted ? "taken" : "on";
    if (which === "voice") {
      track.enabled = !this.muted;
      // Where the system asks what sound is for, tones go on beside an open microphone.
      const { audioSession } = (globalThis.navigator ?? {}) as { audioSession?: { type: string } };
      if (audioSession) audioSession.type = "play-and-record";
    }
    const stands = (standing: Standing) => {
      if (this[which] !== track) return;
      if (standing === "stopped") this[which] = null;
      this.standing[which] = standing;
      this.changed();
    };
    // The system keeps it for itself, as while a phone rings, and gives it back.
    track.onmute = () => stands("taken");
    track.onunmute = () => stands("on");
    // It was unplugged, or the permission was taken back.
    track.onended = () => stands("stopped");
  }

  private shut(which: Which): void {
    this.wishes[which] += 1;
    this.letGo(which);
    this.standing[which] = "off";
  }

  private letGo(which: Which): void {
    this[which]?.stop();
    this[which] = null;
  }

  /** What is open and still sent stands as it did. */
  private note(wish: Wish, fault: InTheWay | undefined): void {
    if (fault !== undefined && this.holds(wish) && this[wish.which] === null) this.standing[wish.which] = fault;
  }
}

const constraintsOf = (kind: "video" | "audio", wish: Wish | undefined): MediaStreamConstraints => (wish ? { [kind]: wish.constraints } : {});

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
