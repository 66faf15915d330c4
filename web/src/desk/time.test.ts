import assert from "node:assert/strict";
import { test } from "node:test";
import type { DeskView } from "../wire/DeskView";
import { Desk, deskWith } from "./desk.fixture";
import { lines } from "./opening";
import { step } from "./reducer";
import { aView } from "./sample.fixture";
import { appointment, elapsedWords, timeWords } from "./time";

const MINUTE = 60_000;
const at = (desk: Desk, minutes: number): [string, string | null] => [elapsedWords(desk.state, minutes * MINUTE), timeWords(desk.state, minutes * MINUTE)];

// Fifty and ninety minutes both occur (clinical reference 1.7, source 20); when reprocessing must end is worked out before it begins.
test("elapsed and remaining are in sight, and ten, five and no minutes are said", () => {
  const desk = Desk.with(aView());
  assert.deepEqual(at(desk, 0), ["0 min in, closing in 40", null]);
  assert.deepEqual(at(desk, 29.5), ["29 min in, closing in 11", null]);
  assert.deepEqual(at(desk, 30), ["30 min in, closing in 10", "Ten minutes until closing begins."]);
  assert.deepEqual(at(desk, 32), ["32 min in, closing in 8", null]);
  assert.deepEqual(at(desk, 35.5), ["35 min in, closing in 5", "Five minutes until closing begins."]);
  assert.deepEqual(at(desk, 40), ["40 min in, closing", "It is time to begin closing."]);
  assert.deepEqual(at(desk, 70)[1], "It is time to begin closing.");
});

test("the length is said by one digit, and closing keeps its part of it", () => {
  const desk = Desk.with(aView());
  const press = (value: number): void => {
    if (desk.state.opening.chosen !== "time") desk.does({ kind: "choose", matter: "time" });
    desk.does({ kind: "opening_digit", value });
  };
  press(2);
  press(3);
  press(5);
  assert.deepEqual(appointment(desk.state), { minutes: 95, reserve: 15 });
  assert.equal(lines(desk.state).find((line) => line.matter === "time")?.said, "95 min, the last 15 for closing");
  assert.deepEqual(at(desk, 70), ["70 min in, closing in 10", "Ten minutes until closing begins."]);
  for (let presses = 0; presses < 30; presses++) press(4);
  assert.deepEqual(appointment(desk.state), { minutes: 20, reserve: 15 });
});

test("in a session that is closed nothing is left of it", () => {
  assert.deepEqual(at(Desk.with(aView({ state: "closed" })), 12)[0], "not begun");
  const desk = Desk.with(aView());
  desk.sees({ state: "closed" });
  assert.equal(elapsedWords(desk.state, 12 * MINUTE), "");
});

test("before the client is in nothing is counted", () => {
  const desk = Desk.with(aView({ state: "waiting", seat: "empty" }));
  assert.deepEqual(at(desk, 90), ["not begun", null]);
});

test("how long the client has been in counts from the first time they were let in", () => {
  const waiting = deskWith(aView({ state: "waiting", seat: "empty" }), 500);
  assert.equal(elapsedWords(waiting, 500), "not begun");
  const view = (changes: Partial<DeskView>) => ({ kind: "heard", message: { type: "view", ...aView(changes) } }) as const;
  const admitted = step(waiting, view({ seq: 2, state: "hold" }), 1000).state;
  const back = step(step(admitted, view({ seq: 3, state: "left" }), 100_000).state, view({ seq: 4, state: "hold" }), 200_000).state;
  assert.deepEqual([elapsedWords(admitted, 60_999), elapsedWords(back, 961_000)], ["0 min in, closing in 40", "16 min in, closing in 24"]);
});
