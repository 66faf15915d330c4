import assert from "node:assert/strict";
import { test } from "node:test";
import { inTheWay, OwnMedia } from "./own";

class Track {
  enabled = true;
  stopped = false;
  onended: () => void = () => undefined;
  constructor(readonly kind: string) {}
  stop(): void {
    this.stopped = true;
  }
}

/** Devices that fail as `faults` says: for both at once, for a picture alone, for a voice alone. */
function devices(faults: { both?: string; picture?: string; voice?: string }) {
  const asked: string[] = [];
  const tracks: Track[] = [];
  const getUserMedia = ({ video, audio }: MediaStreamConstraints): Promise<MediaStream> => {
    const what = video && audio ? "both" : video ? "picture" : "voice";
    asked.push(what);
    const name = faults[what];
    if (name !== undefined) return Promise.reject(Object.assign(new Error(), { name }));
    const made = [video ? new Track("video") : undefined, audio ? new Track("audio") : undefined].filter((track) => track !== undefined);
    tracks.push(...made);
    return Promise.resolve({ getTracks: () => made } as unknown as MediaStream);
  };
  return { getUserMedia, asked, tracks };
}

const both = { picture: true, voice: true };

test("the browser asks once for both; where the camera fails, the voice is still sent", async () => {
  const good = devices({});
  const own = new OwnMedia(good, () => undefined);
  await own.open(both);
  assert.deepEqual([good.asked, own.standing], [["both"], { picture: "on", voice: "on" }]);
  const none = devices({ both: "NotFoundError", picture: "NotFoundError" });
  const heard = new OwnMedia(none, () => undefined);
  await heard.open(both);
  assert.deepEqual(heard.standing, { picture: "absent", voice: "on" });
  assert.equal(heard.voice !== null && heard.picture === null, true);
});

test("refused, taken, not there: each has its name, and nothing is thrown", async () => {
  for (const [name, standing] of [
    ["NotAllowedError", "refused"],
    ["NotReadableError", "taken"],
    ["NotFoundError", "absent"],
    ["TypeError", "unable"],
  ] as const) {
    const own = new OwnMedia(devices({ both: name, picture: name, voice: name }), () => undefined);
    await own.open(both);
    assert.deepEqual(own.standing, { picture: standing, voice: standing });
    assert.equal(inTheWay(Object.assign(new Error(), { name })), standing);
  }
  const bare = new OwnMedia(undefined, () => undefined);
  await bare.open(both);
  assert.deepEqual(bare.standing, { picture: "unable", voice: "unable" });
});

test("muted, nothing of the voice is sent, also of a microphone that is opened later", async () => {
  const some = devices({});
  const own = new OwnMedia(some, () => undefined);
  await own.open({ picture: false, voice: true });
  own.mute(true);
  assert.equal(some.tracks[0]?.enabled, false);
  await own.open({ picture: false, voice: true, microphone: "another" });
  assert.deepEqual([some.tracks[0]?.stopped, some.tracks[1]?.enabled], [true, false]);
  own.mute(false);
  assert.equal(some.tracks[1]?.enabled, true);
});

test("a camera that is let go of goes dark, and one that another program takes is said", async () => {
  const some = devices({});
  let changes = 0;
  const own = new OwnMedia(some, () => {
    changes += 1;
  });
  await own.open(both);
  own.hide();
  assert.deepEqual([some.tracks[0]?.stopped, own.picture, own.standing.picture], [true, null, "off"]);
  const before = changes;
  some.tracks[1]?.onended();
  assert.deepEqual([own.voice, own.standing.voice, changes > before], [null, "taken", true]);
  own.close();
  assert.deepEqual(own.standing, { picture: "off", voice: "off" });
});
