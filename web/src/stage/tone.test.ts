import assert from "node:assert/strict";
import { test } from "node:test";
import type { Timeline } from "../wire/Timeline";
import { AudioClock, type FittedLine } from "./audio_clock";
import { extremes } from "./shown";
import { gainOf, sideOf, tonesDue } from "./tone";
import { generator } from "../live/random.fixture";

const steady = (rate: number): Timeline => ({ segments: [{ starts_at: 2000, lasts: 60_000, phase: 0, rate_from: rate, rate_to: rate }] });
const line: FittedLine = { at: { page: 0, context: 0 }, slope: 1 };

test("loudness starts low, rises by small steps and is capped at the level", () => {
  assert.equal(gainOf(0, 100), 0.03);
  for (const level of [5, 50, 100]) {
    for (let n = 0; n < 400; n++) assert.ok(gainOf(n + 1, level) >= gainOf(n, level) && gainOf(n, level) <= 0.18);
    assert.ok(Math.abs(gainOf(1000, level) - 0.0018 * level) < 1e-12);
  }
});

test("a tone at every extreme, right first, alternating", () => {
  const due = tonesDue(steady(1), line, 2000, 4100, 0);
  assert.deepEqual(
    due.map(({ phase, side, at }) => [phase, side, at]),
    [
      [0.5, "right", 2500],
      [1, "left", 3000],
      [1.5, "right", 3500],
      [2, "left", 4000],
    ],
  );
  assert.deepEqual(
    due.map(({ when }) => when),
    [2.5, 3, 3.5, 4],
  );
  assert.deepEqual([0, 0.5, 1].map(sideOf), ["left", "right", "left"]);
});

test("by ear: every tone is shifted by the same, and none is lost or doubled at the edges of the steps", () => {
  for (const shift of [-300, -120, 0, 250, 300]) {
    const phases: number[] = [];
    for (let now = 2000; now < 20_000; now += 100) {
      for (const { phase, at, when } of tonesDue(steady(1.3), line, now, now + 100, shift)) {
        phases.push(phase);
        const [extreme] = extremes(steady(1.3), 2000 + (phase / 1.3) * 1000 - 5, 2000 + (phase / 1.3) * 1000 + 5);
        assert.ok(Math.abs(at - extreme!.at - shift) < 1e-6 && Math.abs(when * 1000 - at) < 1e-6);
      }
    }
    assert.deepEqual(phases, [...new Set(phases)]);
    const first = phases[0]!;
    assert.deepEqual(
      phases,
      phases.map((_, i) => first + i / 2),
    );
  }
});

// ITU-R BT.1359-1: a shift is detectable from 45 ms (sound early) to 125 ms (sound late). These are bounds never
// to be exceeded, even with output timestamps off by up to 20 ms, a stray one in ten and a clock 100 ppm fast.
test("sound against picture stays far within what can be detected", () => {
  const rate = 1.1;
  const shown = steady(rate);
  const heardAt = (context: number) => 500 + (context / (1 + 1e-4)) * 1000;
  const draw = generator(7);
  const random = () => 2 * draw() - 1;
  const clock = new AudioClock();
  let tones = 0;
  let worst = 0;
  for (let now = 1000; now < 60_000; now += 100) {
    const stray = now % 1000 === 0 ? 300 : 0;
    clock.read({ page: now + 20 * random() + stray, context: ((now - 500) / 1000) * (1 + 1e-4) });
    if (!clock.line) continue;
    for (const { phase, when } of tonesDue(shown, clock.line, now + 200, now + 300, 0)) {
      const late = heardAt(when) - (2000 + (phase / rate) * 1000);
      assert.ok(late > -45 && late < 125, `${late} ms late at ${now}`);
      worst = Math.max(worst, Math.abs(late));
      tones++;
    }
  }
  assert.ok(tones > 100 && worst < 20, `${tones} tones, ${worst} ms at worst`);
});
