import assert from "node:assert/strict";
import { test } from "node:test";
import { CARD_MM, DEFAULT_PX_PER_MM, degreesOf, pxOf } from "./optics";

const at = (distance_mm: number | null, px_per_mm: number | null) => ({ width_px: 0, height_px: 0, px_per_mm, distance_mm });
const near = (a: number, b: number, by: number) => assert.ok(Math.abs(a - b) <= by, `${a} is not ${b}`);

test("visual angle: sizes at 60 cm", () => {
  // angle = 2 atan(size / 2 distance): 10, 20, 30 degrees at 60 cm are 10.50, 21.16, 32.15 cm; 30 cm are 28.07 degrees.
  const screen = at(600, 1);
  for (const [degrees, mm] of [
    [10, 105],
    [20, 211.6],
    [30, 321.5],
  ] as const)
    near(pxOf(degrees, screen), mm, 0.05);
  near(degreesOf(300, screen), 28.07, 0.005);
});

test("a CSS px at arm's length of 28 inches is about 0.0213 degrees", () => {
  // CSS Values and Units, "reference pixel"; 10 degrees are about 470 px.
  near(degreesOf(1, at(28 * 25.4, null)), 0.0213, 0.00005);
  near(pxOf(10, at(28 * 25.4, null)), 470, 1);
});

test("the card is the card of ISO/IEC 7810, nominally 323.5 by 204.0 px", () => {
  near(CARD_MM.width * DEFAULT_PX_PER_MM, 323.5, 0.05);
  near(CARD_MM.height * DEFAULT_PX_PER_MM, 204, 0.05);
});

test("px and degrees are each other's inverse", () => {
  for (const screen of [at(null, null), at(450, 6.4), at(700, null), at(null, 5)]) near(degreesOf(pxOf(18, screen), screen), 18, 1e-9);
});
