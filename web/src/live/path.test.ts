import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";
import type { Path } from "../wire/Path";
import { extremeAt, longestPath, placeAt, unitAt } from "./path";

interface Vectors {
  paths: { path: Path; phase: number; x: number; y: number }[];
}
const vectors = JSON.parse(readFileSync("../tests/reference/timeline.json", "utf8")) as Vectors;

const close = (a: number, b: number) => assert.ok(Math.abs(a - b) < 1e-9, `${a} is not ${b}`);

test("agrees with the reference vectors of an independent script", () => {
  assert.ok(vectors.paths.length > 0);
  for (const { path, phase, x, y } of vectors.paths) {
    const unit = unitAt(path, phase);
    close(unit.x, x);
    close(unit.y, y);
  }
});

test("phase 0 is the left, the top, the upper left and the lower left end", () => {
  assert.deepEqual(unitAt("across", 0), { x: -0.5, y: -0 });
  assert.deepEqual(unitAt("up_down", 0), { x: -0, y: -0.5 });
  const falling = unitAt("falling", 0);
  assert.ok(falling.x < 0 && falling.y < 0);
  const rising = unitAt("rising", 0);
  assert.ok(rising.x < 0 && rising.y > 0);
});

test("every path is as long as its width, and half a cycle leads to its other end", () => {
  for (const path of ["across", "up_down", "falling", "rising"] as const) {
    const from = placeAt(path, 0, 300);
    const to = placeAt(path, 0.5, 300);
    close(Math.hypot(to.x - from.x, to.y - from.y), 300);
    close(placeAt(path, 1.25, 300).x, 0);
  }
});

test("peak speed of the sine is pi times width times rate", () => {
  // Closed form: 20 degrees at 0.8, 1.0, 1.2 Hz peak at 50.27, 62.83, 75.40 degrees a second.
  for (const [rate, peak] of [[0.8, 50.27], [1, 62.83], [1.2, 75.4]] as const) {
    const dt = 1e-5;
    const speed = (placeAt("across", 0.25 + rate * dt, 20).x - placeAt("across", 0.25, 20).x) / dt;
    assert.ok(Math.abs(speed - peak) < 0.01, `${speed}`);
  }
});

test("the longest path keeps the whole dot within the field", () => {
  const field = { width: 390, height: 844 };
  assert.equal(longestPath("across", field, 30), 360);
  assert.equal(longestPath("up_down", field, 30), 814);
  close(longestPath("falling", field, 30), 360 * Math.SQRT2);
  assert.equal(longestPath("across", { width: 10, height: 10 }, 30), 0);
});

test("ends alternate at every half cycle", () => {
  assert.deepEqual([0, 0.5, 1, 1.5, 23.5, 24].map(extremeAt), ["first", "second", "first", "second", "second", "first"]);
});
