import assert from "node:assert/strict";
import { test } from "node:test";
import { Desk, orders, running } from "./desk.fixture";
import { offeredRate, rhythmWords, tapped, tappedRate, type Taps } from "./rhythm";
import { aView } from "./sample.fixture";

const taps = (...intervals: number[]): Taps => intervals.reduce<Taps>((all, ms) => tapped(all, all[all.length - 1]! + ms), tapped([], 1000));
const last = (all: Taps) => all[all.length - 1]!;

test("five taps, one a side, make a rate: 500 ms apart is 1 Hz", () => {
  assert.equal(tappedRate(taps(500, 500, 500)), null);
  assert.equal(tappedRate(taps(500, 500, 500, 500)), 1);
});

test("it is the median of the last four intervals: one slip changes nothing, earlier taps are forgotten", () => {
  assert.equal(tappedRate(taps(500, 500, 1400, 500)), 1);
  assert.equal(tappedRate(taps(2000, 2000, 400, 400, 400, 400)), 1.25);
});

test("a long pause begins anew", () => {
  assert.equal(taps(500, 500, 500, 500, 2501).length, 1);
});

test("only a rate within 0.3 to 2 Hz is on offer, and not for ever", () => {
  const good = taps(500, 500, 500, 500);
  assert.equal(offeredRate(good, last(good) + 7999), 1);
  assert.equal(offeredRate(good, last(good) + 8000), null);
  const fast = taps(200, 200, 200, 200);
  assert.equal(offeredRate(fast, last(fast)), null);
  assert.match(rhythmWords(fast, last(fast)) ?? "", /outside 0.3 to 2 Hz/);
});

test("what was tapped is said before it is set", () => {
  const two = taps(500);
  assert.equal(rhythmWords(two, last(two)), "Tap on, once a side: 3 more.");
  const good = taps(500, 500, 500, 500);
  assert.equal(rhythmWords(good, last(good)), "Tapped 1.00 Hz. Enter sets it.");
  assert.equal(rhythmWords([], 0), null);
});

test("tapping changes nothing; Enter orders the rate, live too, and undo takes it back", () => {
  for (const view of [aView(), running()]) {
    const desk = Desk.with(view);
    const commands = [0, 1, 2, 3, 4].flatMap(() => desk.later(400).does({ kind: "tap" }));
    assert.deepEqual(commands, []);
    const [order] = orders(desk.does({ kind: "set_tapped" }));
    assert.ok(order?.kind === "plan" && order.plan.rate === 1.25);
    desk.answers(1);
    const [undone] = orders(desk.does({ kind: "undo_setting" }));
    assert.ok(undone?.kind === "plan" && undone.plan.rate === 1);
  }
});

test("Enter without a tapped rate orders nothing", () => {
  const desk = Desk.with(aView());
  assert.deepEqual(desk.does({ kind: "set_tapped" }), []);
  desk.does({ kind: "tap" });
  assert.deepEqual(desk.does({ kind: "set_tapped" }), []);
});
