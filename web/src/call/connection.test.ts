import assert from "node:assert/strict";
import { test } from "node:test";
import type { FromCaller } from "../wire/FromCaller";
import type { Ways } from "../wire/Ways";
import { type CallState, configOf, Connection } from "./connection";

const WAYS: Ways = { relay_only: true, urls: ["turn:203.0.113.9:3478"], username: "1:a", credential: "b", holds_for: 600_000 };

/** A connection of a browser, as far as this needs one. It makes descriptions out of nothing and connects nobody. */
class Fake {
  signalingState = "stable";
  connectionState = "new";
  localDescription: { type: string; sdp: string } | null = null;
  closed = false;
  restarted = 0;
  taken: unknown[] = [];
  onicecandidate: (event: { candidate: unknown }) => void = () => undefined;
  ontrack: (event: { track: unknown }) => void = () => undefined;
  onconnectionstatechange: () => void = () => undefined;
  onnegotiationneeded: () => void = () => undefined;
  private places: { direction: string; sender: { replaceTrack(track: unknown): Promise<void> }; receiver: { track: { kind: string } } }[] = [];
  sent: unknown[] = [];

  constructor(readonly config: RTCConfiguration) {}

  addTransceiver(kind: string): void {
    const sender = { replaceTrack: (track: unknown) => Promise.resolve(void this.sent.push(track)) };
    this.places.push({ direction: "sendrecv", sender, receiver: { track: { kind } } });
    if (this.places.length === 2) this.onnegotiationneeded();
  }

  getTransceivers(): unknown[] {
    return this.places;
  }

  setLocalDescription(): Promise<void> {
    const type = this.signalingState === "have-remote-offer" ? "answer" : "offer";
    this.signalingState = type === "offer" ? "have-local-offer" : "stable";
    this.localDescription = { type, sdp: `${type} of ours` };
    return Promise.resolve();
  }

  setRemoteDescription(description: { type: string }): Promise<void> {
    // As RFC 8829, 4.1.8.1 and 4.1.8.2 have it: an answer is to an offer that stands.
    if (description.type === "answer" && this.signalingState !== "have-local-offer") return Promise.reject(new Error("InvalidStateError"));
    this.taken.push(description);
    this.signalingState = description.type === "offer" ? "have-remote-offer" : "stable";
    return Promise.resolve();
  }

  addIceCandidate(candidate: unknown): Promise<void> {
    this.taken.push(candidate);
    return Promise.resolve();
  }

  restartIce(): void {
    this.restarted += 1;
    this.onnegotiationneeded();
  }

  setConfiguration(): void {}

  close(): void {
    this.closed = true;
  }
}

function page() {
  const sent: FromCaller[] = [];
  const states: CallState[] = [];
  const made: Fake[] = [];
  const connection = new Connection({
    send: (said) => sent.push(said),
    own: () => ({ picture: null, voice: null }),
    onSends: () => undefined,
    onTrack: () => undefined,
    onState: (state) => states.push(state),
    make: (config) => {
      made.push(new Fake(config));
      return made.at(-1) as unknown as RTCPeerConnection;
    },
  });
  return { connection, sent, states, made };
}

const settle = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 5));
const kinds = (sent: FromCaller[]): string[] => sent.map((said) => (said.kind === "signal" ? said.signal.kind : said.kind));

test("the desk opens the places and offers; the client's page waits, and answers", async () => {
  const [desk, stage] = [page(), page()];
  desk.connection.hear({ kind: "begin", call: 1, offers: true, ways: WAYS });
  stage.connection.hear({ kind: "begin", call: 1, offers: false, ways: WAYS });
  await settle();
  assert.deepEqual([kinds(desk.sent), kinds(stage.sent)], [["offer"], []]);
  stage.connection.hear({ kind: "signal", call: 1, signal: { kind: "offer", sdp: "theirs" } });
  await settle();
  assert.deepEqual(kinds(stage.sent), ["answer"]);
  desk.connection.hear({ kind: "signal", call: 1, signal: { kind: "answer", sdp: "theirs" } });
  await settle();
  const peer = desk.made[0] as Fake;
  peer.connectionState = "connected";
  peer.onconnectionstatechange();
  assert.deepEqual(desk.states, ["connecting", "there"]);
  for (const one of [desk, stage]) one.connection.drop();
});

test("one side alone offers; the other asks it to, and takes no answer", async () => {
  const [desk, stage] = [page(), page()];
  desk.connection.hear({ kind: "begin", call: 1, offers: true, ways: WAYS });
  stage.connection.hear({ kind: "begin", call: 1, offers: false, ways: WAYS });
  await settle();
  stage.connection.restart();
  assert.deepEqual([kinds(stage.sent), (stage.made[0] as Fake).restarted], [["renew", "again"], 0]);
  desk.connection.hear({ kind: "signal", call: 1, signal: { kind: "again" } });
  desk.connection.hear({ kind: "signal", call: 1, signal: { kind: "offer", sdp: "theirs" } });
  stage.connection.hear({ kind: "signal", call: 1, signal: { kind: "answer", sdp: "theirs" } });
  stage.connection.hear({ kind: "signal", call: 1, signal: { kind: "again" } });
  await settle();
  assert.deepEqual([(desk.made[0] as Fake).taken, (stage.made[0] as Fake).taken, (stage.made[0] as Fake).restarted], [[], [], 0]);
  assert.deepEqual([kinds(desk.sent), (desk.made[0] as Fake).restarted], [["offer", "offer"], 0], "an offer without an answer is sent again");
  desk.connection.hear({ kind: "signal", call: 1, signal: { kind: "answer", sdp: "theirs" } });
  desk.connection.hear({ kind: "signal", call: 1, signal: { kind: "again" } });
  await settle();
  assert.equal((desk.made[0] as Fake).restarted, 1, "one that was answered is made anew");
  for (const one of [desk, stage]) one.connection.drop();
});

test("another call is another connection; what is of the one before is not heard", async () => {
  const { connection, made, states } = page();
  connection.hear({ kind: "begin", call: 1, offers: false, ways: WAYS });
  connection.hear({ kind: "begin", call: 2, offers: false, ways: WAYS });
  connection.hear({ kind: "signal", call: 1, signal: { kind: "candidate", candidate: "", mid: null, line: null } });
  await settle();
  assert.deepEqual([made[0]?.closed, made[1]?.taken], [true, []]);
  connection.hear({ kind: "over" });
  assert.deepEqual([made[1]?.closed, states.at(-1)], [true, "none"]);
});

test("a line that was lost is looked for anew by itself, with new ways", async () => {
  const { connection, sent, states, made } = page();
  connection.hear({ kind: "begin", call: 1, offers: true, ways: WAYS });
  const peer = made[0] as Fake;
  await settle();
  connection.hear({ kind: "signal", call: 1, signal: { kind: "answer", sdp: "theirs" } });
  await settle();
  for (const state of ["connected", "disconnected"]) {
    peer.connectionState = state;
    peer.onconnectionstatechange();
  }
  assert.equal(states.at(-1), "lost");
  await new Promise((resolve) => setTimeout(resolve, 1_700));
  assert.ok(peer.restarted >= 1 && kinds(sent).includes("renew"), `${peer.restarted}: ${kinds(sent)}`);
  connection.drop();
});

test("an offer that was sent twice is answered twice, and the second answer changes nothing", async () => {
  const { connection, made, states } = page();
  connection.hear({ kind: "begin", call: 1, offers: true, ways: WAYS });
  const peer = made[0] as Fake;
  await settle();
  connection.hear({ kind: "signal", call: 1, signal: { kind: "again" } });
  for (const sdp of ["theirs", "theirs again"]) connection.hear({ kind: "signal", call: 1, signal: { kind: "answer", sdp } });
  await settle();
  peer.connectionState = "connected";
  peer.onconnectionstatechange();
  assert.deepEqual([states, peer.taken.length], [["connecting", "there"], 1]);
  connection.drop();
});

test("why there can be no call is said, and ends none that stands", () => {
  const { connection, states, made } = page();
  connection.hear({ kind: "unable", why: "no_relay" });
  assert.deepEqual(states, ["no_relay"]);
  connection.hear({ kind: "begin", call: 1, offers: true, ways: WAYS });
  (made[0] as Fake).connectionState = "connected";
  (made[0] as Fake).onconnectionstatechange();
  connection.hear({ kind: "unable", why: "too_much" });
  assert.equal(connection.state, "there");
  connection.drop();
});

test("where only the relay may be used, the browser looks for no other way", () => {
  assert.equal(configOf(WAYS).iceTransportPolicy, "relay");
  assert.deepEqual(configOf(WAYS).iceServers, [{ urls: WAYS.urls, username: "1:a", credential: "b" }]);
  assert.equal(configOf({ ...WAYS, relay_only: false, urls: [] }).iceTransportPolicy, "all");
});

test("what a closed connection was asked to do may never end, and holds up no other", async () => {
  const { connection, made, sent } = page();
  connection.hear({ kind: "begin", call: 1, offers: false, ways: WAYS });
  (made[0] as Fake).setRemoteDescription = () => new Promise(() => undefined);
  connection.hear({ kind: "signal", call: 1, signal: { kind: "offer", sdp: "theirs" } });
  await settle();
  connection.hear({ kind: "begin", call: 2, offers: false, ways: WAYS });
  connection.hear({ kind: "signal", call: 2, signal: { kind: "offer", sdp: "theirs" } });
  await settle();
  assert.deepEqual(kinds(sent), ["answer"]);
  connection.drop();
});

test("a description that could not be taken is negotiated anew, also while something still comes", async () => {
  const { connection, made, states, sent } = page();
  connection.hear({ kind: "begin", call: 1, offers: false, ways: WAYS });
  const peer = made[0] as Fake;
  peer.connectionState = "connected";
  peer.onconnectionstatechange();
  peer.setRemoteDescription = () => Promise.reject(new Error("unfit"));
  connection.hear({ kind: "signal", call: 1, signal: { kind: "offer", sdp: "theirs" } });
  await new Promise((resolve) => setTimeout(resolve, 1_700));
  assert.deepEqual([states.at(-1), kinds(sent)], ["lost", ["renew", "again"]]);
  peer.setRemoteDescription = () => Promise.resolve();
  connection.hear({ kind: "signal", call: 1, signal: { kind: "offer", sdp: "theirs" } });
  await settle();
  assert.equal(states.at(-1), "there");
  connection.drop();
});

test("a description that the room would not pass on is not sent, and the page says why", async () => {
  const { connection, made, states, sent } = page();
  connection.hear({ kind: "begin", call: 1, offers: false, ways: WAYS });
  const peer = made[0] as Fake;
  peer.setLocalDescription = () => {
    peer.localDescription = { type: "answer", sdp: "x".repeat(12 * 1024 + 1) };
    return Promise.resolve();
  };
  connection.hear({ kind: "signal", call: 1, signal: { kind: "offer", sdp: "theirs" } });
  await settle();
  assert.deepEqual([states.at(-1), kinds(sent)], ["unfit", []]);
  connection.drop();
});
