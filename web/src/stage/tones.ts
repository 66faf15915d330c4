/**
 * Soft tones that alternate between the sides, one at each extreme, scheduled on the audio clock
 * a little ahead. Nothing sounds, and no audio device is touched, before `open()` in a tap.
 */
import { extremeAt } from "../live/path";
import type { Timeline } from "../wire/Timeline";
import { extremes } from "./shown";

/** Tones are scheduled so far ahead, ms: no more than this is left when the script hangs. */
export const AHEAD = 300;
/** Pitch, Hz; length and edges, s. No published figure was found; common practice, no source. */
const PITCH = 450;
const LENGTH = 0.12;
const EDGE = 0.008;
/** Loudness of the first tone, what each adds, and the most. Full scale is 1. */
const FIRST_GAIN = 0.03;
const GAIN_STEP = 0.015;
const MOST_GAIN = 0.18;
/** So many readings of the audio clock are kept; their median is used, never one of them. */
const READINGS = 16;
/** A tone whose time moved by more than this is scheduled anew, ms. */
const MOVED = 4;

interface Tone {
  readonly phase: number;
  readonly at: number;
  readonly source: OscillatorNode;
}

/** The side on which an extreme sounds: phase 0 stands for left. */
const panAt = (phase: number): number => (extremeAt(phase) === "first" ? -1 : 1);

/** Loudness of the tone number `n`, counted from 0. */
export const gainOf = (n: number): number => Math.min(MOST_GAIN, FIRST_GAIN + n * GAIN_STEP);

/** The middle value; 0 of none. */
export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = Math.floor(sorted.length / 2);
  return (((sorted[middle] ?? 0) + (sorted[sorted.length - 1 - middle] ?? 0)) / 2);
}

/** See the head of this file. */
export class Tones {
  private context: AudioContext | undefined;
  private master: GainNode | undefined;
  private readings: number[] = [];
  private scheduled: Tone[] = [];
  private inUse = false;

  /** `onLost` is called when the system takes the sound away while it is in use. */
  constructor(private readonly onLost: () => void) {}

  /** Call it in the handler of a tap. Resolves when sound can be heard. Throws when there is no sound. */
  async open(): Promise<void> {
    this.context ??= this.create();
    await this.context.resume();
  }

  /** The system suspended it (a call, a locked screen): tries again, in the handler of a tap. */
  reopen(): void {
    if (this.context && this.context.state !== "running") void this.context.resume();
  }

  /** Whether tones would be heard now. */
  get ready(): boolean {
    return this.context?.state === "running";
  }

  /** One quiet tone left, one right. */
  test(): void {
    const start = this.begin();
    if (start === undefined) return;
    this.sound(0, start + 0.1, gainOf(2));
    this.sound(0.5, start + 0.8, gainOf(2));
    this.inUse = false;
  }

  /** Schedules what comes due before `until` in `shown` (both in page time), and corrects what moved. */
  schedule(shown: Timeline, pageNow: number, until: number): void {
    if (!this.inUse && this.begin() === undefined) return;
    this.readClock();
    const due = extremes(shown, pageNow, Math.min(until, pageNow + AHEAD));
    this.withdraw(pageNow, due);
    for (const { at, phase } of due) {
      if (this.scheduled.some((tone) => tone.phase === phase)) continue;
      const source = this.sound(phase, this.contextTime(at), gainOf(phase * 2 - 1));
      if (source) this.scheduled.push({ phase, at, source });
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
    if (session) session.type = "playback"; // else a phone's ring switch mutes it
    const context = new AudioContext({ latencyHint: "interactive" });
    context.onstatechange = () => {
      if (this.inUse && context.state !== "running") this.onLost();
    };
    return context;
  }

  private begin(): number | undefined {
    this.cut();
    if (!this.context || !this.ready) return undefined;
    this.master = this.context.createGain();
    this.master.connect(this.context.destination);
    this.inUse = true;
    return this.context.currentTime;
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

  private sound(phase: number, at: number, peak: number): OscillatorNode | undefined {
    const { context, master } = this;
    if (!context || !master) return undefined;
    const start = Math.max(at, context.currentTime);
    const source = new OscillatorNode(context, { frequency: PITCH });
    const gain = new GainNode(context, { gain: 0 });
    gain.gain.setValueAtTime(0, start);
    gain.gain.linearRampToValueAtTime(peak, start + EDGE);
    gain.gain.setValueAtTime(peak, start + LENGTH - EDGE);
    gain.gain.linearRampToValueAtTime(0, start + LENGTH);
    source.connect(gain).connect(new StereoPannerNode(context, { pan: panAt(phase) })).connect(master);
    source.start(start);
    source.stop(start + LENGTH);
    return source;
  }

  /** Audio time that is heard at page time `at`, s. */
  private contextTime(at: number): number {
    return at / 1000 - median(this.readings);
  }

  private readClock(): void {
    const { context } = this;
    if (!context) return;
    const { contextTime = 0, performanceTime = 0 } = context.getOutputTimestamp();
    const latency = context.outputLatency || context.baseLatency || 0;
    // Where no output time is told: what is being made now is heard after the latency.
    const reading = contextTime > 0 ? performanceTime / 1000 - contextTime : performance.now() / 1000 - context.currentTime + latency;
    this.readings = [...this.readings, reading].slice(-READINGS);
  }
}
