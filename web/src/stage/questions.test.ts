// The way through the check: on, back and past, and what stands of the answers.
import assert from "node:assert/strict";
import { test } from "node:test";
import { generator } from "../live/random.fixture";
import { type Abilities, type Step, stepsFor } from "./check";
import { opened, type State } from "./machine";
import { open, plain, plays, run, seen, setView, view } from "./machine.fixture";
import { pageOf, type Question } from "./screen";

const less: Abilities = { ...plain, reducedMotion: true, wakeLock: true };
const answered = (step: Step) => ({ type: "answered", step }) as const;
const skipped = (step: Step) => ({ type: "skipped", step }) as const;
const back = (step: Step) => ({ type: "back", step }) as const;

/** The page of the check that stands; fails when another does. */
function asked(state: State): Question {
  const page = pageOf(state);
  assert.equal(page.name, "check");
  return page as Question;
}

test("the page says where one is among the questions that this device is asked", () => {
  let state = opened(less);
  assert.equal(asked(state).place, undefined, "the first page asks nothing");
  const places: string[] = [];
  for (const step of stepsFor(less).slice(0, -1)) {
    ({ state } = run([answered(step)], state));
    const { place } = asked(state);
    places.push(`${place?.at} of ${place?.of}`);
  }
  assert.deepEqual(places, ["1 of 6", "2 of 6", "3 of 6", "4 of 6", "5 of 6", "6 of 6"]);
});

test("a question that stands alone has no number: an answer may add one", () => {
  const passed = run([{ type: "skip-all" }], opened(less)).state;
  assert.deepEqual([asked(passed).step, asked(passed).place], ["motion", undefined]);
  const sides = run([open, { type: "skip-all" }, seen(view("ready")), seen(view("ready", { sides_asked: 1 }))]).state;
  assert.deepEqual(asked(sides), { name: "check", step: "sides", place: undefined, back: false, given: false });
});

test("the number follows a system that begins to ask for less movement", () => {
  const card = run([answered("start"), answered("settle")], opened(plain)).state;
  assert.deepEqual(asked(card).place, { at: 2, of: 4 });
  assert.deepEqual(asked(run([{ type: "reduced-motion" }], card).state).place, { at: 2, of: 5 });
});

test("Back leads to the question before, whether it was answered or skipped, and not from the first page", () => {
  const sound = run([answered("start"), skipped("settle"), answered("card"), skipped("distance")], opened(plain)).state;
  assert.equal(asked(sound).step, "sound");
  const shown: [Step, boolean, boolean][] = [];
  let state = sound;
  for (const step of ["sound", "distance", "card", "settle", "start"] as const) {
    ({ state } = run([back(step)], state));
    const page = asked(state);
    shown.push([page.step, page.back, page.given]);
  }
  assert.deepEqual(shown, [
    ["distance", true, false],
    ["card", true, true],
    ["settle", true, false],
    ["start", false, true],
    ["start", false, true],
  ]);
});

test("Back after skipping all asks everything again, and a question that came by itself has no way back", () => {
  const passed = run([{ type: "skip-all" }], opened(less)).state;
  const first = run([back("motion")], passed).state;
  assert.equal(asked(first).step, "start");
  assert.equal(asked(run([answered("start")], first).state).step, "settle");
  const later = run([{ type: "skip-all" }, { type: "reduced-motion" }], opened(plain)).state;
  assert.deepEqual([asked(later).step, asked(later).back], ["motion", false]);
  assert.deepEqual(run([back("motion")], later).state, later);
});

test("a tap that comes late belongs to a question that is gone", () => {
  const card = run([answered("start"), answered("settle")], opened(plain)).state;
  for (const late of [answered("settle"), skipped("settle"), back("settle")]) assert.equal(asked(run([late], card).state).step, "card");
});

test("skipping the question about movement shows no dot, goes on to the sound, and can be taken back", () => {
  for (const way of [[{ type: "skip-all" }], [answered("start"), skipped("settle"), skipped("card"), skipped("distance")]] as const) {
    const sound = run([open, seen(view("ready")), ...way, skipped("motion")], opened(less)).state;
    assert.deepEqual([asked(sound).step, sound.motion], ["sound", "declined"]);
    const { all, state } = run([skipped("sound"), skipped("awake"), seen(view("running", { set: setView("a") }))], sound);
    assert.deepEqual(plays(all), []);
    assert.equal(state.halt, "stop");
    const yes = run([back("sound"), { type: "answered", step: "motion", motion: "welcome" }], sound).state;
    assert.equal(yes.motion, "welcome");
  }
});

test("skipping a question that was answered leaves the answer", () => {
  const to = [answered("start"), answered("settle"), answered("card"), answered("distance")] as const;
  const state = run([...to, { type: "answered", step: "motion", motion: "welcome" }, back("sound"), skipped("motion")], opened(less)).state;
  assert.deepEqual([state.motion, state.given.has("motion")], ["welcome", true]);
  const again = run([back("sound"), { type: "reduced-motion" }], state).state;
  assert.deepEqual([again.motion, asked(again).given], ["unasked", false], "asked anew by the system");
});

test("whatever way is taken: the check ends, and no dot moves without a Yes to it where less movement is asked for", () => {
  const random = generator(5);
  const pick = (n: number) => Math.floor(random() * n);
  let ended = 0;
  for (let round = 0; round < 1_000; round++) {
    let state = run([open, seen(view("ready"))], opened(pick(2) === 0 ? less : { ...plain, vibrates: true })).state;
    let yes = state.motion === "welcome";
    for (let turn = 0; turn < 60 && state.check !== undefined; turn++) {
      const step = state.check;
      const motion = step === "motion" && pick(2) === 0;
      const events = [answered(step), skipped(step), skipped(step), back(step), { type: "skip-all" }, { type: "reduced-motion" }] as const;
      const event = motion ? ({ type: "answered", step, motion: "welcome" } as const) : events[pick(turn < 40 ? 6 : 3)]!;
      // Only a page with the two answers is answered so, never without one.
      if (event.type === "answered" && step === "motion" && !motion) continue;
      if (event.type === "reduced-motion") yes = false;
      if (motion) yes = true;
      ({ state } = run([event], state));
      assert.ok(state.check === undefined ? state.trail.length === 0 : !state.trail.includes(state.check), "a way that goes round");
    }
    if (state.check !== undefined) continue;
    ended++;
    assert.notEqual(state.motion, "unasked", "left unasked");
    assert.equal(plays(run([seen(view("running", { set: setView("a") }))], state).all).length, yes ? 1 : 0);
  }
  assert.ok(ended > 900, `${ended} checks came to their end`);
});
