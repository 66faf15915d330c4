// What the client's page makes of a system that asks for less movement.
import assert from "node:assert/strict";
import { test } from "node:test";
import type { Step } from "./check";
import { type Event, opened } from "./machine";
import { open, plain, plays, ready, run, running, seen, sent, setView, view } from "./machine.fixture";
import { pageOf } from "./screen";

test("who passed over the check, or had done it, is asked about movement, and about sound when no dot is wanted", () => {
  const answered: Event = { type: "answered", step: "motion", motion: "welcome" };
  const passed = run([{ type: "skip-all" }], opened({ reducedMotion: true, handheld: false, vibrates: false, wakeLock: true, call: false, fullScreen: true }));
  assert.equal(passed.state.check, "motion");
  assert.equal(run([answered], passed.state).state.check, undefined);
  const declined = run([{ ...answered, motion: "declined" }], passed.state);
  assert.equal(declined.state.check, "sound");
  assert.equal(run([{ type: "answered", step: "sound" }], declined.state).state.check, undefined);
  const done = run([...ready, { type: "reduced-motion" }]);
  assert.equal(done.state.check, "motion");
  assert.equal(run([answered], done.state).state.check, undefined);
});

test("where less movement is asked for, skipping all leads to the question, and No is a standing Stop", () => {
  const less = opened({ ...plain, reducedMotion: true });
  const asked = run([open, { type: "skip-all" }, seen(view("ready"))], less);
  assert.deepEqual(pageOf(asked.state), { name: "check", step: "motion", place: undefined, back: true, given: false });
  assert.deepEqual(plays(run([seen(view("running", { set: setView("a") }))], asked.state).all), []);

  const no = run(
    [
      { type: "answered", step: "motion", motion: "declined" },
      { type: "answered", step: "sound" },
    ],
    asked.state,
  );
  assert.equal(pageOf(no.state).name, "ready-tones");
  const eyes = run([seen(view("running", { set: setView("a") }))], no.state);
  assert.deepEqual(plays(eyes.all), []);
  assert.deepEqual(sent(eyes.all), ["stop"]);
  const ears = setView("b");
  ears.plan = { ...ears.plan, channels: { eyes: false, ears: true, hands: false } };
  assert.deepEqual(plays(run([seen(view("running", { set: ears }))], no.state).all), ["b"]);

  const yes = run(
    [{ type: "answered", step: "motion", motion: "welcome" }, { type: "answered", step: "sound" }, seen(view("running", { set: setView("c") }))],
    asked.state,
  );
  assert.deepEqual(plays(yes.all), ["c"]);
});

test("a wish for less movement that comes up during a set stops it and asks", () => {
  const { last, state } = run([...running(), { type: "reduced-motion" }]);
  assert.deepEqual(last[0], { do: "cut", ending: "stopped_by_client" });
  assert.equal(state.motion, "unasked");
});

test("a wish for less movement is asked about at every point of the check, and no dot moves before the answer", () => {
  const at = (...done: Step[]) => run([open, ...done.map((step): Event => ({ type: "answered", step })), { type: "reduced-motion" }]).state;
  assert.equal(at("start", "settle").check, "card");
  assert.equal(at("start", "settle", "card", "distance").check, "motion");
  const later = run([{ type: "answered", step: "distance" }], at("start", "settle", "card")).state;
  assert.equal(later.check, "motion");
  const sides = run([...ready, seen(view("ready", { sides_asked: 1 })), { type: "reduced-motion" }]).state;
  assert.equal(sides.check, "motion");
  for (const state of [later, sides]) assert.deepEqual(plays(run([seen(view("running", { set: setView("a") }))], state).all), []);
});
