import assert from "node:assert/strict";
import { test } from "node:test";
import { inTheWay, OwnMedia } from "./own";

class Track {
  enabled = true;
  muted = false;
  stopped = false;
  onended: () => void = () => undefined;
  constructor(readonly kind: string) {}
  stop(): void {
    this.stopped = true;
  }
  getSettings(): MediaTrackSettings {
    return { deviceId: `first ${this.kind}` };
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

test("a camera that is let go of goes dark, and one that is unplugged is said", async () => {
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
  assert.deepEqual([own.voice, own.standing.voice, changes > before], [null, "stopped", true]);
  own.close();
  assert.deepEqual(own.standing, { picture: "off", voice: "off" });
});

/** Devices that answer when they are told to. */
function slow() {
  const answers: { give: (track: Track) => void; fail: (name: string) => void }[] = [];
  const getUserMedia = () =>
    new Promise<MediaStream>((resolve, reject) => {
      answers.push({
        give: (track) => resolve({ getTracks: () => [track] } as unknown as MediaStream),
        fail: (name) => reject(Object.assign(new Error(), { name })),
      });
    });
  return { getUserMedia, answers };
}

const settle = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 5));

test("a device that comes when it is not wanted any more is let go of at once", async () => {
  for (const unwish of [(own: OwnMedia) => own.hide(), (own: OwnMedia) => own.hush(), (own: OwnMedia) => own.close()]) {
    const late = slow();
    const own = new OwnMedia(late, () => undefined);
    const opened = own.open({ picture: true, voice: false });
    unwish(own);
    const camera = new Track("video");
    late.answers[0]?.give(camera);
    await opened;
    assert.deepEqual([camera.stopped, own.picture, own.standing.picture], [true, null, "off"]);
  }
});

test("of two wishes the last holds, whichever comes first", async () => {
  const late = slow();
  const own = new OwnMedia(late, () => undefined);
  const opened = [own.open({ picture: true, voice: false, camera: "a" }), own.open({ picture: true, voice: false, camera: "b" })];
  const [a, b] = [new Track("video"), new Track("video")];
  late.answers[1]?.give(b);
  late.answers[0]?.give(a);
  await Promise.all(opened);
  assert.deepEqual([own.picture === (b as unknown), a.stopped, b.stopped], [true, true, false]);
});

test("mute pressed while the microphone is being opened holds once it is there", async () => {
  const late = slow();
  const own = new OwnMedia(late, () => undefined);
  const opened = own.open({ picture: false, voice: true });
  assert.equal(own.opensVoice, true);
  own.mute(true);
  const microphone = new Track("audio");
  late.answers[0]?.give(microphone);
  await opened;
  assert.deepEqual([microphone.enabled, own.opensVoice], [false, false]);
});

test("another device that cannot be had brings back the one before, and what is sent is said to be sent", async () => {
  const late = slow();
  const own = new OwnMedia(late, () => undefined);
  const opened = own.open({ picture: false, voice: true });
  const first = new Track("audio");
  late.answers[0]?.give(first);
  await opened;
  const changed = own.change("voice", "another");
  assert.equal(first.stopped, true, "on phones the second opens only once the first is let go of");
  assert.equal(own.standing.voice, "off", "nothing is sent meanwhile");
  late.answers[1]?.fail("NotReadableError");
  await settle();
  const again = new Track("audio");
  late.answers[2]?.give(again);
  await changed;
  assert.deepEqual([own.voice === (again as unknown), own.standing.voice], [true, "on"]);
});

test("of two choices of a device the last holds, and the one before both does not come back", async () => {
  const late = slow();
  const own = new OwnMedia(late, () => undefined);
  const opened = own.open({ picture: true, voice: false });
  late.answers[0]?.give(new Track("video"));
  await opened;
  const changed = [own.change("picture", "b"), own.change("picture", "c")];
  const [b, c] = [new Track("video"), new Track("video")];
  late.answers[1]?.give(b);
  await settle();
  late.answers[2]?.give(c);
  await Promise.all(changed);
  assert.deepEqual([late.answers.length, own.picture === (c as unknown), b.stopped, own.standing.picture], [3, true, true, "on"]);
});

test("where both fail and nobody wants them any more, neither is asked for alone", async () => {
  const late = slow();
  const own = new OwnMedia(late, () => undefined);
  const opened = own.open(both);
  own.close();
  late.answers[0]?.fail("NotAllowedError");
  await opened;
  assert.deepEqual([late.answers.length, own.standing], [1, { picture: "off", voice: "off" }]);
});
