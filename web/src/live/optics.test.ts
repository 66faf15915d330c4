import assert from "node:assert/strict";
import { test } from "node:test";
import { degreesOf, pxOf } from "./optics";

const at = (distance_mm: number | null, px_per_mm: number | null) => ({ width_px: 0, height_px: 0, px_per_mm, distance_mm });
const near = (a: number, b: number, by: number) => assert.ok(Math.abs(a - b) <= by, `${a} is not ${b}`);

test("visual angle: sizes at 60 cm", () => {
  // angle = 2 atan(size / 2 distance): 10, 20, 30 degrees at 60 cm are 10.50, 21.16, 32.15 cm; 30 cm are 28.07 degrees.
  const screen = at(600, 1);
  for (const [degrees, mm] of [[10, 105], [20, 211.6], [30, 321.5]] as const) near(pxOf(degrees, screen), mm, 0.05);
  near(degreesOf(300, screen), 28.07, 0.005);
});

test("a px nobody measured has the angle of the reference pixel", () => {
  // CSS Values and Units: 1/96 inch at 28 inches, about 0.0213 degrees; 10 degrees are about 470 px.
  near(degreesOf(1, at(null, null)), 0.0213, 0.00005);
  near(pxOf(10, at(null, null)), 470, 1);
});

test("px and degrees are each other's inverse", () => {
  for (const screen of [at(null, null), at(450, 6.4), at(700, null), at(null, 5)]) near(degreesOf(pxOf(18, screen), screen), 18, 1e-9);
});
