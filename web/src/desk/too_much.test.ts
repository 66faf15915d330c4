// After it was too much: what is lit, what the state word says, and that a start is asked twice.
import assert from "node:assert/strict";
import { test } from "node:test";
import { Desk, kinds } from "./desk.fixture";
import { tooMuchHere } from "./log";
import { aPlan, aSet, aView } from "./sample.fixture";
import { holdWords, stateWord } from "./status";

const after = (): Desk => {
  const desk = Desk.with(aView({ set: aSet({ ended: "done" }) }));
  desk.does({ kind: "too_much" });
  desk.answers(1);
  return desk.later(1500);
};

test("it is never READY on its own: the first Space asks, the second starts", () => {
  const desk = after();
  assert.deepEqual([stateWord(desk.state, desk.now), holdWords(desk.state, desk.now)], ["HOLD", "was too much: asks twice"]);
  assert.deepEqual(kinds(desk.does({ kind: "start" })), []);
  assert.match(desk.notice(), /^It was too much here\. Not started/);
  desk.later(300);
  assert.deepEqual(kinds(desk.does({ kind: "start" })), [], "a double tap is one press");
  desk.later(900).sees({});
  assert.equal(stateWord(desk.state, desk.now), "READY");
  assert.deepEqual(kinds(desk.does({ kind: "start" })), ["start"]);
});

test("a first press that was long ago asks again", () => {
  const desk = after();
  desk.does({ kind: "start" });
  desk.later(9000).sees({});
  assert.deepEqual(kinds(desk.does({ kind: "start" })), []);
  desk.later(9000).sees({});
  assert.equal(stateWord(desk.state, desk.now), "HOLD");
});

test("said once more, it is asked once more; taken back, it is not asked", () => {
  const desk = after();
  desk.does({ kind: "start" });
  desk.does({ kind: "too_much" });
  desk.later(1500).sees({});
  assert.equal(stateWord(desk.state, desk.now), "HOLD");
  for (let said = tooMuchHere(desk.state); said !== null; said = tooMuchHere(desk.state)) desk.does({ kind: "take_back", entry: said });
  assert.equal(stateWord(desk.state, desk.now), "READY");
});

test("a calm place may be what steadies them, and the set that comes leaves it behind", () => {
  const desk = after();
  desk.sees({ plan: aPlan({ purpose: "calm_place" }) });
  assert.equal(stateWord(desk.state, desk.now), "READY");
  desk.sees({ plan: aPlan({}), set: aSet({ id: "set-2", number: 2, ended: "done" }) });
  assert.equal(tooMuchHere(desk.state), null);
});
