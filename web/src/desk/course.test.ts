import assert from "node:assert/strict";
import { test } from "node:test";
import type { Entry } from "../wire/Entry";
import type { LogSet } from "../wire/LogSet";
import { course, finding, heightOf, SIZE, stepLine } from "./course";
import { aPlan } from "./sample.fixture";

const sets: LogSet[] = [1, 2, 3].map((number) => ({ id: `set-${number}`, number, plan: aPlan(), cycles: 24, ending: number === 2 ? "stopped_by_client" : "done" }));
const sud = (set: string | null, value: number): Entry => ({ id: `${set}-${value}`, set, replaces: null, moment: "after_set", value: { kind: "sud", value } });

test("one point a set, led by the baseline; a set without a rating has none", () => {
  const points = course(sets, [sud("set-1", 7), sud("set-3", 5)], "sud", 8);
  assert.deepEqual(points.map((point) => point.value), [8, 7, null, 5]);
  assert.deepEqual(points.map((point) => point.stopped), [false, false, true, false]);
});

test("what was asked before the first set takes the place of the recorded baseline; the last rating of a set counts", () => {
  assert.deepEqual(course(sets.slice(0, 1), [sud(null, 9), sud("set-1", 7), sud("set-1", 6)], "sud", 8).map((point) => point.value), [9, 6]);
});

test("the axis is fixed: 0 to 10 for SUD, 1 to 7 for VOC", () => {
  assert.equal(heightOf(10, "sud"), SIZE.top);
  assert.equal(heightOf(0, "sud"), SIZE.height - SIZE.bottom);
  assert.equal(heightOf(7, "voc"), SIZE.top);
  assert.equal(heightOf(1, "voc"), SIZE.height - SIZE.bottom);
});

test("the line steps and breaks over a gap", () => {
  const points = course(sets, [sud("set-1", 7), sud("set-3", 5)], "sud", 8);
  const line = stepLine(points, "sud");
  assert.equal((line.match(/M/g) ?? []).length, 2);
  assert.equal((line.match(/L/g) ?? []).length, 1);
  assert.equal(stepLine(course([], [], "sud", null), "sud"), "");
});

test("the caption says the finding", () => {
  assert.equal(finding(course(sets, [sud("set-1", 7), sud("set-3", 5)], "sud", 8), "sud"), "SUD 8 before the first set, 5 after set 3; asked after 2 of 3 sets. × marks a set that was broken off.");
  assert.equal(finding(course(sets.slice(0, 1), [], "voc", 3), "voc"), "VOC 3 before the first set; asked after 0 of 1 set.");
  assert.equal(finding(course([], [], "sud", null), "sud"), "SUD: none asked yet.");
});
