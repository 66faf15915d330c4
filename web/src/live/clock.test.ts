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
      this.clock.onBeat({ id: ++this.id, sent: this.truth(this.page), echo: this.echo, desk_silent: null, desk_trip: 0 }, arrival);
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
  assert.ok(Math.abs(link.error(now)) < 0.01, `${link.error(now)}`);
  assert.ok(Math.abs(link.clock.bound(now) - 20) < 0.02);
  assert.ok(link.clock.spread(now) < 0.01);
});

test("what one direction is slower cannot be seen, but stays within the bound", () => {
  const link = new Link(5_000, 0, steady(90), steady(10));
  link.run(20, 50);
  const now = link.page + 90;
  assert.ok(Math.abs(link.error(now) + 40) < 0.01, "half the difference of both delays");
  assert.ok(link.clock.bound(now) >= 40);
});

test("within 0.5 ms rms at 40 ± 10 ms with clocks 40 ppm apart", () => {
  const link: Link = new Link(
    12_345,
    40e-6,
    () => 40 + 20 * (link.chance() - 0.5),
    () => 40 + 20 * (link.chance() - 0.5),
  );
  link.run(20, 50);
  link.clock.hold(true, link.page);
  const errors: number[] = [];
  link.run(4 * 120, 250, (now) => {
    errors.push(link.error(now));
    assert.ok(Math.abs(link.error(now)) <= link.clock.bound(now) + 0.5);
  });
  const rms = Math.sqrt(errors.reduce((sum, e) => sum + e * e, 0) / errors.length);
  assert.ok(rms < 0.5, `${rms}`);
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
  assert.ok(Math.abs(link.error(link.page + 10)) < 0.1);
});

test("a room that began anew is noticed from its echo, even without a word", () => {
  const link = new Link(0, 0, steady(20), steady(20));
  link.run(20, 50);
  const later = new Link(-900_000, 0, steady(20), steady(20));
  Object.assign(later, { clock: link.clock, page: link.page, id: 100 });
  later.run(3, 50);
  assert.ok(Math.abs(later.error(later.page + 20)) < 0.01);
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

test("one exchange gives the offset and half the delay of RFC 5905, section 8, worked by hand", () => {
  // theta = ((T2 - T1) + (T3 - T4)) / 2 and delta = (T4 - T1) - (T3 - T2), where T1 and T4 are read on the one clock and T2
  // and T3 on the other. The room sends at T1, the page receives at T2 and answers at T3 = T2, the room receives at T4. The
  // RFC's theta is the page's clock - the room's, so the room's offset is -theta. It says nothing of drift; its dispersion does.
  const exchanges = [
    // ((1030 - 1000) + (1030 - 1060)) / 2 = 0 and 1060 - 1000 = 60
    { T1: 1_000, T2: 1_030, T4: 1_060, theta: 0, delta: 60 },
    // ((5100 - 2000) + (5100 - 2080)) / 2 = (3100 + 3020) / 2 = 3060 and 80
    { T1: 2_000, T2: 5_100, T4: 2_080, theta: 3_060, delta: 80 },
    // ((400 - 9000) + (400 - 9140)) / 2 = (-8600 - 8740) / 2 = -8670 and 140: 20 ms there and 120 back look like 70 and 70
    { T1: 9_000, T2: 400, T4: 9_140, theta: -8_670, delta: 140 },
  ];
  for (const { T1, T2, T4, theta, delta } of exchanges) {
    const clock = new RoomClock();
    clock.onBeat({ id: 0, sent: T1, echo: null, desk_silent: null, desk_trip: 0 }, T2);
    // The next beat, 200 ms later and slower than the first, brings the echo and proves nothing more.
    const now = T2 + 200 + 50;
    clock.onBeat({ id: 1, sent: T1 + 200, echo: { id: 0, page: T2, heard: T4 }, desk_silent: null, desk_trip: 0 }, now);
    assert.ok(Math.abs(clock.roomTime(now) - now + theta) < 0.01, `${clock.roomTime(now) - now}`);
    // Both proofs are 250 ms old: 100 ppm of that is 0.025 ms.
    assert.ok(Math.abs(clock.bound(now) - delta / 2 - 0.025) < 0.01, `${clock.bound(now)}`);
  }
});

test("the skew of clocks 50 ppm apart is found: the offset holds through a minute without a beat", () => {
  const link: Link = new Link(
    0,
    50e-6,
    () => 40 + 20 * (link.chance() - 0.5),
    () => 40 + 20 * (link.chance() - 0.5),
  );
  link.run(4 * 300, 250);
  const now = link.page + 60_000;
  assert.ok(Math.abs(link.error(now)) < 1, `${link.error(now)}: without the skew it would be 3 ms`);
});

test("the bound holds, and grows with the silence", () => {
  const link: Link = new Link(0, -100e-6, steady(120), () => 20 + 5 * link.chance());
  link.run(40, 250);
  for (const later of [0, 1_000, 10_000, 50_000]) {
    const now = link.page + 120 + later;
    assert.ok(link.clock.bound(now) >= Math.abs(link.error(now)), `${later}: ${link.error(now)} of ${link.clock.bound(now)}`);
  }
  assert.ok(link.clock.bound(link.page + 50_000) > link.clock.bound(link.page + 1_000) + 4);
  assert.equal(link.clock.bound(link.page + 100_000), Infinity, "proofs of another minute say nothing");
});

for (const by of [3_600_000, -3_600_000]) {
  for (const held of [false, true]) {
    test(`a page clock that jumps ${by} ms (${held ? "while something moves" : "at rest"}) is found again, and time is told meanwhile`, () => {
      const link = new Link(0, 0, steady(30), steady(30));
      link.run(40, 250);
      link.clock.hold(held, link.page + 30);
      const jumped = new Link(-by, 0, steady(30), steady(30));
      Object.assign(jumped, { clock: link.clock, page: link.page + by, id: 1_000 });
      jumped.run(4, 250, (now) => assert.ok(Number.isFinite(link.clock.roomTime(now))));
      const now = jumped.page + 30;
      assert.ok(Math.abs(jumped.error(now)) < 0.01, `${jumped.error(now)}`);
      assert.ok(link.clock.bound(now) < 31, `${link.clock.bound(now)}`);
    });
  }
}

test("a computer that slept ten minutes, its page clock with it, is in step two beats after it woke", () => {
  const link: Link = new Link(
    500,
    30e-6,
    () => 20 + 10 * link.chance(),
    () => 20 + 10 * link.chance(),
  );
  link.run(200, 250);
  // Page time stood still; room time went on.
  const woken: Link = new Link(
    600_500,
    30e-6,
    () => 20 + 10 * woken.chance(),
    () => 20 + 10 * woken.chance(),
  );
  Object.assign(woken, { clock: link.clock, page: link.page, id: 1_000 });
  woken.run(3, 250);
  const now = woken.page + 30;
  assert.ok(Math.abs(woken.error(now)) <= 10, `${woken.error(now)}`);
  assert.ok(Math.abs(woken.error(now)) <= link.clock.bound(now));
});

test("a beat replayed from yesterday changes nothing", () => {
  const day = 86_400_000;
  const link = new Link(-100_000, 0, steady(20), steady(20));
  link.run(40, 250);
  const now = link.page + 20;
  const before = link.clock.roomTime(now);
  const sent = link.truth(now) - day;
  // Of this page and of another room: neither its room time nor its page time is of today.
  link.clock.onBeat({ id: 3, sent, echo: { id: 2, page: now - day, heard: sent }, desk_silent: 0, desk_trip: 0 }, now);
  link.clock.onBeat({ id: 4, sent, echo: { id: 3, page: now - day, heard: sent + 7_000 }, desk_silent: 0, desk_trip: 0 }, now);
  // An echo of the future cannot be either.
  link.clock.onBeat({ id: 5, sent, echo: { id: 4, page: now + day, heard: sent }, desk_silent: 0, desk_trip: 0 }, now);
  assert.ok(Math.abs(link.clock.roomTime(now) - before) < 0.01, `${link.clock.roomTime(now) - before}`);
  assert.ok(link.clock.bound(now) < 20.1, `${link.clock.bound(now)}`);
  link.run(4, 250);
  assert.ok(Math.abs(link.error(link.page + 20)) < 0.01);
});

test("times that are no numbers change nothing", () => {
  const link = new Link(0, 0, steady(20), steady(20));
  link.run(40, 250);
  const now = link.page + 20;
  const [room, bound] = [link.clock.roomTime(now), link.clock.bound(now)];
  for (const none of [NaN, Infinity, -Infinity]) {
    link.clock.onBeat({ id: 900, sent: none, echo: null, desk_silent: 0, desk_trip: 0 }, now);
    link.clock.onBeat({ id: 901, sent: now - 20, echo: null, desk_silent: 0, desk_trip: 0 }, none);
    link.clock.onBeat({ id: 902, sent: now - 20, echo: { id: 900, page: none, heard: now }, desk_silent: 0, desk_trip: 0 }, now);
    link.clock.onBeat({ id: 903, sent: now - 20, echo: { id: 901, page: now - 40, heard: none }, desk_silent: 0, desk_trip: 0 }, now);
  }
  assert.ok(Math.abs(link.clock.roomTime(now) - room) < 0.01);
  assert.ok(Math.abs(link.clock.bound(now) - bound) < 0.01);
});
