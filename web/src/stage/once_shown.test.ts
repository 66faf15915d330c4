import assert from "node:assert/strict";
import { test } from "node:test";
import { onceShown } from "./once_shown";

/** What `onceShown` tells of a page whose animation frames begin at `frames`, ms, once all time has passed. */
function told(visibilityState: "visible" | "hidden", frames: number[]): (number | undefined)[] {
  const times: (number | undefined)[] = [];
  const later: (() => void)[] = [];
  const real = globalThis.setTimeout;
  Object.assign(globalThis, {
    document: { visibilityState },
    setTimeout: (then: () => void) => later.push(then),
    requestAnimationFrame: (draw: (at: number) => void) => {
      const at = frames.shift();
      if (at !== undefined) draw(at);
    },
  });
  onceShown((last) => times.push(last));
  globalThis.setTimeout = real;
  for (const then of later) then();
  return times;
}

test("the last frame that showed what was before is the one before the second", () => {
  assert.deepEqual(told("visible", [1_000, 1_000 + 50 / 3]), [1_000]);
  assert.deepEqual(told("visible", [1_000, 1_100]), [1_100 - 50 / 3], "the change was slow to reach the screen");
  assert.deepEqual(told("visible", [1_000, 1_008]), [1_000], "a screen of 120 frames a second");
});

test("where no frame is drawn there is no time, and one call all the same", () => {
  assert.deepEqual(told("hidden", []), [undefined]);
  assert.deepEqual(told("visible", []), [undefined]);
  assert.deepEqual(told("visible", [1_000]), [undefined]);
});
