// Tones on a sound system that the test can take away, as a call or a locked screen does.
import assert from "node:assert/strict";
import { test } from "node:test";
import { usual } from "../live/comfort.fixture";
import { Tones } from "./tones";

class Context {
  static made: Context[] = [];
  state = "suspended";
  currentTime = 0;
  onstatechange = () => {};
  destination = {};
  constructor() {
    Context.made.push(this);
  }
  become(state: string) {
    this.state = state;
    this.onstatechange();
  }
  async resume() {
    this.become("running");
  }
  createGain() {
    return { connect() {}, disconnect() {} };
  }
  getOutputTimestamp() {
    return { contextTime: this.currentTime, performanceTime: this.currentTime * 1000 };
  }
}
Object.assign(globalThis, { AudioContext: Context });
if (!("navigator" in globalThis)) Object.assign(globalThis, { navigator: {} });

const shown = { segments: [{ starts_at: 10_000, lasts: 60_000, phase: 0, rate_from: 1, rate_to: 1 }] };

async function opened() {
  const told: string[] = [];
  const tones = new Tones(
    () => told.push("lost"),
    (ready) => told.push(ready ? "ready" : "silent"),
  );
  assert.equal(Context.made.length, 0, "no audio device is touched before a tap");
  await tones.open();
  const context = Context.made.pop()!;
  told.length = 0;
  return { tones, context, told };
}

test("suspended, interrupted and closed each end what sounds", async () => {
  for (const state of ["suspended", "interrupted", "closed"]) {
    const { tones, context, told } = await opened();
    tones.schedule(shown, usual, 100, 3000);
    context.become(state);
    assert.deepEqual(told, ["lost"], state);
    assert.equal(tones.ready, false);
  }
});

test("while nothing sounds a loss is only told, and so is its end", async () => {
  const { tones, context, told } = await opened();
  tones.schedule(shown, usual, 100, 3000);
  tones.cut();
  context.become("interrupted");
  tones.reopen();
  assert.deepEqual(told, ["silent", "ready"]);
  assert.equal(tones.ready, true);
});

test("a browser without an output, which never answers, is told from one that plays", async () => {
  const tones = new Tones(() => undefined);
  const { setTimeout: later } = globalThis;
  const { resume } = Context.prototype;
  Context.prototype.resume = () => new Promise(() => undefined);
  globalThis.setTimeout = ((act: () => void) => later(act, 0)) as typeof setTimeout;
  const opened = tones.open();
  [globalThis.setTimeout, Context.prototype.resume] = [later, resume];
  await assert.rejects(opened, /no output answers/);
  Context.made.pop();
});
