/** Which tones are due when, and how one is made. Nothing here knows a page: see `tones`. */
import { extremeAt } from "../live/path";
import type { Comfort } from "../wire/Comfort";
import type { Timbre } from "../wire/Timbre";
import type { Timeline } from "../wire/Timeline";
import { contextTime, type FittedLine } from "./audio_clock";
import { extremes } from "./shown";

/** How a client likes tones. */
export type Voice = Pick<Comfort, "timbre" | "pitch" | "tone_ms" | "level">;
export type Side = "left" | "right";

/** One tone. */
export interface Due {
  /** Of the extreme it belongs to. */
  readonly phase: number;
  readonly side: Side;
  /** Page time at which it is to be heard, ms, and the context time that stands for it, s. */
  readonly at: number;
  readonly when: number;
}

/** Rise and fall, s: without them a tone clicks. Common practice, no source. */
const EDGE = 0.008;
/** Loudness of the first tone, what each adds, and the most. Full scale is 1. */
const FIRST_GAIN = 0.03;
const GAIN_STEP = 0.015;
const MOST_GAIN = 0.18;
/** Strength of the second and third partial of the warm tone beside the first. */
const WARM = [0, 1, 0.25, 0.12];

/** The side on which an extreme sounds: phase 0 stands for left. */
export const sideOf = (phase: number): Side => (extremeAt(phase) === "first" ? "left" : "right");

/** Loudness of the tone number `n`, counted from 0, at `level` percent of the most. */
export const gainOf = (n: number, level: number): number => Math.min((MOST_GAIN * level) / 100, FIRST_GAIN + n * GAIN_STEP);

/**
 * The tones to be heard between `from` and `until` (page time, ms): one at each extreme of `shown`,
 * `shift` ms later than the screen shows it (earlier when negative), on the audio clock's `line`.
 */
export function tonesDue(shown: Timeline, line: FittedLine, from: number, until: number, shift: number): Due[] {
  return extremes(shown, from - shift, until - shift).map(({ at, phase }) => ({
    phase,
    side: sideOf(phase),
    at: at + shift,
    when: contextTime(line, at + shift),
  }));
}

/** A tone of `voice` on `side` at context time `when`, into `out`. @returns its source; disconnect it to silence it. */
export function sound(context: BaseAudioContext, out: AudioNode, voice: Voice, side: Side, when: number, peak: number): OscillatorNode {
  const start = Math.max(when, context.currentTime);
  const length = voice.tone_ms / 1000;
  const source = new OscillatorNode(context, { frequency: voice.pitch, ...waveOf(context, voice.timbre) });
  const gain = new GainNode(context, { gain: 0 });
  gain.gain.setValueAtTime(0, start);
  gain.gain.linearRampToValueAtTime(peak, start + EDGE);
  if (voice.timbre === "wood") gain.gain.exponentialRampToValueAtTime(peak / 1000, start + length);
  else {
    gain.gain.setValueAtTime(peak, start + length - EDGE);
    gain.gain.linearRampToValueAtTime(0, start + length);
  }
  source
    .connect(gain)
    .connect(new StereoPannerNode(context, { pan: side === "left" ? -1 : 1 }))
    .connect(out);
  source.start(start);
  source.stop(start + length);
  return source;
}

/** The browser makes the wave's peak 1, so that every timbre keeps the same cap. */
function waveOf(context: BaseAudioContext, timbre: Timbre): OscillatorOptions {
  return timbre === "warm" ? { type: "custom", periodicWave: new PeriodicWave(context, { imag: WARM }) } : { type: "sine" };
}
