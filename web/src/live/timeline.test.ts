import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";
import type { Timeline } from "../wire/Timeline";
import { endOf, phaseAfter, phaseAt, rateAt, startOf } from "./timeline";

/** Computed by an independent script, tests/reference/timeline.py; the Rust twin is bound to them too. */
interface Vectors {
  cases: { name: string; segments: Timeline["segments"]; samples: { t: number; phase: number; rate: number }[] }[];
}
const vectors = JSON.parse(readFileSync("../tests/reference/timeline.json", "utf8")) as Vectors;

for (const { name, segments, samples } of vectors.cases) {
  test(`agrees with the reference vectors: ${name}`, () => {
    assert.ok(samples.length > 0);
    for (const { t, phase, rate } of samples) {
      assert.ok(Math.abs(phaseAt({ segments }, t) - phase) < 1e-9, `phase at ${t}`);
      assert.ok(Math.abs(rateAt({ segments }, t) - rate) < 1e-9, `rate at ${t}`);
    }
  });
}

/** Up from rest to 1 Hz in 2 s, 10 s at 1 Hz, down to rest in 2 s: 1 + 10 + 1 cycles. */
const set: Timeline = {
  segments: [
    { starts_at: 1000, lasts: 2000, phase: 0, rate_from: 0, rate_to: 1 },
    { starts_at: 3000, lasts: 10_000, phase: 1, rate_from: 1, rate_to: 1 },
    { starts_at: 13_000, lasts: 2000, phase: 11, rate_from: 1, rate_to: 0 },
  ],
};

test("a set rests before its first segment and after its last", () => {
  assert.equal(phaseAt(set, 0), 0);
  assert.equal(rateAt(set, 999.9), 0);
  assert.equal(phaseAt(set, 99_999), 12);
  assert.equal(rateAt(set, 15_000), 0);
  assert.equal(startOf(set), 1000);
  assert.equal(endOf(set), 15_000);
});

test("an empty timeline is at rest at phase 0", () => {
  assert.equal(phaseAt({ segments: [] }, 5), 0);
  assert.equal(rateAt({ segments: [] }, 5), 0);
  assert.equal(endOf({ segments: [] }), undefined);
});

test("phase is the integral of the rate", () => {
  // Mean rate over a linear ramp is half of its sum: 2 s from 0 to 1 Hz make 1 cycle.
  assert.equal(phaseAfter(set.segments[0]!), 1);
  let sum = 0;
  const step = 0.5;
  for (let at = 0; at < 16_000; at += step) sum += (rateAt(set, at + step / 2) * step) / 1000;
  assert.ok(Math.abs(sum - 12) < 1e-3, `${sum}`);
});

test("24 cycles take 30, 24 and 20 s at 0.8, 1.0 and 1.2 Hz", () => {
  // Rates: van Veen et al. 2015, doi 10.3389/fpsyt.2015.00045; the times are arithmetic.
  for (const [rate, seconds] of [
    [0.8, 30],
    [1, 24],
    [1.2, 20],
  ] as const) {
    const steady: Timeline = { segments: [{ starts_at: 0, lasts: 60_000, phase: 0, rate_from: rate, rate_to: rate }] };
    assert.ok(Math.abs(phaseAt(steady, seconds * 1000) - 24) < 1e-9);
  }
});

test("between two segments that rounding left a hair apart the dot is where the first one ended", () => {
  const apart = {
    segments: [
      { starts_at: 0, lasts: 1000 - 1e-9, phase: 3, rate_from: 1, rate_to: 1 },
      { starts_at: 1000 + 1e-9, lasts: 1000, phase: 4, rate_from: 1, rate_to: 1 },
    ],
  };
  assert.ok(Math.abs(phaseAt(apart, 1000) - 4) < 1e-9, `${phaseAt(apart, 1000)}`);
  assert.equal(rateAt(apart, 1000), 1);
});
