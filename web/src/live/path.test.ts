import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";
import type { Path } from "../wire/Path";
import type { Sweep } from "../wire/Sweep";
import { extentOf, extremeAt, peakOf, placeAt, unitAt, widestPath } from "./path";

interface Vectors {
  paths: { path: Path; sweep: Sweep; phase: number; x: number; y: number }[];
}
const vectors = JSON.parse(readFileSync("../tests/reference/timeline.json", "utf8")) as Vectors;
const PATHS: Path[] = ["across", "up_down", "falling", "rising", "eight"];
const SWEEPS: Sweep[] = ["sine", "constant"];
const every = PATHS.flatMap((path) => SWEEPS.map((sweep) => [path, sweep] as const));

const close = (a: number, b: number, by = 1e-9) => assert.ok(Math.abs(a - b) < by, `${a} is not ${b}`);

test("agrees with the reference vectors of an independent script, for every path and sweep", () => {
  for (const [path, sweep] of every) {
    const rows = vectors.paths.filter((row) => row.path === path && row.sweep === sweep);
    assert.ok(rows.length >= 9, `${path} ${sweep}`);
    for (const { phase, x, y } of rows) {
      const unit = unitAt(path, sweep, phase);
      close(unit.x, x);
      close(unit.y, y);
    }
  }
});

test("phase 0 is the left, the top, the upper left and the lower left end", () => {
  for (const sweep of SWEEPS) {
    assert.deepEqual(unitAt("across", sweep, 0), { x: -0.5, y: -0 });
    assert.deepEqual(unitAt("up_down", sweep, 0), { x: -0, y: -0.5 });
    const falling = unitAt("falling", sweep, 0);
    assert.ok(falling.x < 0 && falling.y < 0);
    const rising = unitAt("rising", sweep, 0);
    assert.ok(rising.x < 0 && rising.y > 0);
    close(unitAt("eight", sweep, 0).x, -0.5);
    close(unitAt("eight", sweep, 0).y, 0);
  }
});

test("the ends of every path are one width apart", () => {
  for (const [path, sweep] of every) {
    const from = placeAt(path, sweep, 0, 300);
    const to = placeAt(path, sweep, 0.5, 300);
    close(Math.hypot(to.x - from.x, to.y - from.y), 300);
    close(placeAt(path, sweep, 1.25, 300).x, 0);
  }
});

test("peak speed: pi A f for the sine and 2 A f at constant speed on a line, more on the eight", () => {
  // Closed form: 20 degrees at 0.8, 1.0, 1.2 Hz peak at 50.27, 62.83, 75.40 degrees a second; a triangle of 20 at 1 Hz at 40.
  for (const [rate, peak] of [
    [0.8, 50.27],
    [1, 62.83],
    [1.2, 75.4],
  ] as const)
    close(20 * peakOf("across", "sine", rate), peak, 0.005);
  assert.equal(20 * peakOf("rising", "constant", 1), 40);
});

test("peak speed is that of the fastest point, by a difference quotient", () => {
  for (const [path, sweep] of every) {
    const dt = 1e-6;
    let fastest = 0;
    for (let phase = 0; phase < 1; phase += 0.001) {
      const a = unitAt(path, sweep, phase);
      const b = unitAt(path, sweep, phase + 1.2 * dt);
      fastest = Math.max(fastest, Math.hypot(a.x - b.x, a.y - b.y) / dt);
    }
    close(fastest, peakOf(path, sweep, 1.2), 1e-3);
  }
});

test("the widest path keeps the whole dot within the field", () => {
  const field = { width: 390, height: 844 };
  assert.equal(widestPath("across", field, 30), 360);
  assert.equal(widestPath("up_down", field, 30), 814);
  close(widestPath("falling", field, 30), 360 * Math.SQRT2);
  assert.equal(widestPath("eight", field, 30), 360);
  close(widestPath("eight", { width: 844, height: 100 }, 30) * extentOf("eight").y, 70);
  assert.equal(widestPath("across", { width: 10, height: 10 }, 30), 0);
});

test("ends alternate at every half cycle", () => {
  assert.deepEqual([0, 0.5, 1, 1.5, 23.5, 24].map(extremeAt), ["first", "second", "first", "second", "second", "first"]);
});
