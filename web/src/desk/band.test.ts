import assert from "node:assert/strict";
import { test } from "node:test";
import { usual } from "../live/comfort.fixture";
import { nothing } from "../live/needs.fixture";
import type { Channels } from "../wire/Channels";
import type { ClockError } from "../wire/ClockError";
import type { Device } from "../wire/Device";
import type { DeskView } from "../wire/DeskView";
import {
  apartWords,
  asideWords,
  departures,
  isLost,
  lostWords,
  notesInShort,
  orderedName,
  orderedWords,
  progressPart,
  progressWords,
  showingWords,
} from "./band";
import { stateWord } from "./status";
import { EMPTY_LOG } from "./model";
import { deskWith, running, show } from "./desk.fixture";
import { step } from "./reducer";
import { aPlan, aSet, aView } from "./sample.fixture";

test("a client who has left is called, and the log stays", () => {
  let state = deskWith(aView({ set: aSet({ ended: "done" }) }));
  state = step(state, { kind: "heard", message: { type: "view", ...aView({ seq: 2, state: "left", seat: "left" }) } }, 0).state;
  assert.equal(state.lower, "log");
  assert.match(lostWords(state, 0), /^The client has left/);
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
  assert.deepEqual([stateWord(ended({}, "ready"), 66_000), showingWords(ended({}, "ready"), 66_000)], ["READY", "at rest"]);
  const still = ended({ rest: true }, "stopped");
  assert.match(showingWords(still, 66_000), /^not heard for 66 s/);
});

test("unknown says when the client's page has stopped by itself, not before the 3 s of the invariant", () => {
  const state = deskWith(running());
  assert.match(lostWords(state, 1600), /stops by itself within 3 s/);
  assert.match(lostWords(state, 3000), /has stopped by itself/);
});

test("LINK LOST says what became of the client's page, beside the number to call, and since when nobody was heard", () => {
  const state = deskWith(aView({ state: "link_lost", set: aSet() }));
  assert.match(lostWords(state, 100), /^The client's page stops by itself within 3 s/);
  const later = step(state, { kind: "heard", message: { type: "beat", id: 1, sent: 0, echo: null, desk_silent: null, desk_trip: 0 } }, 3000).state;
  assert.match(lostWords(later, 3000), /^The client's page has stopped by itself/);
  assert.deepEqual([isLost(later, 3000), showingWords(later, 3000)], [true, ""]);
  // The room's time of the last sign is 1000.
  assert.equal(asideWords(later, 3000, 23_400), "22 s since the last sign");
  assert.equal(asideWords(later, 3000, 161_000), "2 min 40 s since the last sign");
  assert.equal(asideWords(later, 3000, null), "");
});

test("nothing is said to run before the client's page says so", () => {
  const state = deskWith(running());
  assert.equal(showingWords(state, 0), "nothing shown yet");
  assert.equal(showingWords(show(state, 0, { set: "another" }), 0), "nothing shown yet");
  assert.equal(showingWords(show(state, 0), 0), "1.00 Hz · 18° · cycle 13");
  assert.equal(showingWords(show(state, 0, { moving: false }), 0), "at rest");
});

test("a reading of the client's page that is old is shown as old", () => {
  const state = show(deskWith(running()), 0);
  assert.match(showingWords(state, 1100), /^1\.00 Hz/);
  assert.match(showingWords(state, 1400), /^not heard for 1 s, last 1\.00 Hz/);
});

test("ordered names the peak speed, pi * A * f = 57 at 18 degrees and 1 Hz", () => {
  assert.equal(orderedWords(deskWith(aView())), "1.00 Hz · 18° · 57°/s · across · eyes");
  assert.equal(orderedWords(deskWith(aView({ plan: aPlan({ channels: { eyes: false, ears: true, hands: false } }) }))), "1.00 Hz · tones");
});

test("a plan that is on its way is marked not confirmed", () => {
  const state = step(deskWith(aView()), { kind: "action", action: { kind: "step", setting: "rate", direction: 1 }, id: "-", words: "" }, 0).state;
  assert.deepEqual([orderedName(state), orderedWords(state).slice(0, 7)], ["not confirmed", "1.05 Hz"]);
  assert.equal(orderedName(deskWith(aView())), "ordered");
});

test("every departure from the usual is spelled out", () => {
  assert.deepEqual(departures(deskWith(aView())), []);
  const narrow = { plan: { ...aPlan(), width: 9 }, asked_width: 18 };
  assert.deepEqual(departures(deskWith(aView(narrow))), ["9° of 18° wide: client's screen shows no more"]);
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
  assert.match(orderedWords(deskWith(aView({ plan: aPlan({ width: 20, path: "eight" }) }))), /87°\/s/);
  assert.match(orderedWords(deskWith(aView({ plan: aPlan({ width: 20, comfort: { ...usual, sweep: "constant" } }) }))), /40°\/s/);
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
  const after = (phase: number) => showingWords(show(stopped, 0, { moving: false, phase }), 0);
  assert.deepEqual([0.4, 1.2, 2.0].map(after), ["at rest after 0 cycles", "at rest after 1 cycle", "at rest after 2 cycles"]);
});

test("progress counts whole cycles and the time since the set began", () => {
  assert.equal(progressWords(deskWith(running())), "0 of 24");
  assert.equal(progressWords(show(deskWith(running()), 0)), "12 of 24, 0:12");
  const open = aView({ state: "running", set: aSet({ plan: aPlan({ length: { kind: "open" } }) }) });
  assert.equal(progressWords(show(deskWith(open), 0, { phase: 80.2, at: 81200 })), "80 cycles, 1:20");
  assert.equal(progressWords(deskWith(aView())), "");
});

test("notes that do not fit into their line are counted, and none is cut", () => {
  const long = Array.from({ length: 6 }, (_, i) => `a note of some length ${i}`);
  assert.equal(notesInShort([]), "");
  assert.equal(notesInShort(["open-ended", "single keys are off"]), "open-ended; single keys are off");
  assert.equal(notesInShort(long), "a note of some length 0; 5 more (o)");
  assert.equal(notesInShort(["short", "shorter", ...long]), "short; shorter; a note of some length 0; 5 more (o)");
  for (let count = 1; count <= 6; count += 1) assert.ok(notesInShort(long.slice(0, count)).length <= 58);
});

test("how far a set has come is drawn as a part of the whole, and not of one without an end", () => {
  assert.equal(progressPart(show(deskWith(running()), 0)), 0.5);
  assert.equal(progressPart(deskWith(running())), 0);
  assert.equal(progressPart(show(deskWith(running()), 0, { phase: 30 })), 1);
  assert.equal(progressPart(deskWith(aView())), null);
  assert.equal(progressPart(deskWith(aView({ state: "running", set: aSet({ plan: aPlan({ length: { kind: "open" } }) }) }))), null);
});

test("a session that is closed is summed up: sets, cycles that were heard, what the ratings did", () => {
  const log = {
    ...EMPTY_LOG,
    sets: [
      { id: "set-1", number: 1, plan: aPlan(), cycles: 24.01, ending: "done" as const },
      { id: "set-2", number: 2, plan: aPlan(), cycles: 11.4, ending: "stopped_by_client" as const },
    ],
    entries: [7, 4].map((value, i) => ({
      entry: {
        id: `r${i}`,
        set: `set-${i + 1}`,
        replaces: null,
        moment: "after_set" as const,
        segment: null,
        from_client: false,
        value: { kind: "sud" as const, value },
      },
      at: "2030-01-02T14:07:31Z",
    })),
  };
  const closed = step(deskWith(aView({ state: "closed" })), { kind: "log", log }, 0).state;
  assert.equal(showingWords(closed, 0), "2 sets, 35 cycles shown, 1 broken off");
  assert.equal(orderedWords(closed), "SUD fell from 7 to 4; VOC was not asked");
  const heard = (...cycles: (number | null)[]): string => {
    const sets = log.sets.slice(0, cycles.length).map((set, i) => ({ ...set, cycles: cycles[i] ?? null, ending: "done" as const }));
    return showingWords(step(deskWith(aView({ state: "closed" })), { kind: "log", log: { ...log, sets } }, 0).state, 0);
  };
  assert.equal(heard(null), "1 set, what was shown was not heard");
  assert.equal(heard(24, null), "2 sets, at least 24 cycles shown");
  assert.equal(showingWords(deskWith(aView({ state: "closed" })), 0), "", "not before the record was read");
});

test("of a line that is lost between sets it is said that nothing was moving", () => {
  const between = { set: aSet({ ended: "done" }) };
  assert.equal(lostWords(deskWith(aView({ ...between, state: "link_lost" })), 100), "Nothing was moving.");
  // Of a server that is not heard it is not known: a start may have reached it just before.
  assert.equal(lostWords(deskWith(aView(between)), 1600), "No word from the server. The client's page stops by itself within 3 s.");
  assert.equal(lostWords(deskWith(aView(between)), 3000), "No word from the server. The client's page has stopped by itself.");
  assert.equal(lostWords(deskWith(aView({ state: "link_lost", set: null })), 100), "Nothing was moving.");
  assert.equal(lostWords(deskWith(aView({ state: "link_lost", set: aSet({ ended: "link_lost" }) })), 100), "The client's page stops by itself within 3 s.");
});

test("a set that begins slower than it was ordered is said to ease in, and one that is shown slower later is not", () => {
  const shown = (changes: object) => showingWords(show(deskWith(running()), 0, changes), 0);
  assert.equal(shown({ rate: 0.6, phase: 0.4 }), "0.60 Hz · 18° · cycle 1, easing in");
  assert.equal(shown({ rate: 1, phase: 0.4 }), "1.00 Hz · 18° · cycle 1");
  assert.equal(shown({ rate: 0.6, phase: 9.4 }), "0.60 Hz · 18° · cycle 10");
});
