import assert from "node:assert/strict";
import { test } from "node:test";
import { Line, sendingIn } from "./line";

/** A report every five seconds from `from` to `to`, looked at four times a second; the times at which something changed. */
function during(line: Line, lost: number, from: number, to: number): number[] {
  const changes: number[] = [];
  for (let now = from; now <= to; now += 250) if (line.judge({ at: now - (now % 5_000), lost, trip: 60 }, now)) changes.push(now);
  return changes;
}

test("a good line is left alone, and one bad report is none, however often it is read", () => {
  const line = new Line();
  assert.deepEqual([during(line, 0, 0, 599_750), during(line, 0.5, 600_000, 604_750), during(line, 0, 605_000, 620_000), line.spares], [[], [], [], false]);
});

test("the picture gives way to the voice at the second bad report, and comes back after ten good seconds", () => {
  const line = new Line();
  assert.deepEqual([during(line, 0.2, 0, 9_750), line.spares], [[5_000], true]);
  assert.deepEqual([during(line, 0, 10_000, 24_750), line.spares], [[20_000], false]);
});

test("brought back too soon, it waits twice as long the next time", () => {
  const line = new Line();
  during(line, 0.2, 0, 9_750);
  during(line, 0, 10_000, 24_750);
  during(line, 0.2, 25_000, 34_750);
  assert.equal(line.spares, true);
  assert.deepEqual(during(line, 0, 35_000, 80_000), [55_000]);
});

test("between good and poor nothing changes, and what is not known is no fault", () => {
  const line = new Line();
  assert.deepEqual(during(line, 0.05, 0, 60_000), []);
  assert.equal(line.judge({ at: 61_000, lost: undefined, trip: undefined }, 61_000), false);
  assert.equal(line.judge({ at: undefined, lost: 0.5, trip: undefined }, 61_000), false);
  during(line, 0.2, 65_000, 74_750);
  assert.deepEqual([during(line, 0.05, 75_000, 200_000), line.spares], [[], true]);
});

// The names of W3C's Identifiers for WebRTC's Statistics API (remote-inbound-rtp; roundTripTime in seconds).
test("the report of the other end on the voice is read", () => {
  const report = [
    { type: "remote-inbound-rtp", kind: "video", fractionLost: 0.9 },
    { type: "remote-inbound-rtp", kind: "audio", timestamp: 5_000, fractionLost: 0.25, roundTripTime: 0.12 },
  ];
  assert.deepEqual(
    [sendingIn(report), sendingIn([])],
    [
      { at: 5_000, lost: 0.25, trip: 120 },
      { at: undefined, lost: undefined, trip: undefined },
    ],
  );
});
