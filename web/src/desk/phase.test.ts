// The phases at the desk: what each offers, what is written, and what stands on the client's page.
import assert from "node:assert/strict";
import { test } from "node:test";
import type { Asks } from "../wire/Asks";
import type { Entry } from "../wire/Entry";
import type { Phase } from "../wire/Phase";
import { Desk, kinds, orders, running } from "./desk.fixture";
import { offers, phaseWords, promptWords } from "./phase";
import { aSet, aView } from "./sample.fixture";
import { stripWords } from "./status";

const STANDARD: Asks[] = [
  { end: "sud", open: true },
  { end: "voc", open: true },
  { end: "scan", open: true },
];
const at = (phase: Phase, asks: Asks[] = STANDARD): Desk => {
  const desk = Desk.with(aView({ set: aSet({ ended: "done" }) }));
  desk.reads({ phase, asks });
  return desk;
};
const offered = (desk: Desk): string[] => offers(desk.state).map(({ words }) => words);
const written = (desk: Desk): Entry | undefined => desk.state.queue.at(-1)?.entry;

// Clinical reference 1.6: the belief is asked about, VOC after sets, then the scan; and the ends of section 1.
test("each phase offers what can be found out in it", () => {
  assert.deepEqual(offered(at("opening")), []);
  assert.deepEqual(offered(at("desensitisation")), ["back at the target: SUD", "VOC"]);
  assert.deepEqual(offered(at("installation")), ["back at the target: SUD", "VOC", "the belief still fits", "another belief fits better"]);
  assert.ok(offered(at("scan")).includes("scan: something is felt"));
  assert.deepEqual(offered(at("preparation", [])), ["not measured: in the same room", "not measured: without stimulation", "not measured: their own tapping"]);
  const event = at("desensitisation", [{ end: "segments", open: true }]);
  assert.deepEqual(offered(event), ["segment 1: SUD", "on to segment 2"]);
  const future = at("desensitisation", [
    { end: "rehearsal", open: true },
    { end: "voc", open: true },
  ]);
  assert.deepEqual(offered(future), ["VOC", "rehearsed: nothing disturbed", "rehearsed: something disturbed"]);
});

test("the head says the phase and what the target's end still asks for", () => {
  assert.equal(phaseWords(at("installation", [{ end: "sud", open: false }, ...STANDARD.slice(1)]).state), "Installation, to reach: VOC, scan");
  assert.equal(phaseWords(at("preparation", []).state), "Preparation");
  assert.equal(phaseWords(Desk.with(aView()).state), "", "nothing is said before the record was read");
});

test("a digit takes what is offered: a scale is armed for its moment, a finding is written at its set", () => {
  const desk = at("scan");
  desk.does({ kind: "lower", shown: "phase" });
  desk.does({ kind: "phase_digit", value: 1 });
  assert.deepEqual([desk.state.armed, desk.state.lower], [{ scale: "sud", moment: "back_at_target", segment: null }, "log"]);
  desk.does({ kind: "rate", value: 0 });
  assert.deepEqual(written(desk)?.value, { kind: "sud", value: 0 });
  const clear = offered(desk).indexOf("scan: clear") + 1;
  desk.does({ kind: "phase_digit", value: clear });
  assert.deepEqual([written(desk)?.value, written(desk)?.set], [{ kind: "scan", scan: "clear" }, "set-1"]);
  desk.does({ kind: "phase_digit", value: clear + 1 });
  assert.match(desk.notice(), /What, and where/);
  assert.equal(written(desk)?.replaces, null, "a second scan is another one");
  desk.does({ kind: "phase_digit", value: 9 });
  assert.match(desk.notice(), /nothing in this phase/);
});

test("a segment's SUD says which, corrects its own alone, and is no SUD of the whole", () => {
  const desk = at("desensitisation", [{ end: "segments", open: true }]);
  desk.does({ kind: "phase_digit", value: 2 });
  desk.does({ kind: "phase_digit", value: 1 });
  desk.does({ kind: "rate", value: 4 });
  assert.deepEqual([written(desk)?.segment, written(desk)?.replaces], [2, null]);
  const first = written(desk)?.id;
  desk.does({ kind: "arm_at", scale: "sud", moment: "back_at_target", segment: 2 });
  desk.does({ kind: "rate", value: 3 });
  assert.equal(written(desk)?.replaces, first);
  desk.does({ kind: "arm_at", scale: "sud", moment: "back_at_target", segment: null });
  desk.does({ kind: "rate", value: 5 });
  assert.deepEqual([written(desk)?.segment, written(desk)?.replaces], [null, null]);
});

test("too much is one key: it stops, is written down, and what steadies is in front", () => {
  const desk = Desk.with(running());
  const commands = desk.does({ kind: "too_much" });
  assert.deepEqual(kinds(commands), ["stop"]);
  assert.deepEqual(written(desk)?.value, { kind: "too_much" });
  assert.equal(desk.state.lower, "steady");
  const cut = Desk.with(running());
  cut.event({ kind: "line", open: false });
  cut.does({ kind: "too_much" });
  assert.equal(cut.state.pending[0]?.order.kind, "stop", "without the line it goes as soon as there is one");
});

test("what was put on the client's page is written down once the room has done it, and not when it is refused", () => {
  const desk = at("desensitisation");
  desk.state = { ...desk.state, resources: ["The quay. Six in the morning"], lower: "steady" };
  const steadying = { kind: "resource", words: "The quay. Six in the morning" } as const;
  assert.deepEqual(orders(desk.does({ kind: "steady_digit", value: 2 })), [{ kind: "show", steadying }]);
  assert.equal(written(desk), undefined);
  desk.sees({ steadying });
  assert.deepEqual(written(desk)?.value, { kind: "showed", showed: "resource" });
  desk.does({ kind: "steady_digit", value: 0 });
  desk.answers(2, { kind: "wrong_state" });
  desk.sees({ steadying: null });
  assert.deepEqual(written(desk)?.value, { kind: "showed", showed: "resource" }, "that was not this desk's doing");
  desk.does({ kind: "steady_digit", value: 7 });
  assert.match(desk.notice(), /nothing to show/);
});

test("a rating from the client's page is kept once under the id that it brought, as the client's", () => {
  const desk = at("desensitisation");
  desk.does({ kind: "ask_client" });
  assert.match(desk.notice(), /^Which scale\?/);
  desk.does({ kind: "arm", scale: "sud" });
  const pad = { scale: "sud", moment: "after_set" } as const;
  assert.deepEqual(orders(desk.does({ kind: "ask_client" })), [{ kind: "ask", pad }]);
  desk.sees({ pad });
  assert.deepEqual(orders(desk.does({ kind: "ask_client" })), [{ kind: "ask", pad: null }], "pressed again, it is taken away");
  const rated = { id: "from-the-page", pad, value: 4 };
  desk.sees({ pad: null, rated });
  desk.sees({ pad: null, rated });
  const own = desk.state.queue.filter(({ entry }) => entry.id === "from-the-page");
  assert.equal(own.length, 1);
  assert.deepEqual([own[0]?.entry.from_client, own[0]?.entry.value], [true, { kind: "sud", value: 4 }]);
  const onlooker = Desk.with(aView({ in_control: false }));
  onlooker.sees({ rated });
  assert.equal(onlooker.state.queue.length, 0, "the desk in control writes it");
  desk.sees({ rated: { ...rated, id: "another", value: null } });
  assert.match(desk.notice(), /passed the rating over/);
});

test("that the client needs longer is said in the strip", () => {
  const desk = Desk.with(aView({ state: "stopped_by_client", longer: true }));
  assert.ok(stripWords(desk.state, 0, null).some((words) => words.startsWith("The client needs longer")));
});

test("how the target is worked on is said where it bears on what is asked", () => {
  const desk = at("desensitisation", [{ end: "rehearsal", open: true }]);
  desk.reads({ phase: "desensitisation", procedure: "future" });
  assert.match(promptWords(desk.state), /A step to come: rehearse it/);
  desk.reads({ phase: "desensitisation", procedure: "standard" });
  assert.ok(!promptWords(desk.state).includes("A step to come"));
});

test("a digit that takes a scale up says so", () => {
  const desk = at("installation");
  desk.does({ kind: "phase_digit", value: 2 });
  assert.match(desk.notice(), /^VOC: press its number now, 1 to 7/);
});
