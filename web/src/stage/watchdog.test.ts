import assert from "node:assert/strict";
import { test } from "node:test";
import { EASE, LAST_MOTION, SILENCE_LIMIT, Watchdog } from "./watchdog";

test("without any sign of the desk nothing may move", () => {
  const dog = new Watchdog();
  assert.equal(dog.tooSilent(0), true);
  dog.onBeat(100, 120, null, true);
  assert.equal(dog.tooSilent(120), true);
  assert.equal(dog.lastMotion, -Infinity);
});

test("the desk's silence counts, not the server's", () => {
  const dog = new Watchdog();
  // The server beats on for ever, but the desk was last heard at page time 1,000.
  for (let now = 1000; now <= 2500; now += 250) dog.onBeat(now, now, now - 1000, true);
  assert.equal(dog.silence(2500), 1500);
  assert.equal(dog.tooSilent(2500), false);
  assert.equal(dog.tooSilent(2501), true);
});

test("a beat that waited in a queue is no fresh sign", () => {
  const dog = new Watchdog();
  dog.onBeat(1000, 1010, 0, true);
  dog.onBeat(1250, 5000, 0, true);
  assert.equal(dog.silence(5000), 3750);
});

test("an older sign never takes the place of a newer one", () => {
  const dog = new Watchdog();
  dog.onBeat(1000, 1010, 0, true);
  dog.onBeat(1200, 1210, 700, true);
  assert.equal(dog.silence(1210), 210);
});

test("the limit follows what is usual, within 750 and 1,500 ms, once 100 gaps were seen", () => {
  const feed = (gap: number, count: number) => {
    const dog = new Watchdog();
    for (let i = 0; i <= count; i++) dog.onBeat(i * gap, i * gap, 0, true);
    return dog.limit;
  };
  assert.equal(feed(250, 99), SILENCE_LIMIT);
  assert.equal(feed(250, 100), 750);
  assert.equal(feed(500, 100), 1000);
  assert.equal(feed(1400, 100), SILENCE_LIMIT);
});

test("rare beats of a quiet room do not count as usual", () => {
  const dog = new Watchdog();
  for (let i = 0; i <= 300; i++) dog.onBeat(i * 5000, i * 5000, 0, false);
  assert.equal(dog.limit, SILENCE_LIMIT);
});

test("after a restart of the room only new signs count", () => {
  const dog = new Watchdog();
  dog.onBeat(90_000, 90_000, 0, true);
  dog.restart();
  assert.equal(dog.tooSilent(90_001), true);
  dog.onBeat(90_100, 90_120, 50, true);
  assert.equal(dog.silence(90_120), 70);
});

test("in virtual time: whatever the line does, easing ends before 3 s after the last sign", () => {
  let state = 1; // linear congruential generator, constants of Numerical Recipes
  const chance = () => (state = (state * 1664525 + 1013904223) % 2 ** 32) / 2 ** 32;
  for (let run = 0; run < 200; run++) {
    const dog = new Watchdog();
    let trueSign = -Infinity;
    let halted = Infinity;
    const cut = 2000 + chance() * 20_000;
    for (let now = 0; now < 30_000 && halted === Infinity; now += 50) {
      if (now < cut && chance() < 0.4) {
        const delay = chance() * 400;
        const silent = chance() * 300;
        dog.onBeat(now - delay, now, silent, true);
        trueSign = Math.max(trueSign, now - delay - silent);
      }
      if (Number.isFinite(trueSign) && dog.tooSilent(now)) halted = now;
    }
    assert.ok(halted + EASE <= trueSign + LAST_MOTION, `run ${run}: rests ${halted + EASE - trueSign} ms after the last sign`);
    assert.equal(dog.lastMotion, trueSign + LAST_MOTION);
  }
});
