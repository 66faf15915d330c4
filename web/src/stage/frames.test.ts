import assert from "node:assert/strict";
import { test } from "node:test";
import { Frames, TICK } from "./frames";

test("two frames are looked at in a row, and the longest wait is kept", () => {
  const frames = new Frames();
  frames.add(5); // not asked for
  frames.look(10);
  for (const at of [20, 37]) {
    assert.ok(frames.wanted);
    frames.add(at);
  }
  assert.ok(!frames.wanted);
  frames.look(400); // the time between two looks is no gap
  frames.add(410);
  assert.deepEqual(frames.take(), { frames: 3, longest_gap: 17 });
  assert.deepEqual(frames.take(), { frames: 0, longest_gap: 0 });
});

test("a frame that does not come is awaited, and its gap counts from the one before", () => {
  const frames = new Frames();
  frames.look(0);
  frames.add(10);
  frames.look(400);
  assert.deepEqual(frames.take(), { frames: 1, longest_gap: 10 });
  frames.look(800);
  frames.add(900);
  assert.deepEqual(frames.take(), { frames: 1, longest_gap: 890 });
});

test("a script that is held up shows by its late tick, by no more than it was late", () => {
  const frames = new Frames();
  for (const at of [0, TICK, 2 * TICK, 2 * TICK + 350]) frames.tick(at);
  assert.deepEqual(frames.take(), { frames: 0, longest_gap: 250 });
});
