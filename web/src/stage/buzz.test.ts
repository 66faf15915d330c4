import assert from "node:assert/strict";
import { test } from "node:test";
import { Buzz } from "./buzz";

const shown = { segments: [{ starts_at: 0, lasts: 60_000, phase: 0, rate_from: 1, rate_to: 1 }] };

test("one buzz at each extreme however often it is scheduled, and none after a cut or past the end", () => {
  const felt: { at: number; pattern: number[] }[] = [];
  let now = 0;
  const timers = new Set<{ run: () => void; at: number }>();
  const later = (run: () => void, ms: number) => {
    const timer = { run, at: now + ms };
    timers.add(timer);
    return () => void timers.delete(timer);
  };
  const tick = (ms: number) => {
    now += ms;
    for (const timer of [...timers]) if (timer.at <= now && timers.delete(timer)) timer.run();
  };
  const buzz = new Buzz((pattern) => felt.push({ at: now, pattern }), later);
  const pass = (ms: number, until = Infinity) => {
    for (const end = now + ms; now < end; ) {
      if (now % 100 === 0) buzz.schedule(shown, now, until);
      tick(1);
    }
  };
  pass(2050);
  assert.deepEqual(felt, [
    { at: 500, pattern: [35, 30, 35] },
    { at: 1000, pattern: [90] },
    { at: 1500, pattern: [35, 30, 35] },
    { at: 2000, pattern: [90] },
  ]);
  pass(400);
  buzz.cut(); // 50 ms before the next
  tick(500);
  assert.deepEqual(
    felt.slice(4).map(({ pattern }) => pattern),
    [[]],
  );
  now = 3000;
  pass(1000, 3400);
  assert.equal(felt.length, 5);
});
