import assert from "node:assert/strict";
import { test } from "node:test";
import { nothing } from "../live/needs.fixture";
import type { DeskView } from "../wire/DeskView";
import { bandStops, holdWords, isUnknown, keysOff, limitWords, spokenWords, stateWord, stripWords, titleWords, usualWords } from "./status";
import { freshDesk, type DeskState } from "./model";
import { deskWith, running } from "./desk.fixture";
import { step } from "./reducer";
import { aSet, aView } from "./sample.fixture";
import { RECORD_WAITS } from "./words";

test("every state of the room has its word", () => {
  const words: [DeskView["state"], string][] = [
    ["waiting", "WAITING"],
    ["at_the_door", "AT THE DOOR"],
    ["left", "CLIENT HAS LEFT"],
    ["hold", "HOLD"],
    ["ready", "READY"],
    ["starting", "STARTING"],
    ["running", "RUNNING"],
    ["easing", "EASING"],
    ["stopped_by_client", "STOPPED BY CLIENT"],
    ["stopped", "STOPPED"],
    ["link_lost", "LINK LOST"],
    ["closed", "CLOSED"],
  ];
  for (const [state, word] of words) assert.equal(stateWord(deskWith(aView({ state })), 0), word);
});

test("a record that takes nothing more, and a clock that was set, are said", () => {
  const words = (changes: Partial<DeskView>): string => stripWords(deskWith(aView(changes)), 0, null).join(" ");
  assert.match(words({ record_refuses: true }), /Nothing gets into the record any more/);
  assert.match(words({ clock_set: 90000 }), /set forward by 25 h: times in this record may be wrong/);
  assert.match(words({ clock_set: -600 }), /set back by 10 min/);
  assert.doesNotMatch(words({}), /record/);
});

test("silence of the server makes a live room unknown within 3 s, and a broken line does at once", () => {
  const state = deskWith(running());
  assert.equal(stateWord(state, 1500), "RUNNING");
  assert.equal(stateWord(state, 1501), "UNKNOWN");
  assert.equal(stateWord(step(state, { kind: "line", open: false }, 10).state, 11), "UNKNOWN");
  const heard = step(state, { kind: "heard", message: { type: "beat", id: 3, sent: 0, echo: null, desk_silent: null, desk_trip: 0 } }, 1400).state;
  assert.equal(stateWord(heard, 2800), "RUNNING");
});

test("before the client is admitted two beats of 5 s may be missed before the state is unknown", () => {
  const state = deskWith(aView({ state: "waiting" }));
  assert.ok(!isUnknown(state, 10999));
  assert.ok(isUnknown(state, 11001));
});

test("before anything was heard the desk connects, and says unknown after 3 s", () => {
  assert.equal(stateWord(freshDesk(0), 3000), "CONNECTING");
  assert.equal(stateWord(freshDesk(0), 3001), "UNKNOWN");
});

test("READY is never kinder than the key: what this page would not send is HOLD, what is on its way STARTING", () => {
  const ready = deskWith(aView());
  const act = (state: DeskState, kind: "start" | "stop", now: number) => step(state, { kind: "action", action: { kind }, id: "-", words: "" }, now).state;
  const stopped = act(ready, "stop", 100);
  assert.deepEqual([stateWord(stopped, 1099), holdWords(stopped, 1099), stateWord(stopped, 1100)], ["HOLD", "needs a second", "READY"]);
  assert.equal(stateWord(act(ready, "start", 0), 0), "STARTING");
  assert.equal(stateWord(deskWith(aView({ needs: { ...nothing, sight: true } })), 0), "HOLD");
  assert.equal(stateWord(deskWith(aView({ in_control: false })), 0), "HOLD");
  // The line is back, and what stands here is still of the old one.
  const back = step(step(ready, { kind: "line", open: false }, 0).state, { kind: "line", open: true }, 10).state;
  assert.equal(stateWord(back, 10), "UNKNOWN");
});

test("beside HOLD stands what is missing, and the strip says it in full", () => {
  const held = (changes: Partial<DeskView>) => deskWith(aView({ state: "hold", ...changes }));
  const both = held({ needs: { ...nothing, sight: true, client_ready: true }, refused: { kind: "needs" } });
  assert.equal(holdWords(both, 0), "needs client's Ready, your sight (i)");
  assert.deepEqual(stripWords(both, 0, null), ['The client must tap "I am ready".', "Say that you can see and hear them (i)."]);
  assert.equal(holdWords(held({ refused: { kind: "eyes_locked" } }), 0), "needs tones or taps (n)");
  assert.match(stripWords(held({ refused: { kind: "eyes_locked" } }), 0, null).join(), /eyes are locked/);
  assert.equal(holdWords(held({ in_control: false, refused: { kind: "not_in_control" } }), 0), "needs control");
  // Each need has both.
  for (const need of Object.keys(nothing) as (keyof typeof nothing)[]) {
    const state = held({ needs: { ...nothing, [need]: true }, refused: { kind: "needs" } });
    assert.match(holdWords(state, 0), /^needs [^,]+$/);
    assert.equal(stripWords(state, 0, null).length, need === "pause" ? 0 : 1);
  }
  assert.equal(holdWords(deskWith(aView()), 0), "");
});

test("every state is in the tab's title, and somebody at the door beside it", () => {
  assert.equal(titleWords(deskWith(running()), 0, "Desk, session 3"), "RUNNING - Desk, session 3");
  assert.equal(titleWords(deskWith(aView({ state: "at_the_door", seat: "waiting" })), 0, "Desk"), "AT THE DOOR - Desk");
  assert.equal(titleWords(deskWith(aView({ seat_asked_for: true })), 0, "Desk"), "AT THE DOOR, READY - Desk");
  assert.equal(titleWords(deskWith(aView({ state: "closed", seat_asked_for: true })), 0, "Desk"), "CLOSED - Desk");
});

test("a closed session keeps nothing that looks alive, and no press is left without its end", () => {
  const stop = { kind: "action", action: { kind: "stop" }, id: "-", words: "" } as const;
  const pressed = step(step(deskWith(running()), { kind: "action", action: { kind: "arm", scale: "sud" }, id: "-", words: "" }, 0).state, stop, 0).state;
  const byView = step(pressed, { kind: "heard", message: { type: "view", ...aView({ seq: 2, state: "closed" }) } }, 10).state;
  const whileAway = step(step(pressed, { kind: "line", open: false }, 5).state, { kind: "line", open: false, over: true }, 10).state;
  for (const closed of [byView, whileAway]) {
    assert.deepEqual([closed.pending, closed.armed], [[], null]);
    for (const kind of ["stop", "start", "end", "extend", "sight", "cannot_see", "take_control", "toggle_open", "ask_sides"] as const) {
      const { state, commands } = step(closed, { kind: "action", action: { kind }, id: "-", words: "" }, 20);
      assert.deepEqual([commands, state.pending], [[], []], kind);
    }
    assert.equal(step(closed, { kind: "action", action: { kind: "arm", scale: "sud" }, id: "-", words: "" }, 20).state.armed, null);
    assert.deepEqual(stripWords(closed, 10_000, null), ["The session is closed."]);
  }
});

test("an order without an answer says so with its seconds from 1 s on", () => {
  let state = deskWith(running());
  state = step(state, { kind: "action", action: { kind: "end" }, id: "-", words: "" }, 0).state;
  assert.deepEqual(stripWords(state, 999, null), []);
  assert.deepEqual(stripWords(state, 1000, null), ["End: not confirmed, 1 s"]);
  assert.deepEqual(stripWords(state, 3700, null), ["End: not confirmed, 3 s"]);
});

test("a stop speaks at once, and never claims to be sent without a line", () => {
  const stop = { kind: "action", action: { kind: "stop" }, id: "-", words: "" } as const;
  assert.deepEqual(stripWords(step(deskWith(running()), stop, 0).state, 0, null), ["Stop sent, not confirmed."]);
  const cut = step(deskWith(running()), { kind: "line", open: false }, 0).state;
  assert.match(stripWords(step(cut, stop, 0).state, 0, null)[0] ?? "", /^Stop: not sent, no connection/);
});

test("the answer to a start that something is missing for says it once, and no longer than it is missing", () => {
  const needs = { ...nothing, sight: true, check: true };
  const pressed = step(deskWith(aView({ needs })), { kind: "action", action: { kind: "start" }, id: "1", words: "" }, 0).state;
  assert.deepEqual(stripWords(pressed, 0, null), ["Not started. The client's page asks about their device. Say that you can see and hear them (i)."]);
  const over = { ...pressed, view: aView({ needs: { ...needs, check: false } }) };
  assert.deepEqual(stripWords(over, 0, null), ["Say that you can see and hear them (i)."]);
});

test("what is needed is said in words while nothing runs", () => {
  const needs = { ...nothing, sight: true, client_ready: true, pause: true };
  assert.deepEqual(stripWords(deskWith(aView({ needs })), 0, null), ['The client must tap "I am ready".', "Say that you can see and hear them (i)."]);
  assert.deepEqual(stripWords(deskWith(aView({ state: "running", set: aSet(), needs })), 0, null), []);
});

test("KEYS OFF, and the band that stops while they are off and just after the click brings them back", () => {
  const away = step(deskWith(running()), { kind: "page_focus", here: false }, 1000).state;
  assert.ok(keysOff(away) && bandStops(away, 60000));
  const back = step(away, { kind: "page_focus", here: true }, 70000).state;
  assert.ok(!keysOff(back));
  assert.ok(bandStops(back, 70100));
  assert.ok(!bandStops(back, 70600));
});

test("the hard limit is told before it comes", () => {
  const state = deskWith(aView({ state: "running", set: aSet(), hard_end: 100000 }));
  assert.equal(limitWords(state, 80000), null);
  assert.equal(limitWords(state, 90000), "The set ends at its limit in 10 s.");
  assert.equal(limitWords(state, null), null);
});

test("where nothing is to be said the keys at hand are, for the eye alone", () => {
  assert.deepEqual(usualWords(deskWith(aView()), 0), ["Space starts set 1."]);
  assert.deepEqual(usualWords(deskWith(aView({ state: "running", set: aSet() })), 0), ["e ends at the next turn, Esc stops at once."]);
  assert.deepEqual(usualWords(deskWith(aView({ state: "hold" })), 0), []);
  const away = step(deskWith(aView()), { kind: "page_focus", here: false }, 0).state;
  assert.deepEqual(usualWords(away, 0), [], "no key is named that does nothing");
});

test("signed out and view-only are said in the strip", () => {
  assert.ok(stripWords(deskWith(aView({ in_control: false })), 0, null).some((words) => words.startsWith("View only")));
  let state = deskWith(aView({ set: aSet({ ended: "done" }) }));
  state = step(state, { kind: "action", action: { kind: "save_words" }, id: "a", words: "x" }, 0).state;
  state = step(state, { kind: "not_kept", id: "a", problem: { kind: "signed_out" } }, 0).state;
  assert.match(stripWords(state, 0, null)[0] ?? "", /sign in again/);
});

test("while the record does not answer the strip says what becomes of entries, before anything is entered", () => {
  assert.deepEqual(stripWords(deskWith(aView({ record_waits: true })), 0, null), [RECORD_WAITS]);
  assert.equal(stripWords(deskWith(aView({ record_waits: true, state: "running", set: aSet() })), 0, null)[0], RECORD_WAITS);
  assert.deepEqual(stripWords(deskWith(aView()), 0, null), []);
});

test("a reader hears each message once: seconds that count are left out, and what presses comes first", () => {
  const state = step(deskWith(running()), { kind: "action", action: { kind: "end" }, id: "-", words: "" }, 0).state;
  const spoken = (now: number): string => spokenWords(state, now, stripWords(state, now, null));
  assert.equal(spoken(1000), "RUNNING. End: not confirmed");
  assert.equal(spoken(1400), spoken(1000));
});
