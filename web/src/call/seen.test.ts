import assert from "node:assert/strict";
import { test } from "node:test";
import { countedIn, Seen } from "./seen";

const BOTH = { picture: true, voice: true };
const NEITHER = { picture: false, voice: false };
const NOTHING = { picture: undefined, voice: undefined };

/** Counts on until `until`, ms, with both coming. */
function well(seen: Seen, until: number, runs = false): void {
  for (let now = 0; now <= until; now += 250) seen.count({ pictures: now / 50 + 1, sound: now / 1000 + 0.1 }, BOTH, runs, now);
}

test("a picture that froze is said after two seconds, and ten minutes of a good line are never accused", () => {
  const seen = new Seen();
  for (let now = 0; now <= 600_000; now += 250) {
    seen.count({ pictures: now / 50 + 1, sound: now / 1000 + 0.1 }, BOTH, false, now);
    assert.deepEqual(seen.missing(now), NOTHING, `${now}`);
  }
  seen.count({ pictures: 12_001, sound: 602 }, BOTH, false, 601_750);
  assert.deepEqual(seen.missing(601_750), NOTHING, "not yet");
  seen.count({ pictures: 12_001, sound: 603 }, BOTH, false, 602_250);
  assert.deepEqual(seen.missing(602_250), { picture: 2_250, voice: undefined });
  seen.count({ pictures: 12_002, sound: 604 }, BOTH, false, 602_500);
  assert.deepEqual(seen.missing(602_500), NOTHING, "it comes again");
});

test("what never came is not missed: somebody without a camera, or on the telephone", () => {
  const seen = new Seen();
  for (let now = 0; now < 10_000; now += 250) seen.count({ pictures: 0, sound: now }, { picture: true, voice: true }, true, now);
  assert.deepEqual(seen.missing(10_000), NOTHING);
});

test("between sets the other may end it; in a set it is missed, whatever they say", () => {
  const between = new Seen();
  well(between, 5_000);
  for (let now = 5_250; now < 12_000; now += 250) between.count({ pictures: 101, sound: 5.1 }, NEITHER, false, now);
  assert.deepEqual(between.missing(12_000), NOTHING);
  const inSet = new Seen();
  well(inSet, 5_000, true);
  for (let now = 5_250; now <= 10_000; now += 250) inSet.count({ pictures: 101, sound: 5.1 }, NEITHER, true, now);
  assert.deepEqual(inSet.missing(10_000), { picture: 5_000, voice: 5_000 });
});

test("a connection that was negotiated anew and counts from nothing again is no frozen picture", () => {
  const seen = new Seen();
  well(seen, 5_000);
  for (let now = 5_250; now < 12_000; now += 250) {
    seen.count({ pictures: (now - 5_000) / 50, sound: (now - 5_000) / 1_000 }, BOTH, true, now);
    assert.deepEqual(seen.missing(now), NOTHING, `${now}`);
  }
});

test("another connection counts from nothing", () => {
  const seen = new Seen();
  well(seen, 5_000);
  seen.anew(false);
  for (let now = 5_250; now < 12_000; now += 250) seen.count({ pictures: 0, sound: 0 }, BOTH, true, now);
  assert.deepEqual(seen.missing(12_000), NOTHING);
});

test("in a set another connection forgets nobody: who was seen is missed until they are seen again", () => {
  const seen = new Seen();
  well(seen, 5_000, true);
  seen.anew(true);
  for (let now = 5_250; now <= 9_000; now += 250) seen.count({ pictures: 0, sound: 0 }, BOTH, true, now);
  assert.deepEqual(seen.missing(9_000), { picture: 4_000, voice: 4_000 });
  seen.count({ pictures: 1, sound: 1 }, BOTH, true, 9_250);
  assert.deepEqual(seen.missing(9_250), NOTHING);
});

// The names of W3C's Identifiers for WebRTC's Statistics API (inbound-rtp).
test("what came is counted, not what was played for want of it", () => {
  const report = [
    { type: "inbound-rtp", kind: "video", framesDecoded: 12 },
    { type: "inbound-rtp", kind: "audio", packetsReceived: 500, totalSamplesDuration: 10.01, concealedSamples: 240_000, totalSamplesReceived: 480_000 },
    { type: "outbound-rtp", kind: "video", framesDecoded: 99 },
  ];
  assert.deepEqual(countedIn(report), { pictures: 12, sound: 500 });
});
