import assert from "node:assert/strict";
import { test } from "node:test";
import { endOf, phaseAt, shifted } from "../live/timeline";
import type { Timeline } from "../wire/Timeline";
import { eased, extremes, joined, resting } from "./shown";

/** `cycles` at `rate` from `start`, with ramps of 1 s: a plain set as the server orders it. */
function set(rate: number, cycles: number, start = 0): Timeline {
  const steady = (cycles - rate) / rate;
  return {
    segments: [
      { starts_at: start, lasts: 1000, phase: 0, rate_from: 0, rate_to: rate },
      { starts_at: start + 1000, lasts: steady * 1000, phase: rate / 2, rate_from: rate, rate_to: rate },
      { starts_at: start + 1000 + steady * 1000, lasts: 1000, phase: cycles - rate / 2, rate_from: rate, rate_to: 0 },
    ],
  };
}

/** The rest of a set from `at` at another rate, as the server orders a change. */
function changed(before: Timeline, at: number, rate: number, cycles: number): Timeline {
  const phase = phaseAt(before, at);
  const steady = (cycles - phase - rate / 2) / rate;
  const past = before.segments.filter((s) => s.starts_at < at).map((s) => ({ ...s, lasts: Math.min(s.lasts, at - s.starts_at) }));
  return {
    segments: [
      ...past,
      { starts_at: at, lasts: steady * 1000, phase, rate_from: rate, rate_to: rate },
      { starts_at: at + steady * 1000, lasts: 1000, phase: cycles - rate / 2, rate_from: rate, rate_to: 0 },
    ],
  };
}

/** Steps through a timeline: no jump, never backwards, never faster than `fastest` Hz. */
function assertSmooth(shown: Timeline, from: number, to: number, fastest: number): void {
  let before = phaseAt(shown, from);
  for (let at = from + 1; at <= to; at++) {
    const phase = phaseAt(shown, at);
    assert.ok(phase >= before - 1e-9, `backwards at ${at}: ${before} to ${phase}`);
    assert.ok(phase - before <= fastest / 1000 + 1e-4, `jump at ${at}: ${before} to ${phase}`);
    before = phase;
  }
}

test("an order in time is followed to the letter", () => {
  const first = set(1, 24);
  const second = changed(first, 5000, 1.4, 24);
  const shown = joined(first, second, 4900);
  for (let at = 0; at < 30_000; at += 37) {
    if (at > 4900 - 2000) assert.ok(Math.abs(phaseAt(shown, at) - phaseAt(second, at)) < 1e-9, `${at}`);
  }
});

for (const [name, rate] of [
  ["faster", 1.6],
  ["slower", 0.5],
] as const) {
  test(`a late change to ${rate} Hz (${name}) is worked in without a jump and meets the order again`, () => {
    const first = set(1, 24);
    const second = changed(first, 5000, rate, 24);
    const shown = joined(first, second, 5400);
    assertSmooth(shown, 3500, 40_000, Math.max(1, rate) * 1.3);
    assert.ok(Math.abs(phaseAt(shown, 5400) - phaseAt(first, 5400)) < 1e-9);
    assert.ok(Math.abs(phaseAt(shown, 8000) - phaseAt(second, 8000)) < 1e-6);
    assert.ok(Math.abs(phaseAt(shown, 60_000) - 24) < 1e-6, "ends where it was ordered to end");
  });
}

test("an end that was already passed leads on to the next extreme", () => {
  const first = set(1, 24);
  const ended = { segments: [...set(1, 5).segments] };
  const at = 5750;
  const shown = joined(first, ended, at);
  assertSmooth(shown, 3800, 10_000, 1);
  assert.ok(phaseAt(first, at) > 5 && Math.abs(phaseAt(shown, 60_000) - 5.5) < 1e-6);
});

test("a dot left behind at the end is brought to it gently", () => {
  const ordered = set(1, 4);
  const shown = joined(resting(ordered, 0, 3900), ordered, 3900);
  assertSmooth(shown, 1950, 30_000, 1.3);
  assert.ok(Math.abs(phaseAt(shown, 60_000) - 4) < 1e-6);
});

test("a dot ahead at the end stops at the end", () => {
  const fast = set(2, 24);
  const slow = changed(set(1, 24), 2000, 1, 4);
  const shown = joined(fast, slow, 2500);
  assertSmooth(shown, 600, 30_000, 2);
  const end = phaseAt(shown, 60_000);
  assert.ok(Math.abs(end * 2 - Math.round(end * 2)) < 1e-3, `rests at an extreme: ${end}`);
});

test("joining the same order again and again changes nothing", () => {
  const ordered = set(1.2, 24, 1000);
  let shown = resting(ordered, 0, 1000);
  for (let at = 0; at < 25_000; at += 400) {
    shown = joined(shown, ordered, at);
    assert.ok(shown.segments.length <= 10, `pieces pile up: ${shown.segments.length}`);
    assert.ok(Math.abs(phaseAt(shown, at + 200) - phaseAt(ordered, at + 200)) < 1e-6);
  }
});

test("easing comes to rest within its time and keeps the shown until then", () => {
  const shown = set(1, 24);
  const still = eased(shown, 5000, 600);
  assert.ok(Math.abs(phaseAt(still, 4999) - phaseAt(shown, 4999)) < 1e-9);
  assert.equal(endOf(still), 5600);
  assertSmooth(still, 3100, 8000, 1);
  // From 1 Hz to rest in 0.6 s: half of 0.6 cycles.
  assert.ok(Math.abs(phaseAt(still, 9000) - (phaseAt(shown, 5000) + 0.3)) < 1e-9);
});

test("extremes are met in order, each once, at the time the phase says", () => {
  const shown = shifted(set(1.3, 6), 500);
  const found = extremes(shown, 0, 60_000);
  assert.deepEqual(
    found.map((e) => e.phase),
    Array.from({ length: 12 }, (_, i) => (i + 1) / 2),
  );
  for (const { at, phase } of found) assert.ok(Math.abs(phaseAt(shown, at) - phase) < 1e-6);
  const pieces = [0, 1, 2, 3, 4, 5, 6].flatMap((i) => extremes(shown, i * 1000, (i + 1) * 1000));
  assert.deepEqual(
    pieces.map((e) => e.phase),
    found.map((e) => e.phase),
  );
});

test("a dot a hair ahead of a slow beginning waits for it instead of stepping back", () => {
  const ordered = set(0.3, 6, 1000);
  // The clock was corrected by 2 ms; 100 ms into the ramp the dot is 6e-5 cycles ahead.
  const late = shifted(ordered, 2);
  const shown = joined(joined(resting(ordered, 0, 1000), ordered, 500), late, 1100);
  assert.ok(phaseAt(shown, 1100) - phaseAt(late, 1100) > 1e-5);
  assertSmooth(shown, 900, 8000, 0.3);
  assert.ok(Math.abs(phaseAt(shown, 3000) - phaseAt(late, 3000)) < 1e-9);
});
