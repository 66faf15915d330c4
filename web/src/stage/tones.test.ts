import assert from "node:assert/strict";
import { test } from "node:test";
import { gainOf, median } from "./tones";

test("loudness starts low, rises by small steps and is capped", () => {
  assert.equal(gainOf(0), 0.03);
  for (let n = 0; n < 400; n++) assert.ok(gainOf(n + 1) >= gainOf(n) && gainOf(n) <= 0.18);
  assert.equal(gainOf(1000), 0.18);
});

test("one wrong reading of the audio clock moves nothing", () => {
  assert.equal(median([1, 1, 1, 900, 1]), 1);
  assert.equal(median([1, 3]), 2);
  assert.equal(median([]), 0);
});
