import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { beforeEach, test } from "node:test";
import { type SocketUser, LiveSocket, pauseBefore, sentAway, type SocketState, WIRE_VERSION } from "./socket";

class FakeSocket {
  static all: FakeSocket[] = [];
  sent: { type: string }[] = [];
  onopen: (() => void) | null = null;
  onmessage: ((event: { data: string }) => void) | null = null;
  onclose: ((event: { code: number }) => void) | null = null;
  constructor(readonly url: URL) {
    FakeSocket.all.push(this);
  }
  send(text: string) {
    this.sent.push(JSON.parse(text));
  }
  close() {}
}

const latest = () => FakeSocket.all[FakeSocket.all.length - 1]!;

function line(states: SocketState[], messages: unknown[] = []): SocketUser<{ type: string }, { type: string }> {
  return {
    path: "/stage/socket",
    hello: () => ({ type: "hello" }),
    drawn: () => 7,
    onMessage: (message) => messages.push(message),
    onState: (state) => states.push(state),
  };
}

beforeEach(() => {
  FakeSocket.all = [];
  Object.assign(globalThis, {
    WebSocket: FakeSocket,
    addEventListener() {},
    document: { addEventListener() {}, visibilityState: "visible" },
    location: { href: "https://portal.example/stage" },
  });
});

test("the wire's version is the server's", () => {
  const rust = readFileSync("../server/core/src/wire.rs", "utf8");
  assert.equal(Number(/WIRE_VERSION: u32 = (\d+);/.exec(rust)?.[1]), WIRE_VERSION);
});

test("hello comes first, and a beat is answered before anybody else sees it", () => {
  const messages: unknown[] = [];
  const socket = new LiveSocket(line([], messages));
  assert.equal(latest().url.href, "wss://portal.example/stage/socket");
  latest().onopen!();
  const beat = { type: "beat", id: 3, sent: 1, echo: null, desk_silent: null };
  latest().onmessage!({ data: JSON.stringify(beat) });
  const [hello, reply] = latest().sent as [{ type: string }, { page: number; drawn: number }];
  assert.deepEqual(hello, { type: "hello" });
  assert.ok(Number.isFinite(reply.page));
  assert.deepEqual({ ...reply, page: 0 }, { type: "beat", id: 3, page: 0, drawn: 7 });
  assert.deepEqual(messages, [beat]);
  socket.close();
});

test("hello comes first even when somebody waits for the line to open", () => {
  const told = line([]);
  const socket = new LiveSocket({ ...told, onState: (state) => void (state === "open" && socket.send({ type: "stop" })) });
  latest().onopen!();
  assert.deepEqual(
    latest().sent.map(({ type }) => type),
    ["hello", "stop"],
  );
  socket.close();
});

test("what could not be sent is not sent later", async () => {
  const states: SocketState[] = [];
  const socket = new LiveSocket(line(states));
  assert.equal(socket.send({ type: "ready" }), false);
  latest().onopen!();
  assert.equal(socket.send({ type: "ready" }), true);
  latest().onclose!({ code: 1006 });
  assert.equal(socket.send({ type: "stop" }), false);
  await new Promise((done) => setTimeout(done, 350));
  latest().onopen!();
  assert.equal(FakeSocket.all.length, 2);
  assert.deepEqual(latest().sent, [{ type: "hello" }]);
  assert.deepEqual(states, ["open", "lost", "connecting", "open"]);
  socket.close();
});

test("a page that is sent away does not come back", async () => {
  const states: SocketState[] = [];
  const socket = new LiveSocket(line(states));
  latest().onopen!();
  latest().onclose!({ code: 1008 });
  await new Promise((done) => setTimeout(done, 350));
  assert.equal(FakeSocket.all.length, 1);
  socket.close();
  assert.equal(socket.state, "refused");
});

test("a silent line is given up and tried anew", async () => {
  const socket = new LiveSocket(line([]));
  socket.patience = 100;
  latest().onopen!();
  await new Promise((done) => setTimeout(done, 1100));
  assert.ok(FakeSocket.all.length >= 2);
  socket.close();
});

test("pauses grow to 4 s and are spread by a fifth at most", () => {
  assert.deepEqual(
    [0, 1, 2, 3, 4, 9].map((n) => pauseBefore(n, 0)),
    [250, 500, 1000, 2000, 4000, 4000],
  );
  assert.equal(pauseBefore(0, 1), 300);
  assert.deepEqual([1000, 1006, 1008, 1011, 1013, 4001].map(sentAway), [false, false, true, false, false, true]);
});
