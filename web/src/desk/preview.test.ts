import assert from "node:assert/strict";
import { test } from "node:test";
import { Preview, previewPlace } from "./preview";
import { Screen } from "./preview.fixture";
import type { DeskView } from "../wire/DeskView";
import { aPlan, aSet, aView } from "./sample.fixture";

/** Room time - page time: the sample set begins with the page. */
const OFFSET = 1000;
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

test("each frame shows what is due at the frame's own time, however late its script has its turn", (t) => {
  const screen = new Screen(t, 9);
  new Preview(screen.box, (now) => ({ view: running, room: now + OFFSET })).draw();
  const seen = screen.pass(1500, 1500);
  assert.ok(seen.length > 80, `${seen.length} frames`);
  for (const { at, x } of seen) {
    // Straight lines between sixty keyframes a second are up to h²/8 · (A/2)(2πf)² off: 0.27 px for 390 px at 1 Hz.
    const due = previewPlace(running, at + OFFSET, box, 10).x;
    assert.ok(Math.abs(x - due) < 0.3, `at ${at} ms it is ${x - due} px ahead`);
  }
});

test("it moves off with the set, and not with the next thing that happens at the desk", (t) => {
  const screen = new Screen(t, 0);
  const preview = new Preview(screen.box, (now) => ({ view: running, room: now + 950 }));
  preview.draw();
  const seen = screen.pass(300, 300);
  const quarter = seen.filter(({ at }) => at > 250);
  assert.ok(quarter.length > 0 && quarter.every(({ x }) => x > -100), JSON.stringify(quarter));
});

test("what is not known is not shown as moving, and an order is taken up at once", (t) => {
  const screen = new Screen(t, 0);
  let view: DeskView | null = running;
  const preview = new Preview(screen.box, (now) => (view === null ? null : { view, room: now + OFFSET }));
  preview.draw();
  screen.pass(500, 250);
  view = null;
  preview.draw();
  assert.equal(new Set(screen.pass(500, 250).map(({ x }) => x)).size, 1, "halted");
  view = running;
  preview.draw();
  const { at, x } = screen.pass(20, 20).at(-1)!;
  assert.ok(Math.abs(x - previewPlace(running, at + OFFSET, box, 10).x) < 0.3);
  view = aView({ state: "stopped", set: aSet({ ended: "stopped_by_client" }) });
  preview.draw();
  assert.deepEqual([...new Set(screen.pass(500, 250).map(({ x: still }) => still))], [-195], "where the next set begins");
});

test("while the script hangs it goes on for a while, and no further than the set", (t) => {
  const screen = new Screen(t, 0);
  const short = aView({ state: "running", set: aSet({ timeline: { segments: [{ starts_at: 1000, lasts: 1000, phase: 0, rate_from: 1, rate_to: 1 }] } }) });
  new Preview(screen.box, (now) => ({ view: short, room: now + OFFSET })).draw();
  const seen = screen.pass(3000, Infinity);
  assert.ok(Math.abs(seen.find(({ at }) => at > 500 && at < 520)!.x - 195) < 6);
  assert.ok(Math.abs(seen.at(-1)!.x + 195) < 1e-2);
});
