import assert from "node:assert/strict";
import { test } from "node:test";
import { likelyWidth, likelyWords } from "./calibration";
import { aPlan, aView } from "./sample.fixture";

const device = aView().device!;

test("measured twice there is nothing to say", () => {
  assert.equal(likelyWidth(18, device), null);
  assert.deepEqual(likelyWords(aPlan(), device), []);
});

test("the likely range holds the figure that is assumed, and is narrower when one of the two is known", () => {
  const span = (changes: Partial<typeof device>) => {
    const { least, most } = likelyWidth(18, { ...device, ...changes })!;
    assert.ok(least < 18 && most > 18, `${least} to ${most}`);
    return most - least;
  };
  const neither = span({ px_per_mm: null, distance_mm: null });
  assert.ok(span({ px_per_mm: null }) < neither);
  span({ distance_mm: null });
});

test("by hand: 18 degrees as assumed are 718 px, which 1500 and 3225 px away make 26.9 and 12.7 degrees", () => {
  // 2 * 600 mm * 96 / 25.4 px per mm * tan 9 degrees = 718.3 px; 2 atan(359.2 / 1500), 2 atan(359.2 / 3225).
  const { least, most } = likelyWidth(18, { ...device, px_per_mm: null, distance_mm: null })!;
  assert.ok(Math.abs(most - 26.93) < 0.02 && Math.abs(least - 12.71) < 0.02, `${least} to ${most}`);
  assert.deepEqual(likelyWords(aPlan(), { ...device, px_per_mm: null, distance_mm: null }), ["uncalibrated: likely 13° to 27°"]);
});
