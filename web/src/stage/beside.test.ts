// What the clinician puts on the client's page, and what the client says there.
import assert from "node:assert/strict";
import { test } from "node:test";
import { nothing } from "../live/needs.fixture";
import type { OpenPad } from "../wire/OpenPad";
import type { Event } from "./machine";
import { ready, run, running, seen, sent, setView, view } from "./machine.fixture";
import { pageOf } from "./screen";

const pad = (asked: number, scale: OpenPad["scale"] = "sud"): OpenPad => ({ scale, asked });
const rated = (value: number | null): Event => ({ type: "rated", id: "the-id", value });
const needs = { ...nothing, client_ready: true };

test("a scale is open until the room has heard the answer, which is told again until then", () => {
  const asked = run([...ready, seen(view("ready", { pad: pad(1) }))]);
  assert.deepEqual(pageOf(asked.state), { name: "pad", scale: "sud", said: false });
  const said = run([rated(4)], asked.state);
  assert.deepEqual(said.last, [{ do: "send", message: { type: "rated", id: "the-id", asked: 1, value: 4 } }]);
  assert.deepEqual(pageOf(said.state), { name: "pad", scale: "sud", said: true });
  assert.deepEqual(sent(run([{ type: "again" }], said.state).last), ["rated"]);
  assert.deepEqual(run([rated(7)], said.state).last, [], "the first press counts");
  const heard = run([seen(view("ready"))], said.state);
  assert.equal(pageOf(heard.state).name, "ready");
  assert.deepEqual(sent(run([{ type: "again" }], heard.state).last), []);
});

test("an answer is to its own question: not to the next one, nor to one of a room that began anew", () => {
  const said = run([...ready, seen(view("ready", { pad: pad(1) })), rated(4)]).state;
  const next = run([seen(view("ready", { pad: pad(2, "voc") })), { type: "again" }], said);
  assert.deepEqual(sent(next.all), []);
  assert.deepEqual(pageOf(next.state), { name: "pad", scale: "voc", said: false });
  const anew = run([seen({ ...view("ready", { pad: pad(1) }), epoch: 2 }), { type: "again" }], said);
  assert.deepEqual(sent(anew.all), []);
});

test("a press where nothing is open says nothing", () => {
  assert.deepEqual(run([...ready, rated(4)]).last, []);
});

test("what steadies stands there, over a hold too, and gives way to a set", () => {
  const steadying = { kind: "resource", words: "The quay" } as const;
  const shown = run([...ready, seen(view("ready", { steadying }))]);
  assert.deepEqual(pageOf(shown.state), { name: "steadying", words: "The quay", held: undefined });
  const stopped = run([
    ...running(),
    { type: "stop" },
    seen(view("stopped_by_client", { needs, steadying: { kind: "orient" }, set: setView("a", { ended: "stopped_by_client" }) })),
  ]);
  const page = pageOf(stopped.state);
  assert.ok(page.name === "steadying" && page.words === undefined && page.held?.asksReady === true, JSON.stringify(page));
  const set = run([seen(view("running", { set: setView("b") }))], shown.state);
  assert.equal(pageOf(set.state).name, "running");
});

test("without the line, and with nobody at the desk, nothing that was put there is asked", () => {
  const asked = run([...ready, seen(view("ready", { pad: pad(1) }))]).state;
  assert.equal(pageOf(run([{ type: "link", state: "lost" }], asked).state).name, "lost");
  assert.equal(pageOf(run([seen(view("hold", { pad: pad(1), desk_here: false }))], asked).state).name, "ready-alone");
});

test("after a stop more time may be asked for, once, and Ready ends that", () => {
  const stopped = run([
    ...running(),
    { type: "stop" },
    seen(view("stopped_by_client", { needs, desk_knows: true, set: setView("a", { ended: "stopped_by_client" }) })),
  ]).state;
  const page = pageOf(stopped);
  assert.ok(page.name === "held" && page.longer === "may");
  const asked = run([{ type: "longer" }], stopped);
  assert.deepEqual(sent(asked.last), ["longer"]);
  assert.deepEqual(sent(run([{ type: "again" }], asked.state).last), ["longer"]);
  const known = run([seen(view("stopped_by_client", { needs, longer: true, desk_knows: true })), { type: "again" }], asked.state);
  assert.deepEqual(sent(known.last), []);
  const said = pageOf(known.state);
  assert.ok(said.name === "held" && said.longer === "said");
  const on = run([{ type: "ready" }, seen(view("ready"))], known.state);
  assert.equal(on.state.longerSaid, false);
  assert.deepEqual(run([...ready, { type: "longer" }]).last, [], "nothing waits for them");
});
