import assert from "node:assert/strict";
import { test } from "node:test";
import { Line, sendingIn } from "./line";

/** Judges the same line every second from `from` to `to`; the times at which something changed. */
function during(line: Line, lost: number, from: number, to: number): number[] {
  const changes: number[] = [];
  for (let now = from; now <= to; now += 1_000) if (line.judge({ lost, trip: 60 }, now)) changes.push(now);
  return changes;
}

test("a good line is left alone, and one bad second is none", () => {
  const line = new Line();
  assert.deepEqual(during(line, 0, 0, 600_000), []);
  line.judge({ lost: 0.5, trip: 60 }, 601_000);
  line.judge({ lost: 0, trip: 60 }, 602_000);
  assert.equal(line.spares, false);
});

test("the picture gives way to the voice after three seconds, and comes back after ten good ones", () => {
  const line = new Line();
  assert.deepEqual([during(line, 0.2, 0, 5_000), line.spares], [[3_000], true]);
  assert.deepEqual([during(line, 0, 6_000, 17_000), line.spares], [[16_000], false]);
});

test("brought back too soon, it waits twice as long the next time", () => {
  const line = new Line();
  during(line, 0.2, 0, 3_000);
  during(line, 0, 4_000, 14_000);
  assert.equal(line.spares, false);
  during(line, 0.2, 15_000, 18_000);
  assert.equal(line.spares, true);
  assert.deepEqual(during(line, 0, 19_000, 60_000), [39_000]);
});

test("between good and poor nothing changes, and what is not known is no fault", () => {
  const line = new Line();
  assert.deepEqual(during(line, 0.05, 0, 60_000), []);
  assert.equal(line.judge({ lost: undefined, trip: undefined }, 61_000), false);
  during(line, 0.2, 62_000, 65_000);
  assert.deepEqual([during(line, 0.05, 66_000, 200_000), line.spares], [[], true]);
});

// The names of W3C's Identifiers for WebRTC's Statistics API (remote-inbound-rtp; roundTripTime in seconds).
test("the report of the other end on the voice is read", () => {
  const report = [
    { type: "remote-inbound-rtp", kind: "video", fractionLost: 0.9 },
    { type: "remote-inbound-rtp", kind: "audio", fractionLost: 0.25, roundTripTime: 0.12 },
  ];
  assert.deepEqual(
    [sendingIn(report), sendingIn([])],
    [
      { lost: 0.25, trip: 120 },
      { lost: undefined, trip: undefined },
    ],
  );
});
