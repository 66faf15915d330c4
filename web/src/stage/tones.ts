/**
 * Soft tones that alternate between the sides, one at each extreme, scheduled on the audio clock
 * a little ahead. Nothing sounds, and no audio device is touched, before `open()` in a tap.
 */
import type { Timeline } from "../wire/Timeline";
import { AudioClock } from "./audio_clock";
import { gainOf, type Side, sound, tonesDue, type Voice } from "./tone";

/** Tones are scheduled so far ahead, ms: no more than this is left when the script hangs. */
export const AHEAD = 300;
/** An output that is there answers sooner, ms. */
const OPENS_WITHIN = 4_000;
/** A tone whose time moved by more than this is scheduled anew, ms. */
const MOVED = 4;
/** What the device check plays: as when nothing was chosen, at a loudness reached after two tones. */
const TEST: Voice = { timbre: "round", pitch: 450, tone_ms: 200, level: 100 };

interface Tone {
  readonly phase: number;
  readonly at: number;
  readonly source: OscillatorNode;
}

/** See the head of this file. */
export class Tones {
  /** How much later than on the screen each tone is to sound, ms, as the client set it by ear: headphones without a wire are late. */
  shift = 0;
  private context: AudioContext | undefined;
  private master: GainNode | undefined;
  private readonly clock = new AudioClock();
  private scheduled: Tone[] = [];
  private inUse = false;
  private output: string | undefined;

  /**
   * @param onLost the system takes the sound away while it is in use
   * @param onReady sound was lost or came back while it is not in use
   */
  constructor(
    private readonly onLost: () => void,
    private readonly onReady: (ready: boolean) => void = () => {},
  ) {}

  /** Call it in the handler of a tap. Resolves when sound can be heard. Throws when there is no sound, also where a browser without an output never answers. */
  async open(): Promise<void> {
    if (!this.context) {
      this.context = this.create();
      if (this.output !== undefined) this.sendTo(this.output);
    }
    let late: ReturnType<typeof setTimeout> | undefined;
    const silence = new Promise<never>((_, reject) => {
      late = setTimeout(() => reject(new Error("no output answers")), OPENS_WITHIN);
    });
    await Promise.race([this.context.resume(), silence]).finally(() => clearTimeout(late));
  }

  /** The system suspended it (a call, a locked screen): tries again, in the handler of a tap. */
  reopen(): void {
    // Refused: it stays silent, and `ready` says so.
    if (this.context && this.context.state !== "running") void this.context.resume().catch(() => undefined);
  }

  /** Sends them to this output, where the browser lets it be chosen; one that is gone meanwhile changes nothing. */
  sendTo(output: string): void {
    this.output = output;
    const context = this.context as { setSinkId?: (id: string) => Promise<void> } | undefined;
    void context?.setSinkId?.(output === "default" ? "" : output).catch(() => undefined);
  }

  /** Whether tones would be heard now. */
  get ready(): boolean {
    return this.context?.state === "running";
  }

  /** One quiet tone on that side. */
  test(side: Side): void {
    const out = this.begin();
    if (out) sound(out.context, out, TEST, side, out.context.currentTime + 0.1, gainOf(2, 100));
    this.inUse = false;
  }

  /** Schedules what comes due before `until` in `shown` (both in page time), and corrects what moved. */
  schedule(shown: Timeline, voice: Voice, pageNow: number, until: number): void {
    if (!this.inUse && !this.begin()) return;
    const { context, master } = this;
    if (!context || !master) return;
    this.clock.read(readingOf(context));
    const { line } = this.clock;
    if (!line) return;
    const due = tonesDue(shown, line, pageNow, Math.min(until, pageNow + AHEAD), this.shift);
    this.withdraw(pageNow, due);
    for (const { at, phase, side, when } of due) {
      if (this.scheduled.some((tone) => tone.phase === phase)) continue;
      this.scheduled.push({ phase, at, source: sound(context, master, voice, side, when, gainOf(phase * 2 - 1, voice.level)) });
    }
  }

  /** Silence, at once. */
  cut(): void {
    this.inUse = false;
    this.master?.disconnect();
    this.master = undefined;
    this.scheduled = [];
  }

  private create(): AudioContext {
    const session = (navigator as { audioSession?: { type: string } }).audioSession;
    if (session) session.type = session.type === "play-and-record" ? session.type : "playback"; // else a phone's ring switch mutes it
    const context = new AudioContext({ latencyHint: "interactive" });
    // `suspended`, `interrupted` (an incoming call) and `closed` are all the loss of the sound.
    context.onstatechange = () => {
      const lost = context.state !== "running";
      if (this.inUse && lost) this.onLost();
      else this.onReady(!lost);
    };
    return context;
  }

  private begin(): GainNode | undefined {
    this.cut();
    if (!this.context || !this.ready) return undefined;
    this.clock.restart();
    this.master = this.context.createGain();
    this.master.connect(this.context.destination);
    this.inUse = true;
    return this.master;
  }

  /** What was scheduled and is no longer due at its time. */
  private withdraw(pageNow: number, due: readonly { at: number; phase: number }[]): void {
    this.scheduled = this.scheduled.filter((tone) => {
      const now = due.find((extreme) => extreme.phase === tone.phase);
      const stands = tone.at <= pageNow || (now !== undefined && Math.abs(now.at - tone.at) <= MOVED);
      if (!stands) tone.source.disconnect();
      return stands;
    });
  }
}

/** Where the output is now. */
function readingOf(context: AudioContext): { page: number; context: number } {
  const { contextTime = 0, performanceTime = 0 } = context.getOutputTimestamp();
  if (contextTime > 0) return { page: performanceTime, context: contextTime };
  // Where no output time is told: what is being made now is heard after the latency.
  const latency = context.outputLatency || context.baseLatency || 0;
  return { page: performance.now() + latency * 1000, context: context.currentTime };
}
