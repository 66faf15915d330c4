import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";
import type { Entry } from "../wire/Entry";
import type { LogSet } from "../wire/LogSet";
import type { SessionLog } from "../wire/SessionLog";
import { baseOf, caption, course, footed, heightOf, labelled, middleOf, SIZE, stepLine } from "./course";
import { EMPTY_LOG } from "./model";
import { aPlan } from "./sample.fixture";

const sets: LogSet[] = [1, 2, 3].map((number) => ({
  id: `set-${number}`,
  number,
  plan: aPlan(),
  cycles: 24,
  ending: number === 2 ? "stopped_by_client" : "done",
}));
const sud = (set: string | null, value: number, moment: Entry["moment"] = "after_set"): Entry => ({
  id: `${set}-${value}`,
  set,
  replaces: null,
  moment,
  segment: null,
  from_client: false,
  value: { kind: "sud", value },
});
const log = (of: LogSet[], start: number | null = null, changes: Partial<SessionLog> = {}): SessionLog => ({
  ...EMPTY_LOG,
  sets: of,
  start: { sud: start, voc: null },
  ...changes,
});

test("one point a set, led by the start; a set without a rating has none", () => {
  const points = course(log(sets, 8), [sud("set-1", 7), sud("set-3", 5)], "sud");
  assert.deepEqual(
    points.map((point) => point.value),
    [8, 7, null, 5],
  );
  assert.deepEqual(
    points.map((point) => point.mark),
    ["", "", "×", ""],
  );
});

test("what was asked before the first set takes the place of the assessment; the last rating of a set counts", () => {
  assert.deepEqual(
    course(log(sets.slice(0, 1), 8), [sud(null, 9), sud("set-1", 7), sud("set-1", 6)], "sud").map((point) => point.value),
    [9, 6],
  );
});

test("a re-evaluation of another target is no part of the course", () => {
  const again = sud(null, 2, "reevaluation");
  assert.deepEqual(
    course(log([], 8, { other_reevaluated: true }), [again], "sud").map((point) => point.value),
    [8],
  );
  assert.deepEqual(
    course(log([], 8), [again], "sud").map((point) => point.value),
    [2],
  );
});

test("the axis is fixed: 0 to 10 for SUD, 1 to 7 for VOC", () => {
  for (const [scale, least, most] of [
    ["sud", 0, 10],
    ["voc", 1, 7],
  ] as const) {
    assert.equal(heightOf(most, scale), SIZE.top);
    assert.equal(heightOf(least, scale), baseOf(scale));
  }
});

test("thirty sets stay readable: no figure stands on another, at the foot or over the line", () => {
  const many = Array.from({ length: 30 }, (_, i): LogSet => ({ id: `set-${i + 1}`, number: i + 1, plan: aPlan(), cycles: 24, ending: "done" }));
  const entries = many.map(({ id, number }) => sud(id, number % 2 === 0 ? 10 : 3));
  for (const points of [course(log(many, 8), entries, "sud"), course(log(many, 8), [...entries, sud(null, 0, "closing")], "sud")]) {
    // A digit of 13 px is some 7.3 px wide (Liberation Sans, measured), so "10" is under 15 and "start" under 28.
    const wide = (label: string): number => (label.length > 2 ? 28 : 15);
    const row = (indices: number[], label: (index: number) => string): void => {
      assert.ok(indices.length > 5, "most of them are named");
      indices.slice(1).forEach((index, i) => {
        const before = indices[i] ?? 0;
        const gap = middleOf(points, index) - middleOf(points, before);
        assert.ok(gap >= (wide(label(index)) + wide(label(before))) / 2, `${label(before)} and ${label(index)} are ${gap} apart`);
      });
    };
    row(footed(points), (index) => String(points[index]?.place));
    row(labelled(points), () => "10");
    assert.deepEqual([footed(points)[0], labelled(points)[0]], [0, 0]);
  }
});

test("a value is written where it changes, and the last one has its name instead", () => {
  const points = course(log(sets, 7), [sud("set-1", 7), sud("set-2", 6), sud("set-3", 6)], "sud");
  assert.deepEqual(labelled(points), [0, 2]);
  assert.deepEqual(footed(points), [0, 1, 2, 3]);
});

test("the line steps and breaks over a gap", () => {
  const points = course(log(sets, 8), [sud("set-1", 7), sud("set-3", 5)], "sud");
  const line = stepLine(points, "sud");
  assert.equal((line.match(/M/g) ?? []).length, 2);
  assert.equal((line.match(/L/g) ?? []).length, 1);
  assert.equal(stepLine(course(EMPTY_LOG, [], "sud"), "sud"), "");
});

/** Computed by an independent script, tests/reference/ratings.py; the captions of the session's page are bound to them too. */
interface Vectors {
  captions: { start: number | null; sets: (number | null)[]; close: number | null; says: string }[];
}
const vectors = JSON.parse(readFileSync("../tests/reference/ratings.json", "utf8")) as Vectors;

test("the caption says what the session's page will say", () => {
  assert.ok(vectors.captions.length > 10);
  for (const { start, sets: values, close, says } of vectors.captions) {
    const done = values.map((_, index): LogSet => ({ id: `set-${index + 1}`, number: index + 1, plan: aPlan(), cycles: 24, ending: "done" }));
    const entries = values.flatMap((value, index) => (value === null ? [] : [sud(`set-${index + 1}`, value)]));
    const all = close === null ? entries : [...entries, sud(null, close, "closing")];
    assert.equal(caption(course(log(done, start), all, "sud"), "sud"), says);
  }
});

test("a set that was stopped and one whose end is not known are marked apart, and a time limit not at all", () => {
  const ended = (["done", "hard_limit", "link_lost", "unknown"] as const).map(
    (ending, index): LogSet => ({ id: `set-${index + 1}`, number: index + 1, plan: aPlan(), cycles: 24, ending }),
  );
  const points = course(log(ended), [], "sud");
  assert.deepEqual(
    points.map((point) => point.mark),
    ["", "", "", "×", "?"],
  );
  assert.equal(caption(points, "sud"), "SUD was not asked. × marks a set that was stopped. ? marks a set whose end is not known.");
});
