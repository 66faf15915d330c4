import assert from "node:assert/strict";
import { test } from "node:test";
import { Desk, kinds, orders, running } from "./desk.fixture";
import { shownPlan } from "./model";
import { aPlan, aView } from "./sample.fixture";

test("changes of the plan: one in flight, the newest follows the answer", () => {
  const desk = Desk.with(aView());
  assert.deepEqual(orders(desk.does({ kind: "step", setting: "rate", direction: 1 })), [{ kind: "plan", plan: aPlan({ rate: 1.05 }) }]);
  assert.deepEqual(desk.does({ kind: "step", setting: "rate", direction: 1 }), []);
  assert.deepEqual(desk.does({ kind: "step", setting: "rate", direction: 1 }), []);
  assert.equal(shownPlan(desk.state)?.rate, 1.15);
  assert.deepEqual(orders(desk.answers(1)), [{ kind: "plan", plan: aPlan({ rate: 1.15 }) }]);
  desk.answers(2);
  desk.sees({ plan: aPlan({ rate: 1.15 }) });
  assert.equal(desk.state.wanted, null);
  assert.equal(shownPlan(desk.state)?.rate, 1.15);
});

test("a view that comes before the answer settles the plan as well", () => {
  const desk = Desk.with(aView());
  desk.does({ kind: "step", setting: "rate", direction: 1 });
  desk.sees({ plan: aPlan({ rate: 1.05 }) });
  assert.equal(shownPlan(desk.state)?.rate, 1.05);
  desk.answers(1);
  assert.equal(desk.state.wanted, null);
});

test("a refused plan goes back to the room's, with the reason", () => {
  const desk = Desk.with(aView());
  desk.does({ kind: "step", setting: "dot", direction: 1 });
  desk.answers(1, { kind: "limit", limit: "The dot must be 3 degrees or less." });
  assert.equal(shownPlan(desk.state)?.dot, 1);
  assert.match(desk.notice(), /3 degrees or less/);
  desk.does({ kind: "undo_setting" });
  assert.match(desk.notice(), /No change/);
});

test("while a set runs only the rate changes", () => {
  for (const setting of ["width", "dot", "path", "length", "channels"] as const) {
    const desk = Desk.with(running());
    assert.deepEqual(desk.does({ kind: "step", setting, direction: -1 }), []);
    assert.match(desk.notice(), /only the rate/);
  }
  assert.deepEqual(kinds(Desk.with(running()).does({ kind: "step", setting: "rate", direction: -1 })), ["plan"]);
});

test("a width that screen cannot show is refused with the widest that fits", () => {
  const desk = Desk.with(aView({ plan: aPlan({ width: 24 }), widest: 24.38 }));
  assert.deepEqual(desk.does({ kind: "step", setting: "width", direction: 1 }), []);
  assert.match(desk.notice(), /widest that fits is 24\.3°/);
  assert.deepEqual(kinds(desk.does({ kind: "step", setting: "width", direction: -1 })), ["plan"]);
});

test("a start sends the newest plan first", () => {
  const desk = Desk.with(aView());
  desk.does({ kind: "step", setting: "width", direction: 1 });
  desk.does({ kind: "step", setting: "width", direction: 1 });
  const sent = orders(desk.does({ kind: "start" }));
  assert.deepEqual(sent, [{ kind: "plan", plan: aPlan({ width: 20 }) }, { kind: "start" }]);
});

test("a change of a setting is undone without a question; a held key counts as one", () => {
  const desk = Desk.with(aView());
  desk.does({ kind: "step", setting: "path", direction: 1 });
  desk.answers(1);
  desk.sees({ plan: aPlan({ path: "up_down" }) });
  for (let i = 0; i < 3; i++) desk.later(30).does({ kind: "step", setting: "rate", direction: 1 });
  desk.answers(2);
  desk.answers(3);
  desk.sees({ plan: aPlan({ path: "up_down", rate: 1.15 }) });
  assert.deepEqual(orders(desk.does({ kind: "undo_setting" })), [{ kind: "plan", plan: aPlan({ path: "up_down" }) }]);
  desk.answers(4);
  desk.sees({ plan: aPlan({ path: "up_down" }) });
  assert.deepEqual(orders(desk.does({ kind: "undo_setting" })), [{ kind: "plan", plan: aPlan() }]);
});
