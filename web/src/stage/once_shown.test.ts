import assert from "node:assert/strict";
import { test } from "node:test";
import { onceShown } from "./once_shown";

const FRAME = 1000 / 60;

/** What `onceShown` tells of a page, once all time has passed; `turn`: the frame that asks the script and when the script has its turn, ms. */
function told(visibilityState: "visible" | "hidden", turn?: { asked: number; at: number }): (number | undefined)[] {
  const times: (number | undefined)[] = [];
  const later: (() => void)[] = [];
  const real = globalThis.setTimeout;
  Object.assign(globalThis, {
    document: { visibilityState },
    setTimeout: (then: () => void) => later.push(then),
    requestAnimationFrame: (draw: (at: number) => void) => turn && draw(turn.asked),
  });
  onceShown(
    (last) => times.push(last),
    () => turn?.at ?? NaN,
  );
  globalThis.setTimeout = real;
  for (const then of later) then();
  return times;
}

test("a script in time: the last frame with what was before is the one before", () => {
  assert.deepEqual(told("visible", { asked: 1_000, at: 1_000 }), [1_000 - FRAME]);
  assert.deepEqual(told("visible", { asked: 1_000, at: 1_010 }), [1_000 - FRAME]);
});

test("a script that is late: the compositor goes on until it has had its turn", () => {
  assert.deepEqual(told("visible", { asked: 1_000, at: 1_015 }), [1_000]);
  assert.deepEqual(told("visible", { asked: 1_000, at: 1_100 }), [1_000 + 5 * FRAME]);
});

test("where no frame is drawn there is no time, and one call all the same", () => {
  assert.deepEqual(told("hidden"), [undefined]);
  assert.deepEqual(told("visible"), [undefined]);
});
