// The player in virtual time.
import assert from "node:assert/strict";
import { test } from "node:test";
import { usual } from "../live/comfort.fixture";
import { endOf, phaseAt } from "../live/timeline";
import type { SetView } from "../wire/SetView";
import { OFFSET, Room, set } from "./player.fixture";
import { LAST_MOTION } from "./watchdog";

test("a set is shown as ordered, from rest to rest, and its cycles are counted at the screen", () => {
  const room = new Room();
  room.pass(1000);
  const ordered = set(1, 6, room.now + 1200);
  room.player.play(ordered, room.now);
  room.pass(10_000);
  room.assertSmooth(1);
  assert.equal(room.finished, 1);
  for (const { at, phase } of room.seen) assert.ok(Math.abs(phase - phaseAt(ordered.timeline, at + OFFSET)) < 1e-6);
  assert.deepEqual(room.facts[0]?.kind, "shown");
  const rested = room.facts[room.facts.length - 1];
  assert.ok(rested?.kind === "rested" && rested.ending === "done" && Math.abs(rested.phase - 6) < 1e-6);
  const seconds = room.facts.filter((fact) => fact.kind === "second");
  assert.ok(seconds.length >= 6 && seconds.every((fact) => fact.frames >= 4 && fact.frames <= 6 && fact.longest_gap <= 17));
  const last = room.showings[room.showings.length - 1];
  assert.ok(last && !last.moving && last.rate === 0 && room.showings.length > 20);
});

test("what was shown begins with the motion: the rest before it is no part of it", () => {
  const room = new Room();
  room.player.play(set(1, 6, 1_530), room.now);
  room.pass(3_000);
  assert.equal(room.facts[0]?.kind, "shown");
  assert.ok(Math.abs(room.factsAt[0]! - 1_530) < 1, `${room.factsAt[0]}`);
});

test("tones begin with their pace too, and are told of once the first was heard", () => {
  const room = new Room();
  room.player.play(set(1, 6, 1_500, { channels: { eyes: false, ears: true, hands: false } }), room.now);
  room.pass(1_800);
  assert.equal(room.facts.length, 0);
  room.pass(1_500);
  assert.equal(room.facts[0]?.kind, "shown");
  assert.ok(Math.abs(room.factsAt[0]! - 1_500) < 1, `${room.factsAt[0]}`);
});

test("a page that hangs as the motion begins, and a set that is cut just after, are recorded", () => {
  const hung = new Room();
  hung.player.play(set(1, 6, 1_530), hung.now);
  hung.pass(1_400);
  hung.pass(500, true);
  hung.pass(1_500);
  const second = hung.facts.find((fact) => fact.kind === "second");
  assert.ok(second?.kind === "second" && second.longest_gap >= 350, JSON.stringify(hung.facts));
  const cut = new Room();
  cut.player.play(set(1, 6, 1_530), cut.now);
  cut.pass(1_590);
  cut.player.cut("stopped_by_client", cut.now);
  assert.deepEqual(
    cut.facts.map(({ kind }) => kind),
    ["shown", "rested"],
  );
});

test("it rests a second before it moves, even when the order came late", () => {
  const room = new Room();
  room.pass(1000);
  const shown = room.now;
  room.player.play(set(1, 6, room.now + 200), room.now);
  room.pass(12_000);
  assert.ok(room.seen.every(({ at, phase }) => at > shown + 1000 || phase === 0));
  room.assertSmooth(1.3);
  assert.equal(room.finished, 1);
});

test("a frame that is drawn late shows what was due at its own time", () => {
  const room = new Room();
  room.pass(1000);
  room.player.play(set(1, 60, room.now + 1200), room.now);
  room.pass(5000);
  const [last, before] = room.screen.windows.slice(-2).reverse();
  assert.ok(last && before && last.made > before.made && last.from <= last.made - 50, JSON.stringify({ last, before }));
  const late = room.seen.find(({ at }) => at === last.made - 50);
  assert.ok(late && room.screen.window && Math.abs(phaseAt(room.screen.window.shown, late.at) - late.phase) < 1e-9);
});

test("no window ends later than 3 s after the last sign of the desk, nor 1.6 s ahead", () => {
  const room = new Room();
  room.pass(1000);
  room.player.play(set(1, 60, room.now + 1200), room.now);
  room.pass(8000);
  room.deskSpeaks = false;
  room.pass(5000);
  for (const { made, to } of room.screen.windows) assert.ok(to <= room.lastSign + LAST_MOTION + 1 && to - made <= 1601, `${made} to ${to}`);
  assert.equal(room.silent, 1);
  assert.ok(room.restedAt <= room.lastSign + LAST_MOTION);
  assert.ok(room.restedAt >= room.lastSign + 700);
  const rested = room.facts[room.facts.length - 1];
  assert.ok(rested?.kind === "rested" && rested.ending === "link_lost");
  assert.equal(room.player.active, false);
});

test("what eases to rest by itself is cut like anything else", () => {
  const room = new Room();
  room.pass(1000);
  room.player.play(set(1, 60, room.now + 1200), room.now);
  room.pass(8000);
  room.deskSpeaks = false;
  while (room.silent === 0) room.pass(10);
  room.pass(150);
  assert.ok(room.player.active, "still easing");
  room.player.cut("stopped_by_client", room.now);
  const cutAt = room.now;
  assert.equal(room.player.active, false);
  room.pass(1000);
  assert.ok(room.restedAt <= cutAt, `moved until ${room.restedAt}, cut at ${cutAt}`);
  const rested = room.facts[room.facts.length - 1];
  assert.ok(rested?.kind === "rested" && rested.ending === "stopped_by_client");
});

test("cycles that the screen went on to show after a cut are counted, and a rest is told once, at the latest when the page is left", () => {
  const cutAfter = (late: number | undefined, draws = true) => {
    const room = new Room();
    room.pass(1000);
    room.player.play(set(1, 60, room.now + 1200), room.now);
    room.pass(6000);
    Object.assign(room, { draws, lastMoving: late === undefined ? undefined : room.now + late });
    room.player.cut("stopped_by_client", room.now);
    return room;
  };
  const phase = (room: Room) => room.facts.flatMap((fact) => (fact.kind === "rested" ? [fact.phase] : []));
  const [counted] = phase(cutAfter(undefined)) as [number];
  const [slow] = phase(cutAfter(50)) as [number];
  assert.ok(Math.abs(slow - counted - 0.05) < 1e-6, `${slow - counted} cycles of 50 ms at 1 Hz`);
  assert.deepEqual(phase(cutAfter(-20)), [counted], "never less than was seen when it was halted");
  const left = cutAfter(undefined, false);
  assert.deepEqual(phase(left), []);
  for (let i = 0; i < 2; i++) left.player.settle();
  assert.deepEqual(phase(left), [counted]);
});

test("a hung page comes to rest by itself and does not go on", () => {
  for (let hang = 0; hang < 400; hang += 50) {
    const room = new Room();
    room.pass(1000);
    room.player.play(set(1, 60, room.now + 1200), room.now);
    room.pass(6000 + hang);
    const began = room.now;
    room.pass(4000, true);
    assert.ok(room.restedAt <= began + 1600, `rests ${room.restedAt - began} ms into the hang`);
    room.pass(3000);
    room.assertSmooth(1);
    assert.ok(room.restedAt <= began + 1600, "moves again");
    const rested = room.facts[room.facts.length - 1];
    const shown = room.seen[room.seen.length - 1]!.phase;
    assert.ok(rested?.kind === "rested" && Math.abs(rested.phase - shown) < 1e-6, "counted what was shown, not what was planned");
  }
});

test("a change of rate that comes late never makes it jump", () => {
  const room = new Room();
  room.pass(1000);
  const first = set(1, 24, room.now + 1200);
  room.player.play(first, room.now);
  room.pass(5000);
  const at = room.now + OFFSET - 400;
  const phase = phaseAt(first.timeline, at);
  const [ramp, steady] = first.timeline.segments as [SetView["timeline"]["segments"][0], SetView["timeline"]["segments"][0]];
  const changed = {
    ...first,
    timeline: { segments: [ramp, { ...steady, lasts: at - steady.starts_at }, { starts_at: at, lasts: 60_000, phase, rate_from: 1.6, rate_to: 1.6 }] },
  };
  room.player.play(changed, room.now);
  room.pass(4000);
  room.assertSmooth(1.6 * 1.3);
  const { at: now, phase: reached } = room.seen[room.seen.length - 1]!;
  assert.ok(Math.abs(reached - phaseAt(changed.timeline, now + OFFSET)) < 1e-3, "caught up");
});

test("a change of rate that comes just in time begins at its time", () => {
  const room = new Room();
  room.pass(1000);
  const first = set(1, 24, room.now + 1200);
  room.player.play(first, room.now);
  room.pass(5000);
  const at = room.now + OFFSET + 10;
  const [ramp, steady] = first.timeline.segments as [SetView["timeline"]["segments"][0], SetView["timeline"]["segments"][0]];
  const shift = { starts_at: at, lasts: 500, phase: phaseAt(first.timeline, at), rate_from: 1, rate_to: 1.5 };
  const changed = { ...first, timeline: { segments: [ramp, { ...steady, lasts: at - steady.starts_at }, shift] } };
  room.player.play(changed, room.now);
  room.pass(45);
  const { at: now, phase } = room.seen[room.seen.length - 1]!;
  assert.ok(Math.abs(phase - phaseAt(changed.timeline, now + OFFSET)) < 1e-6);
  assert.ok(phase - phaseAt(first.timeline, now + OFFSET) > 5e-4, "it has begun");
});

test("an end asked for by the clinician, and one by the hard limit, are told apart from a plan that was met", () => {
  const endings = [set(1, 6, 2200, { length: { kind: "cycles", cycles: 24 } }), set(0.5, 180, 2200, { length: { kind: "open" } })].map((ordered) => {
    const room = new Room();
    room.pass(1000);
    room.player.play(ordered, room.now);
    room.pass((endOf(ordered.timeline) ?? 0) - OFFSET + 500);
    const rested = room.facts[room.facts.length - 1];
    return rested?.kind === "rested" ? rested.ending : undefined;
  });
  assert.deepEqual(endings, ["ended_by_clinician", "hard_limit"]);
});

test("cut notes what was reached", () => {
  const room = new Room();
  room.pass(1000);
  room.player.play(set(1, 24, room.now + 1200), room.now);
  room.pass(5000);
  const phase = room.screen.phase!;
  room.player.cut("stopped_by_client", room.now);
  const rested = room.facts[room.facts.length - 1];
  assert.ok(rested?.kind === "rested" && rested.ending === "stopped_by_client" && Math.abs(rested.phase - phase) < 1e-9);
  assert.equal(room.player.active, false);
});

test("each channel plays what it is made of, and nothing else", () => {
  const played = (channels: Partial<SetView["plan"]["channels"]>, { vibration = true, wanted = true, mayBlink = true } = {}) => {
    const room = new Room();
    room.vibration = vibration;
    room.mayBlink = mayBlink;
    room.pass(1000);
    const comfort = { ...usual, vibration: wanted };
    room.player.play(set(1, 6, room.now + 1200, { channels: { eyes: false, ears: false, hands: false, ...channels }, comfort }), room.now);
    room.pass(2000);
    if (room.screen.window) room.used.add("dot");
    if (room.pacer.window) room.used.add("figure");
    return [...room.used].sort();
  };
  assert.deepEqual(played({ eyes: true }), ["dot"]);
  assert.deepEqual(played({ eyes: true, ears: true }), ["dot", "tones"]);
  assert.deepEqual(played({ ears: true }), ["tones"]);
  assert.deepEqual(played({ hands: true }), ["buzz", "figure", "tones"]);
  assert.deepEqual(played({ eyes: true, hands: true }), ["buzz", "dot", "tones"]);
  // It buzzes only when it is wanted and was felt, and nothing blinks where the eyes are locked.
  assert.deepEqual(played({ hands: true }, { vibration: false }), ["figure", "tones"]);
  assert.deepEqual(played({ hands: true }, { wanted: false }), ["figure", "tones"]);
  assert.deepEqual(played({ hands: true }, { mayBlink: false }), ["buzz", "tones"]);
});
