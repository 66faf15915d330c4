import assert from "node:assert/strict";
import { test } from "node:test";
import type { Beat } from "../wire/Beat";
import { RoomClock } from "./clock";

/** A link and two clocks that run apart, in virtual time; deterministic noise. */
class Link {
  readonly clock = new RoomClock();
  page = 1_000_000;
  private id = 0;
  private echo: Beat["echo"] = null;
  private state = 7;

  constructor(
    /** Room time - page time at page time 1,000,000. */
    private readonly offset: number,
    private readonly skew: number,
    private readonly down: () => number,
    private readonly up: () => number,
  ) {}

  /** A number from 0 to 1 of a linear congruential generator (constants of Numerical Recipes). */
  chance(): number {
    this.state = (this.state * 1664525 + 1013904223) % 2 ** 32;
    return this.state / 2 ** 32;
  }

  truth(page: number): number {
    return page + this.offset + this.skew * (page - 1_000_000);
  }

  /** One beat every `every` ms, `count` times; `look` is called after each. */
  run(count: number, every: number, look: (now: number) => void = () => {}): void {
    for (let i = 0; i < count; i++) {
      this.page += every;
      const arrival = this.page + this.down();
      this.clock.onBeat({ id: ++this.id, sent: this.truth(this.page), echo: this.echo, desk_silent: null }, arrival);
      this.echo = { id: this.id, page: arrival, heard: this.truth(arrival + this.up()) };
      look(arrival);
    }
  }

  error(now: number): number {
    return this.clock.roomTime(now) - this.truth(now);
  }
}

const steady = (ms: number) => () => ms;

test("nothing is known until both directions were heard", () => {
  const link = new Link(-990_000, 0, steady(20), steady(20));
  link.run(1, 50);
  assert.equal(link.clock.known, false);
  assert.ok(Number.isNaN(link.clock.roomTime(1)));
  assert.equal(link.clock.bound(1), Infinity);
  link.run(1, 50);
  assert.equal(link.clock.known, true);
});

test("equal delays are found exactly, and the bound is half the round trip", () => {
  const link = new Link(-990_000, 0, steady(20), steady(20));
  link.run(20, 50);
  const now = link.page + 20;
  assert.ok(Math.abs(link.error(now)) < 1e-6);
  assert.ok(Math.abs(link.clock.bound(now) - 20) < 0.01);
  assert.ok(link.clock.spread(now) < 0.01);
});

test("what one direction is slower cannot be seen, but stays within the bound", () => {
  const link = new Link(5_000, 0, steady(90), steady(10));
  link.run(20, 50);
  const now = link.page + 90;
  assert.ok(Math.abs(link.error(now) + 40) < 1e-6, "half the difference of both delays");
  assert.ok(link.clock.bound(now) >= 40);
});

test("within 2 ms rms at 40 ± 10 ms with clocks 40 ppm apart", () => {
  const link: Link = new Link(12_345, 40e-6, () => 40 + 20 * (link.chance() - 0.5), () => 40 + 20 * (link.chance() - 0.5));
  link.run(20, 50);
  link.clock.hold(true, link.page);
  const errors: number[] = [];
  link.run(4 * 120, 250, (now) => {
    errors.push(link.error(now));
    assert.ok(Math.abs(link.error(now)) <= link.clock.bound(now) + 0.5);
  });
  const rms = Math.sqrt(errors.reduce((sum, e) => sum + e * e, 0) / errors.length);
  assert.ok(rms < 2, `${rms}`);
});

test("while held, room time never jumps and is worked in at 5 ms a second at most", () => {
  let delay = 80;
  const link = new Link(0, 0, () => delay, steady(10));
  link.run(4, 50);
  link.clock.hold(true, link.page + delay);
  delay = 10; // the way down clears: the estimate moves by 35 ms
  let before = { page: link.page + 80, room: link.clock.roomTime(link.page + 80) };
  link.run(40, 250, (now) => {
    const room = link.clock.roomTime(now);
    const gained = room - before.room - (now - before.page);
    assert.ok(Math.abs(gained) <= 0.005 * (now - before.page) + 1e-3, `${gained}`);
    before = { page: now, room };
  });
  assert.ok(Math.abs(link.error(before.page)) < 0.1, "worked in after 7 s");
});

test("not held, a correction takes effect at once", () => {
  let delay = 80;
  const link = new Link(0, 0, () => delay, steady(10));
  link.run(4, 50);
  delay = 10;
  link.run(1, 250);
  assert.ok(Math.abs(link.error(link.page + 10)) < 1e-6);
});

test("a room that began anew is noticed from its echo, even without a word", () => {
  const link = new Link(0, 0, steady(20), steady(20));
  link.run(20, 50);
  const later = new Link(-900_000, 0, steady(20), steady(20));
  Object.assign(later, { clock: link.clock, page: link.page, id: 100 });
  later.run(3, 50);
  assert.ok(Math.abs(later.error(later.page + 20)) < 1e-6);
});

test("page time is the inverse of room time, under a slew too", () => {
  let delay = 80;
  const link = new Link(300, 0, () => delay, steady(10));
  link.run(4, 50);
  link.clock.hold(true, link.page + delay);
  delay = 10;
  link.run(1, 250);
  const now = link.page + 10;
  const room = link.clock.roomTime(now) + 1500;
  assert.ok(Math.abs(link.clock.roomTime(link.clock.pageTime(room, now)) - room) < 0.1);
});
