import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";
import { finding } from "./finding";

/** Computed by an independent script, tests/reference/ratings.py; the Rust twin is bound to them too. */
interface Vectors {
  courses: { values: (number | null)[]; says: string }[];
}
const vectors = JSON.parse(readFileSync("../tests/reference/ratings.json", "utf8")) as Vectors;

test("what a course is said to do agrees with the reference vectors", () => {
  assert.ok(vectors.courses.length > 20);
  for (const { values, says } of vectors.courses) {
    assert.equal(
      finding(
        "SUD",
        values.filter((value) => value !== null),
      ),
      says,
      JSON.stringify(values),
    );
  }
});
