import assert from "node:assert/strict";
import { test } from "node:test";
import { AudioClock, contextTime, fitted, median, type Reading } from "./audio_clock";

/** A reproducible noise of -1 to 1. */
function noise(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 1664525 + 1013904223) % 2 ** 32;
    return state / 2 ** 31 - 1;
  };
}

/** Readings each 100 ms of a clock that began at page time 7,000 ms and runs `ppm` fast, each off by up to `jitter` ms. */
function readings(count: number, ppm: number, jitter: number, seed = 1): Reading[] {
  const random = noise(seed);
  return Array.from({ length: count }, (_, i) => {
    const page = 10_000 + i * 100;
    return { page: page + jitter * random(), context: ((page - 7_000) / 1000) * (1 + ppm / 1e6) };
  });
}
const truth = (page: number, ppm: number): number => ((page - 7_000) / 1000) * (1 + ppm / 1e6);

test("the middle value", () => {
  assert.equal(median([1, 1, 1, 900, 1]), 1);
  assert.equal(median([1, 3]), 2);
  assert.equal(median([]), 0);
});

test("no line from a few readings: never one of them", () => {
  for (const count of [0, 1, 2, 3]) assert.equal(fitted(readings(count, 0, 0)), undefined);
  assert.notEqual(fitted(readings(4, 0, 0)), undefined);
});

test("least squares, worked by hand: four points about y = x", () => {
  // x 0, 1, 2, 3 s; y 0, 1.0001, 1.9999, 3: mean 1.5 and 1.5; slope = sum dx dy / sum dx dx = 4.9999 / 5 = 0.99998.
  const line = fitted(
    [
      [0, 0],
      [1000, 1.0001],
      [2000, 1.9999],
      [3000, 3],
    ].map(([page, context]) => ({ page: page!, context: context! })),
  );
  assert.ok(Math.abs(line!.slope - 0.99998) < 1e-9 && line!.at.page === 1500 && Math.abs(line!.at.context - 1.5) < 1e-12);
});

test("300 ms ahead the line is within 3 ms although each reading is off by up to 5", () => {
  for (let seed = 1; seed <= 200; seed++) {
    for (const ppm of [-100, 0, 100]) {
      const line = fitted(readings(32, ppm, 5, seed))!;
      const page = 13_100 + 300;
      assert.ok(Math.abs(contextTime(line, page) - truth(page, ppm)) < 0.003, `seed ${seed}`);
    }
  }
});

test("a stray reading moves nothing, a lasting change is followed within two seconds", () => {
  const clock = new AudioClock();
  for (const reading of readings(32, 0, 0)) clock.read(reading);
  clock.read({ page: 13_200, context: 99 });
  assert.ok(Math.abs(contextTime(clock.line!, 13_300) - 6.3) < 1e-9);
  // Other headphones: all is heard 150 ms later from now on.
  for (let i = 0; i < 20; i++) clock.read({ page: 13_300 + i * 100, context: 6.15 + i * 0.1 });
  assert.ok(Math.abs(contextTime(clock.line!, 15_300) - 8.15) < 1e-9);
});

test("the same reading again adds nothing, and a restart forgets", () => {
  const clock = new AudioClock();
  for (let i = 0; i < 20; i++) clock.read({ page: 1000 + i, context: 1 });
  assert.equal(clock.line, undefined);
  for (const reading of readings(10, 0, 0)) clock.read(reading);
  clock.restart();
  assert.equal(clock.line, undefined);
});
