import assert from "node:assert/strict";
import { test } from "node:test";
import { phaseAt } from "../live/timeline";
import { Preview, previewPlace } from "./preview";
import { Screen } from "./preview.fixture";
import type { DeskView } from "../wire/DeskView";
import { aPlan, aSet, aView } from "./sample.fixture";

/** Room time - page time: the sample set, 1 Hz from room time 1000, begins with the page. */
const OFFSET = 1000;
/** As large as the screen's. */
const FIELD = { width: 400, height: 40, dot: 10 };
const running = aView({ state: "running", set: aSet() });
const due = (page: number): number => previewPlace(aPlan(), phaseAt(aSet().timeline, page + OFFSET), FIELD).x;

test("phase 0 is the left end, half a cycle on the right end, a quarter the middle", () => {
  // x = -(A/2) cos(2 pi phase).
  assert.equal(previewPlace(aPlan(), 0, FIELD).x, -195);
  assert.ok(Math.abs(previewPlace(aPlan(), 0.5, FIELD).x - 195) < 1e-9);
  assert.ok(Math.abs(previewPlace(aPlan(), 0.25, FIELD).x) < 1e-9);
});

test("every path stays within its box", () => {
  for (const path of ["across", "up_down", "falling", "rising"] as const) {
    for (let phase = 0; phase < 2; phase += 0.05) {
      const { x, y } = previewPlace(aPlan({ path }), phase, FIELD);
      assert.ok(Math.abs(x) <= 195 + 1e-9 && Math.abs(y) <= 15 + 1e-9, `${path} ${phase}`);
    }
  }
});

test("at rest it stands where the next set begins, before its first segment at the one end and after its last at the other", (t) => {
  const screen = new Screen(t, 0);
  const half = aSet({ timeline: { segments: [{ starts_at: 1000, lasts: 2500, phase: 0, rate_from: 1, rate_to: 1 }] } });
  let [view, offset] = [aView({ state: "running", set: half }), -2000];
  const preview = new Preview(screen.box, (now) => ({ view, room: now + offset }));
  const stands = () => {
    preview.draw();
    const { x, y } = screen.pass(20, 20).at(-1)!;
    return [Math.round(x * 100) / 100, Math.round(y * 100) / 100];
  };
  assert.deepEqual(stands(), [-195, 0]);
  offset = 9000;
  assert.deepEqual(stands(), [195, 0]);
  view = aView({ state: "stopped", set: aSet({ ended: "stopped_by_client" }), plan: aPlan({ path: "up_down" }) });
  const [x, y] = stands();
  assert.deepEqual([Math.abs(x!), y], [0, -15]);
});

test("each frame shows what is due at the frame's own time, however late its script has its turn", (t) => {
  const screen = new Screen(t, 9);
  new Preview(screen.box, (now) => ({ view: running, room: now + OFFSET })).draw();
  const seen = screen.pass(1500, 1500);
  assert.ok(seen.length > 80, `${seen.length} frames`);
  for (const { at, x } of seen) {
    // Straight lines between sixty keyframes a second are up to h²/8 · (A/2)(2πf)² off: 0.27 px for 390 px at 1 Hz.
    assert.ok(Math.abs(x - due(at)) < 0.3, `at ${at} ms it is ${x - due(at)} px ahead`);
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
  assert.ok(Math.abs(x - due(at)) < 0.3);
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
