import assert from "node:assert/strict";
import { test } from "node:test";
import type { OwnDevice } from "../wire/OwnDevice";
import { sentencesFor } from "./sentence";

const sentenceFor = (...given: Parameters<typeof sentencesFor>) => sentencesFor(...given)[0];

const NONE = { picture: null, voice: null };
const sends = (picture: OwnDevice, voice: OwnDevice) => ({ picture, voice, during: "dimmed" as const, visible: true });
const there = (picture: OwnDevice, voice: OwnDevice, other = sends("on", "on")) =>
  sentenceFor({ state: "there", sends: sends(picture, voice), other, own: NONE }, false);

test("where all is well nothing is said, and a camera that the client left off is no fault", () => {
  assert.equal(there("on", "on"), undefined);
  assert.equal(there("off", "on"), undefined);
  assert.equal(sentenceFor({ state: "none", sends: sends("on", "on"), other: undefined, own: NONE }, false), undefined);
});

test("not being heard comes before not being seen, and that before what the other sends", () => {
  assert.equal(there("taken", "muted"), "call_muted");
  assert.equal(there("refused", "absent"), "call_voice_absent");
  assert.equal(there("off", "off"), "call_voice_off");
  assert.equal(there("taken", "on"), "call_picture_taken");
  assert.equal(there("spared", "on"), "call_spared");
  assert.equal(there("on", "on", sends("off", "muted")), "call_their_mute");
  assert.equal(there("on", "on", sends("absent", "on")), "call_their_dark");
  assert.equal(there("on", "on", sends("on", "refused")), "call_their_silent");
});

test("how the connection stands comes first, and after long trying it is called by telephone", () => {
  const of = (state: "connecting" | "lost" | "no_relay" | "too_much" | "unfit", givesUp = false) =>
    sentenceFor({ state, sends: sends("on", "muted"), other: undefined, own: NONE }, givesUp);
  assert.deepEqual([of("connecting"), of("connecting", true), of("lost")], ["call_connecting", "call_unreached", "call_lost"]);
  assert.deepEqual([of("no_relay"), of("too_much"), of("unfit")], ["call_unreached", "call_unreached", "call_unreached"]);
});

test("what can be tried again says where", () => {
  const of = (picture: OwnDevice, voice: OwnDevice) => sentencesFor({ state: "there", sends: sends(picture, voice), other: undefined, own: NONE }, false);
  assert.deepEqual(
    [of("on", "taken"), of("stopped", "on")],
    [
      ["call_voice_taken", "call_in_help"],
      ["call_picture_stopped", "call_in_help"],
    ],
  );
  const held = { picture: null, voice: {} as MediaStreamTrack };
  const rings = sentencesFor({ state: "there", sends: sends("on", "taken"), other: undefined, own: held }, false);
  assert.deepEqual(rings, ["call_voice_taken"], "while a phone rings: it comes back by itself, and Help has no button for it");
  assert.deepEqual([of("unable", "on"), of("on", "muted"), of("on", "on")], [["call_picture_unable"], ["call_muted"], []]);
});
