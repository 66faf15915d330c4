import assert from "node:assert/strict";
import { test } from "node:test";
import { EASE, LAST_MOTION, MOST_LIMIT, MOST_TRIP, SILENCE_LIMIT, Watchdog } from "./watchdog";
import { generator } from "../live/random.fixture";

test("without any sign of the desk nothing may move", () => {
  const dog = new Watchdog();
  assert.equal(dog.tooSilent(0), true);
  dog.onBeat(100, 120, null, 0, true);
  assert.equal(dog.tooSilent(120), true);
  assert.equal(dog.lastMotion, -Infinity);
});

test("the desk's silence counts, not the server's", () => {
  const dog = new Watchdog();
  // The server beats on for ever, but the desk was last heard at page time 1,000.
  for (let now = 1000; now <= 2500; now += 250) dog.onBeat(now, now, now - 1000, 0, true);
  assert.equal(dog.silence(2500), 1500);
  assert.equal(dog.tooSilent(2500), false);
  assert.equal(dog.tooSilent(2501), true);
});

test("a beat that waited in a queue is no fresh sign", () => {
  const dog = new Watchdog();
  dog.onBeat(1000, 1010, 0, 0, true);
  dog.onBeat(1250, 5000, 0, 0, true);
  assert.equal(dog.silence(5000), 3750);
});

test("an older sign never takes the place of a newer one", () => {
  const dog = new Watchdog();
  dog.onBeat(1000, 1010, 0, 0, true);
  dog.onBeat(1200, 1210, 700, 0, true);
  assert.equal(dog.silence(1210), 210);
});

function feed(gap: number, count: number): Watchdog {
  const dog = new Watchdog();
  for (let i = 0; i <= count; i++) dog.onBeat(i * gap, i * gap, 0, 0, true);
  return dog;
}

test("the limit follows what is usual, within 750 and 1,850 ms, once 100 gaps were seen", () => {
  assert.equal(feed(250, 99).limit, SILENCE_LIMIT);
  assert.equal(feed(250, 100).limit, 750);
  assert.equal(feed(500, 100).limit, 1000);
  assert.equal(feed(1400, 100).limit, MOST_LIMIT);
});

test("a line that was lost and came back is not what is usual", () => {
  const dog = feed(250, 100);
  for (let i = 1; i <= 5; i++) dog.onBeat(25_000 + i * 4_000, 25_000 + i * 4_000, 0, 0, true);
  assert.equal(dog.limit, 750);
});

test("where more silence is borne the dot eases more briskly, and an end without silence takes its time", () => {
  // Signs every `gap` ms, the last of them at 100 * gap; [gap, limit, ease after it]
  for (const [gap, limit, ease] of [
    [250, 750, 600],
    [500, 1000, 400],
    [600, 1200, 300],
    [1400, 1850, 300],
  ] as const) {
    const dog = feed(gap, 100);
    const due = 100 * gap + limit;
    assert.equal(dog.restBy(due), due + ease);
    assert.equal(dog.restBy(due + 60), due + Math.max(ease, 260), "looked up late: rests no later, unless that were a jerk");
    assert.equal(dog.restBy(100 * gap), 100 * gap + EASE);
  }
});

test("after a hang the easing is cut short by the last moment of motion, and never lies in the past", () => {
  const dog = feed(250, 100);
  assert.equal(dog.restBy(25_000 + LAST_MOTION - 100), 25_000 + LAST_MOTION);
  assert.equal(dog.restBy(25_000 + LAST_MOTION + 100), 25_000 + LAST_MOTION + 100);
});

test("a sign told again is not a new one, though the clock was corrected in between", () => {
  const dog = feed(250, 100);
  // The server beats on; the desk was last heard at page time 25,000, now and then a little later.
  for (let i = 1; i <= 40; i++) dog.onBeat(25_000 + i * 100, 25_020 + i * 100, i * 100 - (i / 40) * 20, 0, true);
  assert.equal(dog.silence(29_000), 4_000);
  assert.equal(dog.limit, 750, "the silence itself is not what is usual here");
});

test("rare beats of a quiet room do not count as usual", () => {
  const dog = new Watchdog();
  for (let i = 0; i <= 300; i++) dog.onBeat(i * 5000, i * 5000, 0, 0, false);
  assert.equal(dog.limit, SILENCE_LIMIT);
});

test("after a restart of the room only new signs count", () => {
  const dog = new Watchdog();
  dog.onBeat(90_000, 90_000, 0, 0, true);
  dog.restart();
  assert.equal(dog.tooSilent(90_001), true);
  dog.onBeat(90_100, 90_120, 50, 0, true);
  assert.equal(dog.silence(90_120), 70);
});

test("the desk's round trip is borne on top of the limits, half a second of it at most, and the easing is what it was", () => {
  for (const [trip, borne] of [
    [0, 0],
    [300, 300],
    [2_000, 500],
    [-5, 0],
  ] as const) {
    const dog = new Watchdog();
    for (let i = 0; i <= 100; i++) dog.onBeat(i * 250, i * 250, borne, trip, true);
    assert.equal(dog.limit, 750 + borne);
    assert.equal(dog.restBy(dog.limit + 100 * 250 - borne), 100 * 250 - borne + 750 + borne + EASE);
  }
  const unknown = new Watchdog();
  unknown.onBeat(0, 0, 0, 300, true);
  assert.equal(unknown.limit, SILENCE_LIMIT + 300);
  // Limit, trip and easing on the worst of lines.
  assert.ok(MOST_LIMIT + MOST_TRIP + EASE < LAST_MOTION);
});

test("in virtual time: however long the desk's answers take, nothing moves 3 s after the desk was there", () => {
  const chance = generator(7);
  for (let run = 0; run < 300; run++) {
    const dog = new Watchdog();
    const dies = 5_000 + chance() * 10_000;
    const [toDesk, toStage, slow] = [chance() * 200, chance() * 200, chance() * 2_000];
    // The room's beats to the desk: answered while it is there, and heard `slow` or so later, in order.
    const signs: { alive: number; there: number; heard: number }[] = [];
    for (let sent = 0; sent + toDesk < dies; sent += 250) {
      const heard = Math.max(signs[signs.length - 1]?.heard ?? 0, sent + toDesk + Math.min(slow, sent / 4) + chance() * 100);
      signs.push({ alive: sent, there: sent + toDesk, heard });
    }
    const gone = signs[signs.length - 1]!.there;
    let halted = Infinity;
    for (let now = 0; now < 30_000 && halted === Infinity; now += 50) {
      const sent = now - toStage;
      const last = signs.filter(({ heard }) => heard <= sent).at(-1);
      if (now % 250 === 0 && last) dog.onBeat(sent, now, sent - last.alive, slow + toDesk, true);
      if (now > 4_000 && dog.tooSilent(now)) halted = now;
    }
    assert.ok(dog.restBy(halted) <= gone + LAST_MOTION, `run ${run}: rests ${dog.restBy(halted) - gone} ms after the desk was there`);
    assert.ok(dog.lastMotion <= gone + LAST_MOTION);
  }
});

test("in virtual time: whatever the line does, easing ends before 3 s after the last sign", () => {
  const chance = generator(1);
  for (let run = 0; run < 200; run++) {
    const dog = new Watchdog();
    let trueSign = -Infinity;
    let halted = Infinity;
    const cut = 2000 + chance() * 20_000;
    for (let now = 0; now < 30_000 && halted === Infinity; now += 50) {
      if (now < cut && chance() < 0.4) {
        const delay = chance() * 400;
        const silent = chance() * 300;
        dog.onBeat(now - delay, now, silent, 0, true);
        trueSign = Math.max(trueSign, now - delay - silent);
      }
      if (Number.isFinite(trueSign) && dog.tooSilent(now)) halted = now;
    }
    assert.ok(dog.restBy(halted) <= trueSign + LAST_MOTION, `run ${run}: rests ${dog.restBy(halted) - trueSign} ms after the last sign`);
    // Signs nearer to each other than the clock is sure of count as one.
    assert.ok(dog.lastMotion <= trueSign + LAST_MOTION && dog.lastMotion > trueSign + LAST_MOTION - 50);
  }
});
