import assert from "node:assert/strict";
import { nothing } from "../live/needs.fixture";
import { test } from "node:test";
import type { DeskView } from "../wire/DeskView";
import { Desk, kinds, running } from "./desk.fixture";
import { EMPTY_LOG, type Command } from "./model";
import { aSet, aShowing, aView } from "./sample.fixture";
import { stateWord, stripWords } from "./status";

test("an order carries the room's epoch and an id that counts up", () => {
  const desk = Desk.with(aView({ epoch: 7 }));
  assert.deepEqual(desk.does({ kind: "cannot_see" }), [{ kind: "send", message: { type: "order", epoch: 7, id: 1, order: { kind: "cannot_see" } } }]);
  assert.deepEqual(desk.does({ kind: "stop" }), [{ kind: "send", message: { type: "order", epoch: 7, id: 2, order: { kind: "stop" } } }]);
});

test("views: the latest (epoch, seq) wins, an older one is ignored", () => {
  const desk = Desk.with(aView({ epoch: 2, seq: 5 }));
  desk.event({ kind: "heard", message: { type: "view", ...running(), epoch: 2, seq: 4 } });
  assert.equal(desk.state.view?.state, "ready");
  desk.event({ kind: "heard", message: { type: "view", ...running(), epoch: 1, seq: 99 } });
  assert.equal(desk.state.view?.state, "ready");
  desk.event({ kind: "heard", message: { type: "view", ...running(), epoch: 3, seq: 1 } });
  assert.equal(desk.state.view?.state, "running");
});

test("Space starts, never while a set runs, eases or is being started", () => {
  assert.deepEqual(kinds(Desk.with(aView()).does({ kind: "start" })), ["start"]);
  for (const state of ["running", "easing", "starting"] as const) {
    const desk = Desk.with(aView({ state, set: aSet() }));
    assert.deepEqual(desk.does({ kind: "start" }), []);
    assert.equal(desk.notice(), "");
  }
});

test("a second Space before the answer sends nothing", () => {
  const desk = Desk.with(aView());
  desk.does({ kind: "start" });
  assert.deepEqual(desk.does({ kind: "start" }), []);
});

test("no start within a second of the clinician's stop", () => {
  const desk = Desk.with(running());
  desk.later(5000).does({ kind: "stop" });
  desk.sees({ state: "stopped" });
  assert.deepEqual(desk.later(999).does({ kind: "start" }), []);
  assert.match(desk.notice(), /within a second/);
  assert.deepEqual(kinds(desk.later(1).does({ kind: "start" })), ["start"]);
});

test("no start within a second of the client's stop or a lost link", () => {
  for (const state of ["stopped_by_client", "link_lost"] as const) {
    const desk = Desk.with(running());
    desk.later(3000).sees({ state });
    assert.deepEqual(desk.later(999).does({ kind: "start" }), []);
    assert.deepEqual(kinds(desk.later(1).does({ kind: "start" })), ["start"]);
  }
});

test("a start that something is needed for is answered in words, not sent", () => {
  const cases: [Partial<DeskView>, RegExp][] = [
    [{ needs: { ...nothing, sight: true } }, /see and hear/],
    [{ needs: { ...nothing, client_ready: true } }, /tap "I am ready"/],
    [{ needs: { ...nothing, stage: true } }, /page is not heard/],
    [{ needs: { ...nothing, check: true } }, /asks about their device/],
    [{ needs: { ...nothing, pause: true } }, /within a second of a stop/],
    [{ in_control: false }, /view-only/],
    [{ needs: { ...nothing, desk: true } }, /Your line is slow/],
    [{ needs: { ...nothing, rest: true } }, /not said that it rests/],
    [{ needs: { ...nothing, motion: true } }, /less motion/],
    [{ needs: { ...nothing, sound: true } }, /test sound/],
    [{ refused: { kind: "eyes_locked" } }, /eyes are locked/],
    [{ refused: { kind: "too_wide", widest: 1.5 } }, /widest that fits is 1\.5°/],
    [{ state: "waiting" }, /not been admitted/],
    [{ state: "at_the_door" }, /not been admitted/],
    [{ state: "left" }, /has left/],
    [{ state: "closed" }, /closed/],
  ];
  for (const [changes, words] of cases) {
    const desk = Desk.with(aView(changes));
    assert.deepEqual(desk.does({ kind: "start" }), []);
    assert.match(desk.notice(), words);
  }
});

test("a stop is always sent, whatever the state says", () => {
  for (const state of ["waiting", "ready", "starting", "running", "easing", "stopped", "link_lost"] as const) {
    assert.deepEqual(kinds(Desk.with(aView({ state })).does({ kind: "stop" })), ["stop"]);
  }
  assert.deepEqual(kinds(Desk.with(aView({ in_control: false })).does({ kind: "stop" })), ["stop"]);
});

test("a held Escape sends four stops a second at most, and goes on while none is answered", () => {
  const desk = Desk.with(running());
  let sent = 0;
  for (let i = 0; i < 33; i++) sent += desk.later(30).does({ kind: "stop" }).length;
  assert.ok(sent >= 3 && sent <= 4, `${sent} sent in a second`);
});

test("a stop without a line waits and goes first thing, with the new epoch and the same id", () => {
  const desk = Desk.with(aView({ state: "running", set: aSet(), epoch: 1 }));
  desk.event({ kind: "line", open: false });
  assert.deepEqual(desk.does({ kind: "stop" }), []);
  assert.equal(desk.state.pending.length, 1);
  desk.event({ kind: "line", open: true });
  const commands = desk.event({ kind: "heard", message: { type: "view", ...running(), epoch: 2, seq: 1 } });
  assert.deepEqual(commands[0], { kind: "send", message: { type: "order", epoch: 2, id: 1, order: { kind: "stop" } } });
});

test("the order that rests a set for want of a picture outlives a break of the line, and is no news where nothing runs any more", () => {
  const desk = Desk.with(running());
  desk.event({ kind: "line", open: false });
  assert.deepEqual(desk.does({ kind: "unseen", missing: "picture" }), []);
  desk.event({ kind: "line", open: true });
  const commands = desk.event({ kind: "heard", message: { type: "view", ...running(), seq: 9 } });
  assert.deepEqual(kinds(commands), ["unseen"]);
  desk.answers(1, { kind: "wrong_state" });
  assert.deepEqual([desk.notice(), desk.state.pending], ["", []]);
});

test("what a room that is gone had shown last is handed back to each one after it: the next may go as well", () => {
  const stopped = aSet({ ended: "stopped_by_client" });
  const desk = Desk.with(aView({ state: "stopped_by_client", set: stopped, epoch: 1 }));
  const again = (epoch: number): Command[] => {
    desk.event({ kind: "line", open: false });
    desk.event({ kind: "line", open: true });
    return desk.event({ kind: "heard", message: { type: "view", ...aView({ state: "hold", epoch, seq: 9 }) } });
  };
  assert.deepEqual(again(1), [], "the same room");
  desk.sees({ set: stopped, epoch: 1, seq: 10 });
  const back = { kind: "send", message: { type: "hand_back", set: stopped } };
  assert.deepEqual(again(2), [back]);
  assert.deepEqual(again(2), [back], "a line that broke may have lost it; the record takes it once");
  assert.deepEqual(again(3), [back], "the second may not have written it down either");
  const later = Array.from({ length: 9 }, (_, i) => aSet({ id: `later ${i}` }));
  for (const [i, set] of later.entries()) {
    desk.sees({ set, epoch: 3 + i, seq: 10 });
    again(4 + i);
  }
  assert.deepEqual(
    again(99).map((command) => (command as Extract<Command, { kind: "send" }>).message),
    later.slice(1).map((set) => ({ type: "hand_back", set })),
    "the latest eight",
  );
});

test("a start that broke with the line is never sent again, and said so", () => {
  const desk = Desk.with(aView());
  desk.does({ kind: "start" });
  desk.event({ kind: "line", open: false });
  desk.event({ kind: "line", open: true });
  assert.deepEqual(desk.sees({}), []);
  assert.equal(desk.state.pending.length, 0);
  assert.match(desk.notice(), /^Start: unanswered/);
});

test("without a line a start or a change is refused on the spot", () => {
  const desk = Desk.with(aView());
  desk.event({ kind: "line", open: false });
  for (const action of [{ kind: "start" }, { kind: "take_control" }, { kind: "step", setting: "rate", direction: 1 }] as const) {
    assert.deepEqual(desk.does(action), []);
    assert.match(desk.notice(), /no connection/);
  }
});

test("an open line without a view since does not count as connected", () => {
  const desk = Desk.with(aView());
  desk.event({ kind: "line", open: false });
  desk.event({ kind: "line", open: true });
  assert.deepEqual(desk.does({ kind: "start" }), []);
});

test("refusals come in words; a stop that the room has forgotten stays quiet", () => {
  const desk = Desk.with(aView());
  desk.does({ kind: "stop" });
  desk.answers(1, { kind: "wrong_state" });
  assert.equal(desk.notice(), "");
  desk.later(2000).does({ kind: "start" });
  desk.answers(2, { kind: "not_saved" });
  assert.match(desk.notice(), /^Start: the record could not be written/);
  desk.does({ kind: "cannot_see" });
  desk.answers(3, { kind: "old_epoch" });
  assert.match(desk.notice(), /restarted/);
});

test("an order is pending until its own answer, and an unknown answer changes nothing", () => {
  const desk = Desk.with(running());
  desk.does({ kind: "end" });
  desk.answers(99);
  assert.equal(desk.state.pending.length, 1);
  desk.answers(1);
  assert.equal(desk.state.pending.length, 0);
});

test("end and extend want a set that runs", () => {
  for (const kind of ["end", "extend"] as const) {
    assert.deepEqual(kinds(Desk.with(running()).does({ kind })), [kind]);
    assert.deepEqual(Desk.with(aView()).does({ kind }), []);
  }
});

test("I can see and hear them is sent when it is needed; I can't see them always", () => {
  const needs = { ...nothing, sight: true };
  assert.deepEqual(kinds(Desk.with(aView({ needs })).does({ kind: "sight" })), ["sight"]);
  const said = Desk.with(aView());
  assert.deepEqual(said.does({ kind: "sight" }), []);
  assert.match(said.notice(), /Said already/);
  assert.deepEqual(kinds(said.does({ kind: "cannot_see" })), ["cannot_see"]);
});

test("the join panel opens while the client waits and gives way to the log afterwards", () => {
  const desk = Desk.with(aView({ state: "waiting", seat: "waiting" }));
  assert.equal(desk.state.lower, "join");
  desk.sees({ state: "ready", seat: "admitted" });
  assert.equal(desk.state.lower, "log");
});

test("the lower panels toggle, and the emergency card needs no server", () => {
  const desk = new Desk();
  desk.does({ kind: "lower", shown: "card" });
  assert.equal(desk.state.lower, "card");
  desk.does({ kind: "lower", shown: "card" });
  assert.equal(desk.state.lower, "log");
});

test("after a set's end the server's log is read once the evidence had time to arrive", () => {
  const desk = Desk.with(aView());
  desk.event({ kind: "tick" });
  desk.event({ kind: "log", log: EMPTY_LOG });
  desk.sees({ state: "running", set: aSet() });
  desk.event({ kind: "heard", message: { type: "showing", ...aShowing({ phase: 23.99 }) } });
  desk.sees({ state: "ready", set: aSet({ ended: "done" }) });
  assert.deepEqual(desk.event({ kind: "tick" }), []);
  assert.deepEqual(desk.later(1500).event({ kind: "tick" }), [{ kind: "load_log" }]);
  assert.equal(desk.state.log.sets[0]?.cycles, 23.99);
});

test("the log is asked for at the start and again after a failure", () => {
  const desk = new Desk();
  assert.deepEqual(desk.event({ kind: "tick" }), [{ kind: "load_log" }]);
  assert.deepEqual(desk.event({ kind: "tick" }), []);
  desk.event({ kind: "log_failed" });
  assert.deepEqual(desk.later(3000).event({ kind: "tick" }), [{ kind: "load_log" }]);
});

test("a desk whose session was closed in another window while it was away says so, and does not ask for a sign-in", () => {
  const desk = Desk.with(aView());
  desk.event({ kind: "line", open: false });
  desk.event({ kind: "line", open: false, over: true });
  assert.equal(desk.state.view?.state, "closed");
  assert.equal(desk.state.sentAway, null);
  assert.equal(stateWord(desk.state, 60_000), "CLOSED");
  assert.match(stripWords(desk.state, 60_000, null).join(" "), /session is closed/);
});

test("marks, ratings and words are seen while they are given: a panel over them gives way, and one beside them stays", () => {
  for (const action of [{ kind: "arm", scale: "sud" }, { kind: "to_words" }, { kind: "mark", change: "same" }] as const) {
    const narrow = Desk.with(aView());
    narrow.does({ kind: "lower", shown: "card" });
    narrow.does(action);
    assert.equal(narrow.state.lower, "log", action.kind);
    const wide = Desk.with(aView());
    wide.event({ kind: "window", wide: true });
    wide.does({ kind: "lower", shown: "keys" });
    wide.does(action);
    assert.equal(wide.state.lower, "keys", action.kind);
  }
});

test("a number without a scale asks which, and writes nothing", () => {
  const desk = Desk.with(aView());
  assert.deepEqual(desk.does({ kind: "rate", value: 5 }), []);
  assert.match(desk.notice(), /^Which scale\?/);
});

test("one line of the log is open at a time, and name and place are hidden until the key is pressed again", () => {
  const desk = Desk.with(aView());
  desk.does({ kind: "open_row", row: "set-1" });
  desk.does({ kind: "open_row", row: "" });
  assert.equal(desk.state.openRow, "");
  desk.does({ kind: "open_row", row: "" });
  assert.equal(desk.state.openRow, null);
  desk.does({ kind: "toggle_private" });
  assert.equal(desk.state.private, true);
  desk.does({ kind: "toggle_private" });
  assert.equal(desk.state.private, false);
});
