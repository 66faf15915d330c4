import assert from "node:assert/strict";
import { test } from "node:test";
import { usual } from "../live/comfort.fixture";
import { CYCLES, peakSpeed, sameButRate, samePlan, speedAdvice, stepPlan, toggleOpen } from "./plan";
import { aPlan, aView } from "./sample.fixture";

test("peak speed is pi * A * f", () => {
  // Worked values: sine of peak-to-peak width A at f Hz has peak speed pi*A*f (derivative of (A/2) sin 2 pi f t).
  const table: [number, number, number][] = [
    [20, 0.8, 50.27],
    [20, 1, 62.83],
    [20, 1.2, 75.4],
    [30, 1, 94.25],
    [30, 1.2, 113.1],
  ];
  for (const [width, rate, expected] of table) assert.ok(Math.abs(peakSpeed(aPlan({ width, rate })) - expected) < 0.005, `${width} deg at ${rate} Hz`);
});

test("a constant sweep is slower at its peak, the eight faster", () => {
  // Triangle of 20 degrees at 1 Hz: 2 A f = 40; the eight is 1.390 widths long from end to end.
  assert.equal(peakSpeed(aPlan({ width: 20, comfort: { ...usual, sweep: "constant" } })), 40);
  assert.ok(Math.abs(peakSpeed(aPlan({ width: 20, path: "eight" })) - 87.35) < 0.005);
});

test("words about speed begin above 60 and above 90 degrees a second", () => {
  // Limit of smooth pursuit near 90 to 100 deg/s: Meyer, Lasker & Robinson 1985, Vision Research 25:561 (figure from memory);
  // gain falls from 0.98 to 0.75 between 10 and 60 deg/s (abstract, probably Schalén 1980).
  assert.equal(speedAdvice(60), null);
  assert.equal(speedAdvice(60.1), "eyes will catch up in small jumps");
  assert.equal(speedAdvice(90), "eyes will catch up in small jumps");
  assert.match(speedAdvice(90.1) ?? "", /less width or rate is advised/);
});

test("the rate steps by 0.05 Hz without drift and stays between 0.3 and 2", () => {
  let plan = aPlan({ rate: 1 });
  for (let i = 0; i < 4; i++) plan = stepPlan(plan, "rate", 1, aView());
  assert.equal(plan.rate, 1.2);
  for (let i = 0; i < 50; i++) plan = stepPlan(plan, "rate", 1, aView());
  assert.equal(plan.rate, 2);
  for (let i = 0; i < 50; i++) plan = stepPlan(plan, "rate", -1, aView());
  assert.equal(plan.rate, 0.3);
});

test("the width is whole degrees, 2 to 40", () => {
  assert.equal(stepPlan(aPlan({ width: 18.4 }), "width", 1, aView()).width, 19);
  assert.equal(stepPlan(aPlan({ width: 40 }), "width", 1, aView()).width, 40);
  assert.equal(stepPlan(aPlan({ width: 2 }), "width", -1, aView()).width, 2);
});

test("the dot goes through its sizes and stops at 3 degrees", () => {
  assert.equal(stepPlan(aPlan({ dot: 1.2 }), "dot", 1, aView()).dot, 1.5);
  assert.equal(stepPlan(aPlan({ dot: 3 }), "dot", 1, aView()).dot, 3);
  assert.equal(stepPlan(aPlan({ dot: 0.5 }), "dot", -1, aView()).dot, 0.5);
});

test("paths go round in both directions", () => {
  assert.equal(stepPlan(aPlan({ path: "eight" }), "path", 1, aView()).path, "across");
  assert.equal(stepPlan(aPlan({ path: "across" }), "path", -1, aView()).path, "eight");
});

test("with the eyes locked only tones and hands are on offer", () => {
  const locked = aView({ eyes_locked: true });
  assert.deepEqual(stepPlan(aPlan({}), "channels", 1, locked).channels, { eyes: false, ears: true, hands: false });
  assert.deepEqual(stepPlan(aPlan({ channels: { eyes: false, ears: true, hands: false } }), "channels", 1, locked).channels, {
    eyes: false,
    ears: false,
    hands: true,
  });
  assert.deepEqual(stepPlan(aPlan({ channels: { eyes: false, ears: false, hands: true } }), "channels", 1, locked).channels, {
    eyes: false,
    ears: true,
    hands: false,
  });
});

test("every choice of channels keeps at least one on", () => {
  let plan = aPlan({});
  for (let i = 0; i < 6; i++) {
    plan = stepPlan(plan, "channels", 1, aView());
    assert.ok(plan.channels.eyes || plan.channels.ears || plan.channels.hands);
  }
});

test("lengths: steps of four cycles, of two up to twelve, the same way back, and open-ended to 24", () => {
  const walk = (direction: 1 | -1, from: number, count: number): number[] => {
    let plan = aPlan({ length: { kind: "cycles", cycles: from } });
    return Array.from({ length: count }, () => {
      plan = stepPlan(plan, "length", direction, aView());
      return plan.length.kind === "cycles" ? plan.length.cycles : NaN;
    });
  };
  assert.deepEqual(walk(-1, 24, 9), [20, 16, 12, 10, 8, 6, 4, 2, CYCLES.least]);
  assert.deepEqual(walk(1, 2, 8), [4, 6, 8, 10, 12, 16, 20, 24]);
  assert.deepEqual(walk(1, 198, 2), [200, CYCLES.most]);
  assert.deepEqual(toggleOpen(aPlan({})).length, { kind: "open" });
  assert.deepEqual(toggleOpen(toggleOpen(aPlan({}))).length, { kind: "cycles", cycles: 24 });
});

test("plans are compared in every setting", () => {
  const plan = aPlan({});
  assert.ok(samePlan(plan, aPlan({})));
  assert.ok(!samePlan(plan, aPlan({ rate: 1.1 })));
  assert.ok(sameButRate(plan, aPlan({ rate: 1.1 })));
  for (const other of [
    aPlan({ width: 19 }),
    aPlan({ dot: 2 }),
    aPlan({ path: "rising" }),
    toggleOpen(plan),
    aPlan({ channels: { eyes: true, ears: true, hands: false } }),
    aPlan({ channels: { eyes: true, ears: false, hands: true } }),
    aPlan({ comfort: { ...usual, pitch: 300 } }),
  ]) {
    assert.ok(!sameButRate(plan, other));
  }
});
