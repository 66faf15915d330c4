import assert from "node:assert/strict";
import { test } from "node:test";
import { previewMoves, previewPlace } from "./preview";
import { aPlan, aSet, aView } from "./sample.fixture";

const box = { width: 400, height: 40 };
const running = aView({ state: "running", set: aSet() });

test("phase 0 is the left end, half a cycle on the right end, a quarter the middle", () => {
  // The sample set runs at 1 Hz from room time 1000: x = -(A/2) cos(2 pi phase).
  assert.equal(previewPlace(running, 1000, box, 10).x, -195);
  assert.ok(Math.abs(previewPlace(running, 1500, box, 10).x - 195) < 1e-9);
  assert.ok(Math.abs(previewPlace(running, 1250, box, 10).x) < 1e-9);
});

test("before the first segment and after the last it rests at an extreme", () => {
  assert.equal(previewPlace(running, 0, box, 10).x, -195);
  assert.ok(Math.abs(previewPlace(running, 99999, box, 10).x + 195) < 1e-6);
  assert.ok(!previewMoves(running, 999));
  assert.ok(previewMoves(running, 1000));
  assert.ok(!previewMoves(running, 25000));
  assert.ok(!previewMoves(aView({ set: aSet({ ended: "done" }) }), 5000));
  assert.ok(!previewMoves(aView(), 5000));
});

test("after a set it stands where the next one begins", () => {
  const stopped = aView({ state: "stopped", set: aSet({ ended: "stopped_by_client" }), plan: aPlan({ path: "up_down" }) });
  assert.deepEqual(previewPlace(stopped, 1250, box, 10), { x: -0, y: -15 });
});

test("every path stays within its box", () => {
  for (const path of ["across", "up_down", "falling", "rising"] as const) {
    const view = aView({ state: "running", set: aSet({ plan: aPlan({ path }) }) });
    for (let room = 1000; room < 3000; room += 50) {
      const { x, y } = previewPlace(view, room, box, 10);
      assert.ok(Math.abs(x) <= 195 + 1e-9 && Math.abs(y) <= 15 + 1e-9, `${path} ${room}`);
    }
  }
});
