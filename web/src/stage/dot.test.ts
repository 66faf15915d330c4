import assert from "node:assert/strict";
import { test } from "node:test";
import { placeAt } from "../live/path";
import { place } from "./dot";
import { keyframes } from "../live/track";

const shown = { segments: [{ starts_at: 0, lasts: 60_000, phase: 0, rate_from: 1, rate_to: 1 }] };
const shape = { path: "across", sweep: "sine", width: 600, dot: 40 } as const;
const xOf = (frame: Keyframe | undefined) => Number(/translate\((.+)px,/.exec(String(frame?.["transform"]))?.[1]);

test("60 keyframes a second, the first and last on the function", () => {
  const frames = keyframes(shown, place(shape), 1000, 2600);
  assert.equal(frames.length, 97);
  assert.ok(Math.abs(xOf(frames[0]) - placeAt("across", "sine", 1, 600).x) < 0.001);
  assert.ok(Math.abs(xOf(frames[96]) - placeAt("across", "sine", 2.6, 600).x) < 0.001);
});

test("straight lines between keyframes stay within the error of linear interpolation", () => {
  // |error| <= h²/8 · max |x''|, with x'' = (A/2)(2πf)²: 0.41 px for 600 px at 1 Hz.
  const frames = keyframes(shown, place(shape), 0, 1600);
  const most = ((1 / 60) ** 2 / 8) * 300 * (2 * Math.PI) ** 2 + 0.001;
  for (let i = 0; i + 1 < frames.length; i++) {
    const middle = (xOf(frames[i]) + xOf(frames[i + 1])) / 2;
    assert.ok(Math.abs(middle - placeAt("across", "sine", (i + 0.5) / 60, 600).x) <= most);
  }
});
