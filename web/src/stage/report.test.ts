import assert from "node:assert/strict";
import { test } from "node:test";
import type { Fact } from "../wire/Fact";
import { BATCH, Report } from "./report";

const second = (phase: number): Fact => ({ kind: "second", phase, frames: 60, longest_gap: 17 });

test("facts are numbered by set and kept until they are named", () => {
  const report = new Report();
  report.add("a", 1, { kind: "shown", width: 18 });
  report.add("a", 2, second(1));
  report.add("b", 3, second(1));
  assert.deepEqual(
    report.batch().map((f) => [f.set, f.seq]),
    [
      ["a", 0],
      ["a", 1],
      ["b", 0],
    ],
  );
  report.kept("a", 0);
  assert.deepEqual(
    report.batch().map((f) => [f.set, f.seq]),
    [
      ["a", 1],
      ["b", 0],
    ],
  );
  assert.equal(report.add("a", 4, second(2)).seq, 2, "numbers go on");
});

test("an answer for one set keeps another's facts", () => {
  const report = new Report();
  report.add("a", 1, second(1));
  report.add("b", 2, second(1));
  report.kept("b", 9);
  assert.deepEqual(
    report.batch().map((f) => f.set),
    ["a"],
  );
});

test("a message takes 20 at most, oldest first, and nothing is lost beyond", () => {
  const report = new Report();
  for (let i = 0; i < 50; i++) report.add("a", i, second(i));
  const seen: number[] = [];
  while (report.batch().length > 0) {
    const batch = report.batch();
    assert.ok(batch.length <= BATCH);
    seen.push(...batch.map((f) => f.seq));
    report.keptAll(batch);
  }
  assert.deepEqual(
    seen,
    Array.from({ length: 50 }, (_, i) => i),
  );
});
