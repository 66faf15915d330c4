// Tones as they are made by the stage's own code, rendered by the browser without a sound card.

import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';

const WEB = fileURLToPath(new URL('../../../web/', import.meta.url));
const { build } = createRequire(`${WEB}package.json`)('esbuild');

/** Brings `tonesDue` and `sound` of web/src/stage/tone.ts into a page as `globalThis.tone`, and `onsets`. */
export async function bringTones(page) {
  const { outputFiles: [{ text }] } = await build({
    entryPoints: [`${WEB}src/stage/tone.ts`], bundle: true, write: false, format: 'iife', globalName: 'tone', target: 'es2021',
  });
  await page.evaluate(`${text}; globalThis.tone = tone; globalThis.onsets = ${onsets}`);
}

/**
 * Renders the tones of `seconds` of `timeline` (page time, ms; context time 0 is heard at page time 0) and finds them
 * again in the samples of either side.
 *
 * @returns `[{side, at, lasts, peak, hz}]` in order: ms from the first to the last sample above a hundredth of the
 *   most, the largest sample, and the rate of its zero crossings
 */
export function rendered(page, { timeline, seconds, voice }) {
  return page.evaluate(async ({ timeline, seconds, voice }) => {
    const rate = 48_000;
    const context = new OfflineAudioContext(2, seconds * rate, rate);
    const line = { at: { page: 0, context: 0 }, slope: 1 };
    for (const { side, when, phase } of tone.tonesDue(timeline, line, 0, seconds * 1000, 0)) {
      tone.sound(context, context.destination, voice, side, when, tone.gainOf(phase * 2 - 1, voice.level));
    }
    return onsets(await context.startRendering());
  }, { timeline, seconds, voice });
}

/** Runs in a page: finds each tone of a rendered `AudioBuffer`, as `rendered` returns them. */
export function onsets(buffer) {
  const rate = buffer.sampleRate;
  const sides = [buffer.getChannelData(0), buffer.getChannelData(1)];
  const most = Math.max(...sides.map((samples) => samples.reduce((peak, one) => Math.max(peak, Math.abs(one)), 0)));
  return ['left', 'right'].flatMap((side, i) => {
    const found = [];
    sides[i].forEach((sample, at) => {
      if (Math.abs(sample) < most / 100) return;
      const open = found.at(-1);
      // Silences within a tone are its zero crossings, of a few ms.
      if (open && at - open.last < rate * 0.02) open.last = at;
      else found.push({ first: at, last: at });
    });
    return found.map(({ first, last }) => {
      const samples = sides[i].subarray(first, last + 1);
      const crossings = samples.reduce((sum, one, at) => sum + (at > 0 && (one < 0) !== (samples[at - 1] < 0) ? 1 : 0), 0);
      return {
        side, at: (first / rate) * 1000, lasts: ((last - first) / rate) * 1000,
        peak: samples.reduce((peak, one) => Math.max(peak, Math.abs(one)), 0), hz: (crossings / 2 / (last - first)) * rate,
      };
    });
  }).sort((a, b) => a.at - b.at);
}
