import assert from "node:assert/strict";
import { test } from "node:test";
import type { OwnDevice } from "../wire/OwnDevice";
import { callLine, screenLine, type Standing, voiceWord, watchLine } from "./words";

const sends = (picture: OwnDevice, voice: OwnDevice, visible = true) => ({ picture, voice, during: "dimmed" as const, visible });
const standing = (changed: Partial<Standing> = {}): Standing => ({
  state: "there",
  admitted: true,
  closed: false,
  leads: true,
  silent: false,
  givesUp: false,
  sends: sends("on", "on"),
  other: sends("on", "on"),
  missing: { picture: undefined, voice: undefined },
  ...changed,
});

test("who is not let in is neither seen nor heard, and that is said", () => {
  assert.match(callLine(standing({ admitted: false, state: "none" })).words, /before you let them in/);
  assert.match(callLine(standing({ admitted: false, closed: true, state: "none" })).words, /^The session is closed/);
});

test("a picture that froze comes first, with how long and why", () => {
  assert.deepEqual(callLine(standing({ missing: { picture: 3_400, voice: undefined } })), { words: "NO PICTURE for 3 s", urgent: true });
  const spared = callLine(standing({ missing: { picture: 2_000, voice: 2_300 }, other: sends("spared", "on"), sends: sends("on", "muted"), state: "lost" }));
  assert.deepEqual(spared, { words: "NO PICTURE for 2 s (held back, the line is poor), NO SOUND for 2 s", urgent: true });
});

test("each thing in the way has its words, the desk's own before the client's", () => {
  assert.match(callLine(standing({ sends: sends("on", "refused") })).words, /^Your microphone is not allowed/);
  assert.match(callLine(standing({ sends: sends("taken", "on") })).words, /^Your camera is in use/);
  assert.match(callLine(standing({ sends: sends("on", "muted") })).words, /YOU ARE MUTED/);
  assert.equal(callLine(standing({ other: sends("absent", "muted") })).words, "no picture: they have none, no sound: muted");
  assert.equal(callLine(standing()).words, "picture on, sound on");
  assert.equal(callLine(standing({ sends: sends("off", "on") })).words, "picture on, sound on");
});

test("the microphone's button says heard only where somebody hears", () => {
  const word = (voice: OwnDevice, state: Standing["state"] = "there") => voiceWord(state, sends("on", voice));
  assert.deepEqual([word("on"), word("on", "lost"), word("on", "none")], ["heard", "microphone on", "microphone on"]);
  assert.deepEqual([word("muted"), word("taken"), word("off")], ["MUTED", "microphone off", "microphone off"]);
});

test("where there is no way it says what to do", () => {
  for (const state of ["no_relay", "too_much", "unfit"] as const) {
    const line = callLine(standing({ state }));
    assert.equal(line.urgent && /telephone/.test(line.words), true, state);
  }
  assert.match(callLine(standing({ state: "connecting" })).words, /on their way/);
  for (const state of ["connecting", "lost"] as const) assert.match(callLine(standing({ state, givesUp: true })).words, /do not get through/);
  assert.match(callLine(standing({ state: "none", givesUp: true })).words, /waits for the client/);
});

test("who is not in control has no call, and a browser that plays nothing is no call that is well", () => {
  assert.match(callLine(standing({ leads: false, state: "none", givesUp: true })).words, /desk in control/);
  const silent = callLine(standing({ silent: true }));
  assert.equal(silent.urgent && /click here/.test(silent.words), true);
});

test("the client's trouble is said beside the desk's own", () => {
  assert.match(
    callLine(standing({ sends: sends("on", "muted"), other: sends("refused", "on") })).words,
    /^YOU ARE MUTED.* Client: no picture: not allowed in their browser, sound on\.$/,
  );
});

test("the client's screen and the watch are said as they are", () => {
  const device = { width_px: 844, height_px: 390, sound: true } as Parameters<typeof screenLine>[0];
  assert.equal(screenLine(device, sends("on", "on", false)), "PAGE BEHIND ANOTHER · wide 844 × 390 · tones heard");
  assert.equal(screenLine(null, undefined), "");
  assert.match(watchLine({ seconds: 5, off: null }), /after 5 s/);
  assert.match(watchLine({ seconds: 5, off: "sound_only" }), /sound alone/);
});
