import assert from "node:assert/strict";
import { test } from "node:test";
import { allHeard, randomSides } from "./sides";

test("three tones, never all on one side, in any of the six orders", () => {
  const seen = new Set<string>();
  for (const a of [0, 0.4, 0.999])
    for (const b of [0, 0.999])
      seen.add(
        randomSides(
          (
            (values) => () =>
              values.shift() ?? 0
          )([a, b]),
        ).join(),
      );
  assert.equal(seen.size, 6);
  for (const order of seen) assert.ok(order.includes("left") && order.includes("right"));
});

test("only every side right is right", () => {
  assert.ok(allHeard(["left", "right", "left"], ["left", "right", "left"]));
  assert.ok(!allHeard(["left", "right", "left"], ["left", "right", "right"]));
  assert.ok(!allHeard(["left", "right", "left"], ["left", null, "left"]));
  assert.ok(!allHeard(["left", "right", "left"], ["left", "right"]));
});
