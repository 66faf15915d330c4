import assert from "node:assert/strict";
import { test } from "node:test";
import { usual } from "../live/comfort.fixture";
import { nothing } from "../live/needs.fixture";
import type { Channels } from "../wire/Channels";
import type { Device } from "../wire/Device";
import type { DeskView } from "../wire/DeskView";
import { EMPTY_LOG, freshDesk, type DeskState } from "./model";
import { step } from "./reducer";
import type { ClockError } from "../wire/ClockError";
import { aPlan, aSet, aShowing, aView } from "./sample.fixture";
import {
  apartWords,
  bandStops,
  departures,
  holdWords,
  isStuck,
  isUnknown,
  keysOff,
  limitWords,
  orderedWords,
  progressWords,
  showingWords,
  stateWord,
  stripWords,
  titleWords,
} from "./status";
import { RECORD_WAITS } from "./words";

function deskWith(view: DeskView, now = 0): DeskState {
  const open = step(freshDesk(now), { kind: "line", open: true }, now).state;
  return step(open, { kind: "heard", message: { type: "view", ...view } }, now).state;
}
const show = (state: DeskState, now: number, changes = {}): DeskState =>
  step(state, { kind: "heard", message: { type: "showing", ...aShowing(changes) } }, now).state;
const running = (): DeskView => aView({ state: "running", set: aSet() });

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

test("a client who has left is called, and the log stays", () => {
  let state = deskWith(aView({ set: aSet({ ended: "done" }) }));
  state = step(state, { kind: "heard", message: { type: "view", ...aView({ seq: 2, state: "left", seat: "left" }) } }, 0).state;
  assert.equal(state.lower, "log");
  assert.match(showingWords(state, 0, "555-0100"), /^Call 555-0100\. The client has left/);
  state = step(state, { kind: "heard", message: { type: "view", ...aView({ seq: 3, state: "at_the_door", seat: "waiting" }) } }, 0).state;
  assert.equal(state.lower, "join");
});

test("READY never stands beside a reading of before: the room has heard that the page rests, or it is another page", () => {
  const moved = show(deskWith(running()), 0);
  const ended = (needs: Partial<typeof nothing>, state: DeskView["state"]) =>
    step(
      moved,
      { kind: "heard", message: { type: "view", ...aView({ seq: 2, state, set: aSet({ ended: "link_lost" }), needs: { ...nothing, ...needs } }) } },
      66_000,
    ).state;
  assert.deepEqual([stateWord(ended({}, "ready"), 66_000), showingWords(ended({}, "ready"), 66_000, "")], ["READY", "at rest"]);
  const still = ended({ rest: true }, "stopped");
  assert.match(showingWords(still, 66_000, ""), /^not heard for 66 s/);
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
    assert.equal(showingWords(closed, 20, "555-0100"), "");
    assert.deepEqual(stripWords(closed, 10_000, null), ["The session is closed."]);
  }
});

test("unknown says when the client's page has stopped by itself, not before the 3 s of the invariant", () => {
  const state = deskWith(running());
  assert.match(showingWords(state, 1600, "555-0100"), /^Call 555-0100\. .*stops by itself within 3 s/);
  assert.match(showingWords(state, 3000, "555-0100"), /has stopped by itself/);
});

test("LINK LOST gives the call-back number in place of what the client is showing", () => {
  const state = deskWith(aView({ state: "link_lost", set: aSet() }));
  assert.match(showingWords(state, 100, "555-0100"), /^Call 555-0100\. The client's page stops by itself within 3 s/);
  const later = step(state, { kind: "heard", message: { type: "beat", id: 1, sent: 0, echo: null, desk_silent: null, desk_trip: 0 } }, 3000).state;
  assert.match(showingWords(later, 3000, "555-0100"), /^Call 555-0100\. The client's page has stopped by itself/);
  assert.match(showingWords(later, 3000, ""), /^Call the client/);
});

test("nothing is said to run before the client's page says so", () => {
  const state = deskWith(running());
  assert.equal(showingWords(state, 0, ""), "nothing shown yet");
  assert.equal(showingWords(show(state, 0, { set: "another" }), 0, ""), "nothing shown yet");
  assert.equal(showingWords(show(state, 0), 0, ""), "1.00 Hz, 18°, cycle 13");
  assert.equal(showingWords(show(state, 0, { moving: false }), 0, ""), "at rest");
});

test("a reading of the client's page that is old is shown as old", () => {
  const state = show(deskWith(running()), 0);
  assert.match(showingWords(state, 1100, ""), /^1\.00 Hz/);
  assert.match(showingWords(state, 1400, ""), /^not heard for 1 s, last 1\.00 Hz/);
});

test("ordered names the peak speed, pi * A * f = 57 at 18 degrees and 1 Hz", () => {
  assert.equal(orderedWords(deskWith(aView())), "1.00 Hz, 18°, 57°/s at its peak");
  assert.equal(orderedWords(deskWith(aView({ plan: aPlan({ channels: { eyes: false, ears: true, hands: false } }) }))), "1.00 Hz");
});

test("a plan that is on its way is marked not confirmed", () => {
  const state = step(deskWith(aView()), { kind: "action", action: { kind: "step", setting: "rate", direction: 1 }, id: "-", words: "" }, 0).state;
  assert.match(orderedWords(state), /^1\.05 Hz.*\(not confirmed\)$/);
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

test("every departure from the usual is spelled out", () => {
  assert.deepEqual(departures(deskWith(aView())), []);
  const narrow = { plan: { ...aPlan(), width: 9 }, asked_width: 18 };
  assert.deepEqual(departures(deskWith(aView(narrow))), ["9° of the 18° asked for: client's screen shows no more"]);
  assert.deepEqual(departures(deskWith(aView({ ...narrow, state: "running" }))), [], "of the set that runs");
  const device = {
    width_px: 1,
    height_px: 1,
    px_per_mm: null,
    distance_mm: 600,
    reduced_motion: true,
    sound: false,
    sides: null,
    vibration: false,
    wake_lock: false,
    full_screen: false,
    checking: false,
  };
  const plan = aPlan({ width: 20, length: { kind: "open" }, channels: { eyes: true, ears: true, hands: false } });
  const words = departures(deskWith(aView({ device, plan, eyes_locked: true }))).join("; ");
  for (const part of [/small jumps/, /open-ended/, /test sound/, /locked/, /uncalibrated: likely \d+° to \d+°/, /less motion/, /sleep/])
    assert.match(words, part);
});

test("what is not ready to be heard or felt is said, for the channels that need it", () => {
  const device = aView().device!;
  const words = (channels: Partial<Channels>, changes: Partial<Device>, vibration = false): string => {
    const plan = aPlan({ channels: { eyes: false, ears: false, hands: false, ...channels }, comfort: { ...usual, vibration } });
    return departures(deskWith(aView({ device: { ...device, ...changes }, plan }))).join("; ");
  };
  assert.equal(words({ hands: true }, {}), "");
  assert.match(words({ hands: true }, { sound: false }), /taps need sound or vibration/);
  // Felt, but not chosen for this client: it would not buzz.
  assert.match(words({ hands: true }, { sound: false, vibration: true }), /taps need sound or vibration/);
  assert.equal(words({ hands: true }, { sound: false, vibration: true }, true), "");
  assert.match(words({ ears: true }, { sides: null }), /not checked \(q\)/);
  assert.match(words({ ears: true }, { sides: false }), /cannot tell left from right/);
  assert.equal(words({ eyes: true }, { sound: false, sides: false }), "");
});

test("the peak speed is that of the path and the sweep", () => {
  assert.match(orderedWords(deskWith(aView({ plan: aPlan({ width: 20, path: "eight" }) }))), /87°\/s at its peak/);
  assert.match(orderedWords(deskWith(aView({ plan: aPlan({ width: 20, comfort: { ...usual, sweep: "constant" } }) }))), /40°\/s/);
});

test("KEYS OFF, and the band that stops while they are off and just after the click brings them back", () => {
  const away = step(deskWith(running()), { kind: "page_focus", here: false }, 1000).state;
  assert.ok(keysOff(away) && bandStops(away, 60000));
  const back = step(away, { kind: "page_focus", here: true }, 70000).state;
  assert.ok(!keysOff(back));
  assert.ok(bandStops(back, 70100));
  assert.ok(!bandStops(back, 70600));
});

test("the clocks are spoken of only when they disagree, expectation and bound apart", () => {
  const stageOff = (clock: ClockError | null) => show(deskWith(running()), 0, { clock });
  assert.deepEqual(apartWords(stageOff({ spread: 4, bound: 80 }), { spread: 4, bound: 80 }), []);
  assert.deepEqual(apartWords(stageOff({ spread: 1, bound: 20 }), { spread: 20.4, bound: 60.4 }), ["preview about 20 ms apart, at worst 80"]);
  assert.deepEqual(apartWords(stageOff({ spread: 30, bound: 75 }), { spread: 40, bound: 75 }), ["preview about 50 ms apart, at worst 150"]);
  // Nothing is known of the other side.
  assert.deepEqual(apartWords(stageOff(null), { spread: 40, bound: 75 }), []);
  assert.deepEqual(apartWords(stageOff({ spread: 40, bound: 75 }), null), []);
  assert.deepEqual(apartWords(show(deskWith(running()), 0, { set: "another", clock: { spread: 40, bound: 75 } }), { spread: 40, bound: 75 }), []);
});

test("what was shown is counted in whole cycles, one of them is a cycle", () => {
  const stopped = deskWith(aView({ state: "stopped", set: aSet({ ended: "stopped_by_clinician" }) }));
  const after = (phase: number) => showingWords(show(stopped, 0, { moving: false, phase }), 0, "");
  assert.deepEqual([0.4, 1.2, 2.0].map(after), ["at rest after 0 cycles", "at rest after 1 cycle", "at rest after 2 cycles"]);
});

test("progress counts whole cycles and the time since the set began", () => {
  assert.equal(progressWords(deskWith(running())), "0 of 24");
  assert.equal(progressWords(show(deskWith(running()), 0)), "12 of 24, 0:12");
  const open = aView({ state: "running", set: aSet({ plan: aPlan({ length: { kind: "open" } }) }) });
  assert.equal(progressWords(show(deskWith(open), 0, { phase: 80.2, at: 81200 })), "80 cycles, 1:20");
  assert.equal(progressWords(deskWith(aView())), "");
});

test("the hard limit is told before it comes", () => {
  const state = deskWith(aView({ state: "running", set: aSet(), hard_end: 100000 }));
  assert.equal(limitWords(state, 80000), null);
  assert.equal(limitWords(state, 90000), "The set ends at its limit in 10 s.");
  assert.equal(limitWords(state, null), null);
});

test("two sets marked the same bring the hint, one or a change in between does not", () => {
  const marked = (marks: ("same" | "changing")[]): DeskState => {
    let state = deskWith(aView({ set: aSet({ id: `set-${marks.length}`, number: marks.length, ended: "done" }) }));
    const plan = aPlan();
    const log = {
      ...EMPTY_LOG,
      sets: marks.map((_, i) => ({ id: `set-${i + 1}`, number: i + 1, plan, cycles: 24, ending: "done" as const })),
      entries: marks.map((change, i) => ({
        entry: { id: `m${i}`, set: `set-${i + 1}`, replaces: null, moment: "after_set" as const, value: { kind: "change" as const, change } },
        at: "2030-01-02T14:07:31Z",
      })),
    };
    state = step(state, { kind: "log", log }, 0).state;
    return state;
  };
  const hinted = isStuck;
  assert.ok(hinted(marked(["same", "same"])));
  assert.ok(hinted(marked(["changing", "same", "same"])));
  assert.ok(!hinted(marked(["same"])));
  assert.ok(!hinted(marked(["same", "changing"])));
  assert.ok(!hinted(marked(["same", "changing", "same"])));
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
