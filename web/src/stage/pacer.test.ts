import assert from "node:assert/strict";
import { test } from "node:test";
import { sideAt } from "./pacer";

test("the side of the last extreme is filled, none before the first", () => {
  assert.deepEqual([0, 0.49, 0.5, 0.99, 1, 1.49, 1.5, 7.5, 8].map(sideAt), [undefined, undefined, "right", "right", "left", "left", "right", "right", "left"]);
});

// WCAG 2.2, 2.3.1: three flashes in any one second at most; a flash is on and off again. At 1.5 Hz, the most that hands may have.
test("both sides together light at most three times in any second", () => {
  const rate = 1.5;
  const lit: number[] = [];
  for (let ms = 1; ms < 20_000; ms++) if (sideAt((rate * ms) / 1000) !== sideAt((rate * (ms - 1)) / 1000)) lit.push(ms);
  for (const from of lit) assert.ok(lit.filter((at) => at >= from && at < from + 1000).length <= 3);
});
