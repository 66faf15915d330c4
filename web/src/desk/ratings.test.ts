import assert from "node:assert/strict";
import { test } from "node:test";
import type { DeskView } from "../wire/DeskView";
import type { Entry } from "../wire/Entry";
import { freshDesk, type Action, type Command, type DeskState } from "./model";
import { step } from "./reducer";
import { aSet, aView } from "./sample.fixture";

/** State after a view, with a helper that acts and answers every save at once. */
function deskWith(view: DeskView): { state: () => DeskState; act: (action: Action, id: string, words?: string) => Command[]; saves: Entry[] } {
  let state = step(step(freshDesk(0), { kind: "line", open: true }, 0).state, { kind: "heard", message: { type: "view", ...view } }, 0).state;
  const saves: Entry[] = [];
  const act = (action: Action, id: string, words = ""): Command[] => {
    const done = step(state, { kind: "action", action, id, words }, 0);
    state = done.state;
    for (const command of done.commands) {
      if (command.kind !== "save") continue;
      saves.push(command.entry);
      state = step(state, { kind: "kept", kept: { id: command.entry.id, at: "2030-01-02T14:07:31Z" } }, 0).state;
    }
    return done.commands;
  };
  return { state: () => state, act, saves };
}
const afterSet = (): DeskView => aView({ set: aSet({ ended: "done" }) });

test("a rating is one key once armed, belongs to the last set and disarms", () => {
  const desk = deskWith(afterSet());
  desk.act({ kind: "arm", scale: "sud" }, "-");
  desk.act({ kind: "rate", value: 10 }, "a");
  assert.deepEqual(desk.saves, [
    { id: "a", set: "set-1", replaces: null, moment: "after_set", segment: null, from_client: false, value: { kind: "sud", value: 10 } },
  ]);
  assert.equal(desk.state().armed, null);
});

test("unarmed, a rating does nothing", () => {
  const desk = deskWith(afterSet());
  assert.deepEqual(desk.act({ kind: "rate", value: 5 }, "a"), []);
  assert.equal(desk.saves.length, 0);
});

test("VOC is 1 to 7: 0, 8 and 9 are asked about, nothing is kept and the scale stays armed", () => {
  // Shapiro 1989 (from memory) by way of a training manual: 1 completely false to 7 completely true.
  for (const value of [0, 8, 9]) {
    const desk = deskWith(afterSet());
    desk.act({ kind: "arm", scale: "voc" }, "-");
    desk.act({ kind: "rate", value }, "a");
    assert.equal(desk.saves.length, 0);
    assert.equal(desk.state().armed?.scale, "voc");
    assert.match(desk.state().notice?.words ?? "", new RegExp(`1 \\(completely false\\) to 7 \\(completely true\\), so ${value} is not`));
    desk.act({ kind: "rate", value: 7 }, "b");
    assert.deepEqual(desk.saves[0]?.value, { kind: "voc", value: 7 });
  }
});

test("every step of both scales is taken as typed", () => {
  // SUD 0 to 10: Wolpe 1990 as cited by Kim, Bae & Park 2008.
  for (const [scale, from, to] of [
    ["sud", 0, 10],
    ["voc", 1, 7],
  ] as const)
    for (let value = from; value <= to; value++) {
      const desk = deskWith(afterSet());
      desk.act({ kind: "arm", scale }, "-");
      desk.act({ kind: "rate", value }, "a");
      assert.deepEqual(desk.saves[0]?.value, { kind: scale, value });
    }
});

test("before any set a rating is the assessment's and belongs to no set; the moment can be changed", () => {
  const desk = deskWith(aView());
  desk.act({ kind: "arm", scale: "sud" }, "-");
  desk.act({ kind: "rate", value: 8 }, "a");
  assert.deepEqual(desk.saves[0], {
    id: "a",
    set: null,
    replaces: null,
    moment: "assessment",
    segment: null,
    from_client: false,
    value: { kind: "sud", value: 8 },
  });
  const later = deskWith(afterSet());
  later.act({ kind: "arm", scale: "sud" }, "-");
  later.act({ kind: "next_moment" }, "-");
  later.act({ kind: "rate", value: 3 }, "a");
  assert.equal(later.saves[0]?.moment, "back_at_target");
});

test("the same scale again for the same set and moment corrects the first, which is kept", () => {
  const desk = deskWith(afterSet());
  for (const [id, value] of [
    ["a", 5],
    ["b", 6],
  ] as const) {
    desk.act({ kind: "arm", scale: "sud" }, "-");
    desk.act({ kind: "rate", value }, id);
  }
  assert.equal(desk.saves[1]?.replaces, "a");
  assert.equal(desk.saves.length, 2);
});

test("words add, marks correct", () => {
  const desk = deskWith(afterSet());
  desk.act({ kind: "save_words" }, "a", "shoulders lower");
  desk.act({ kind: "save_words" }, "b", "warmer");
  desk.act({ kind: "mark", change: "same" }, "c");
  desk.act({ kind: "mark", change: "changing" }, "d");
  assert.deepEqual(
    desk.saves.map((entry) => entry.replaces),
    [null, null, null, "c"],
  );
});

test("saving words empties the field and gives the keys back; blank words save nothing", () => {
  const desk = deskWith(afterSet());
  const commands = desk.act({ kind: "save_words" }, "a", "  lighter  ");
  assert.deepEqual(desk.saves[0]?.value, { kind: "words", words: "lighter" });
  assert.deepEqual(commands.slice(1), [
    { kind: "fill_words", words: "" },
    { kind: "focus", on: "keys" },
  ]);
  desk.act({ kind: "save_words" }, "b", "   ");
  assert.equal(desk.saves.length, 1);
});

test("words belong to the set in which they were begun", () => {
  let state = step(step(freshDesk(0), { kind: "line", open: true }, 0).state, { kind: "heard", message: { type: "view", ...afterSet() } }, 0).state;
  state = step(state, { kind: "words_typed", empty: false }, 0).state;
  state = step(state, { kind: "heard", message: { type: "view", ...aView({ seq: 2, state: "running", set: aSet({ id: "set-2", number: 2 }) }) } }, 0).state;
  const done = step(state, { kind: "action", action: { kind: "save_words" }, id: "a", words: "late" }, 0);
  const saved = done.commands.find((command) => command.kind === "save");
  assert.equal(saved?.kind === "save" ? saved.entry.set : "none", "set-1");
});

test("taking back and putting back append, each pointing at the one before", () => {
  const desk = deskWith(afterSet());
  desk.act({ kind: "save_words" }, "a", "cold hands");
  desk.act({ kind: "take_back", entry: "a" }, "b");
  desk.act({ kind: "put_back", entry: "a" }, "c");
  assert.deepEqual(desk.saves.slice(1), [
    { id: "b", set: "set-1", replaces: "a", moment: "after_set", segment: null, from_client: false, value: { kind: "taken_back" } },
    { id: "c", set: "set-1", replaces: "b", moment: "after_set", segment: null, from_client: false, value: { kind: "words", words: "cold hands" } },
  ]);
});

test("a running set disarms a rating that was left armed", () => {
  const desk = deskWith(afterSet());
  desk.act({ kind: "arm", scale: "sud" }, "-");
  const next = step(desk.state(), { kind: "heard", message: { type: "view", ...aView({ seq: 2, state: "running", set: aSet({ id: "set-2" }) }) } }, 0);
  assert.equal(next.state.armed, null);
});

test("refused words come back into the field with their set", () => {
  let state = step(freshDesk(0), { kind: "heard", message: { type: "view", ...afterSet() } }, 0).state;
  state = step(state, { kind: "action", action: { kind: "save_words" }, id: "a", words: "odd" }, 0).state;
  state = step(state, { kind: "not_kept", id: "a", problem: { kind: "refused", words: "Remove the control character." } }, 0).state;
  const done = step(state, { kind: "action", action: { kind: "edit", entry: "a" }, id: "-", words: "" }, 0);
  assert.deepEqual(done.commands, [
    { kind: "fill_words", words: "odd" },
    { kind: "focus", on: "words" },
  ]);
  assert.equal(done.state.queue.length, 0);
  assert.equal(done.state.wordsFor, "set-1");
});
