import assert from "node:assert/strict";
import { test } from "node:test";
import { placeOf, stepAfter, stepAfterSkippingAll, stepsFor } from "./check";

const all = { reducedMotion: true, handheld: true, vibrates: true, wakeLock: true, call: true, fullScreen: true };
const none = { reducedMotion: false, handheld: false, vibrates: false, wakeLock: false, call: false, fullScreen: false };

test("only what the device has is asked", () => {
  assert.deepEqual(stepsFor(all), ["start", "settle", "card", "distance", "motion", "call", "sound", "buzz", "awake", "full"]);
  assert.deepEqual(stepsFor(none), ["start", "settle", "card", "distance", "sound"]);
});

test("one question leads to the next, and the last one out", () => {
  assert.equal(stepAfter("start", none), "settle");
  assert.equal(stepAfter("distance", none), "sound");
  assert.equal(stepAfter("sound", none), undefined);
  assert.equal(stepAfter("sound", all), "buzz");
  // Asked again later, it is no part of the check.
  assert.equal(stepAfter("sides", all), undefined);
});

test("skipping all never skips an unanswered question about movement", () => {
  assert.equal(stepAfterSkippingAll("start", none), undefined);
  assert.equal(stepAfterSkippingAll("start", all), "motion");
  assert.equal(stepAfterSkippingAll("sound", all), undefined);
  assert.equal(stepAfterSkippingAll("sides", all), undefined);
});

test("places count what is asked, and nothing else", () => {
  assert.equal(placeOf("start", all), undefined);
  assert.equal(placeOf("sides", all), undefined);
  assert.equal(placeOf("motion", none), undefined, "not asked here");
  assert.deepEqual(placeOf("settle", none), { at: 1, of: 4 });
  assert.deepEqual(placeOf("full", all), { at: 9, of: 9 });
});
