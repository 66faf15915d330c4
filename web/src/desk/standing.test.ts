import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";
import { standing, type Link } from "./standing";

/** Computed by an independent script, tests/reference/ratings.py; the Rust twin and the database's view are bound to them too. */
interface Vectors {
  histories: { name: string; kept: Link[]; stands: { id: string; first: string }[] }[];
}
const vectors = JSON.parse(readFileSync("../tests/reference/ratings.json", "utf8")) as Vectors;

test("what stands agrees with the reference vectors", () => {
  assert.ok(vectors.histories.length > 40);
  for (const { name, kept, stands } of vectors.histories) {
    assert.deepEqual(
      standing(kept).map(({ entry, first }) => ({ id: entry.id, first: first.id })),
      stands,
      name,
    );
  }
});
