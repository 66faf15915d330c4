import assert from "node:assert/strict";
import { test } from "node:test";
import type { Plan } from "../wire/Plan";
import type { Preset } from "../wire/Preset";
import type { DeskView } from "../wire/DeskView";
import { Desk, kinds, orders, running } from "./desk.fixture";
import { aView } from "./sample.fixture";

const usual = aView().plan;
const preset = (more: Partial<Preset> = {}): Preset => ({
  name: "Slow",
  purpose: "processing",
  channels: usual.channels,
  rate: 0.8,
  width: 20,
  length: { kind: "cycles", cycles: 30 },
  ...more,
});
const calm = preset({ name: "Calm place", purpose: "calm_place", rate: 0.5, length: { kind: "cycles", cycles: 6 } });

function deskWith(presets: Preset[], view: DeskView = aView()): Desk {
  const desk = Desk.with(view);
  desk.state = { ...desk.state, presets, lower: "mechanics" };
  return desk;
}
const planOf = (desk: Desk, index: number): Plan | undefined => {
  const [order] = orders(desk.does({ kind: "preset", index }));
  return order?.kind === "plan" ? order.plan : undefined;
};

test("a preset sets rate, width, length and channels of the next set, and nothing else", () => {
  const desk = deskWith([preset(), calm]);
  assert.deepEqual(planOf(desk, 0), { ...usual, rate: 0.8, width: 20, length: { kind: "cycles", cycles: 30 } });
  assert.equal(desk.notice(), "Preset: Slow, for the next set.");
  assert.equal(desk.state.lower, "log");
});

test("a preset wider than the client's screen is asked for all the same: the room gives it what fits", () => {
  const desk = deskWith([preset()], aView({ widest: 9.5, plan: { ...usual, width: 9 }, asked_width: 18 }));
  assert.equal(planOf(desk, 0)?.width, 20);
  const wider = Desk.with(aView({ widest: 9.5, plan: { ...usual, width: 9 }, asked_width: 18 }));
  assert.deepEqual(orders(wider.does({ kind: "step", setting: "width", direction: 1 })), []);
  assert.match(wider.notice() ?? "", /widest that fits is 9\.5°/);
});

test("a preset is undone like any other change", () => {
  const desk = deskWith([preset()]);
  const asked = planOf(desk, 0);
  desk.answers(1);
  desk.sees({ plan: asked ?? usual });
  assert.deepEqual(orders(desk.does({ kind: "undo_setting" })), [{ kind: "plan", plan: usual }]);
});

test("while a set runs a preset passes only as a change of the rate", () => {
  const desk = deskWith([preset(), preset({ name: "Fast", rate: 1.2, width: usual.width, length: usual.length })], running());
  assert.equal(planOf(desk, 0), undefined);
  assert.equal(desk.notice(), "While a set runs only the rate can change.");
  assert.deepEqual(planOf(desk, 1), { ...running().plan, rate: 1.2 });
});

test("a calm-place preset never applies while a set runs, starts or eases, not even as a change of the rate", () => {
  const close = preset({ name: "Calm place", purpose: "calm_place", rate: 0.5, width: usual.width, length: usual.length });
  for (const state of ["running", "starting", "easing"] as const) {
    const desk = deskWith([close], { ...running(), state });
    assert.deepEqual(kinds(desk.does({ kind: "preset", index: 0 })), [], state);
    assert.equal(desk.notice(), "Calm-place presets are not for a set that runs.");
  }
  const ready = deskWith([close]);
  assert.equal(planOf(ready, 0)?.rate, 0.5);
  assert.equal(ready.notice(), "Calm place: Calm place, for the next set.");
});

test("a digit without a preset, a desk without control and one without a line change nothing and say so", () => {
  const desk = deskWith([preset()]);
  assert.equal(planOf(desk, 7), undefined);
  assert.equal(desk.notice(), "No preset has this number.");
  const watching = deskWith([preset()], aView({ in_control: false }));
  assert.equal(planOf(watching, 0), undefined);
  assert.match(watching.notice(), /view-only/);
  desk.event({ kind: "line", open: false });
  assert.equal(planOf(desk, 0), undefined);
  assert.match(desk.notice(), /no connection/);
});

test("digits belong to one thing at a time: presets put the rating away, a rating puts the presets away", () => {
  const desk = Desk.with(aView());
  desk.does({ kind: "arm", scale: "sud" });
  desk.does({ kind: "lower", shown: "mechanics" });
  assert.deepEqual([desk.state.armed, desk.state.lower], [null, "mechanics"]);
  desk.does({ kind: "arm", scale: "voc" });
  assert.deepEqual([desk.state.armed?.scale, desk.state.lower], ["voc", "log"]);
});
