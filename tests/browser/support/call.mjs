// Picture and voice between two pages: what a test has to know of them, and how a client comes to have them.

export const THEIRS_AT_DESK = '.face > video:not(.self)';
export const THEIRS_AT_STAGE = '#call > video';

/** Goes through the client's check with camera and microphone on. `look`: what is done at the question, and while the own picture is seen. */
export async function checkWithCall(stage, look = () => {}) {
  await stage.tap('Start');
  await stage.tap('Done');
  await stage.tap('It fits');
  await stage.tap('About as long as my arm');
  await stage.until('Picture and voice');
  await look('the question about picture and voice');
  await stage.tap('Camera and microphone');
  await stage.page.getByText('This is your own picture.').waitFor();
  await stage.page.waitForFunction(() => document.querySelector('main .self').videoWidth > 0);
  await look('the own picture in the check');
  await stage.tap('Go on');
  // Left and right with the microphone open.
  await stage.sides();
  for (const question of ['A buzz', 'Your screen', 'The whole screen']) {
    if (await stage.page.getByRole('heading', { name: question }).isVisible()) await stage.tap('Skip');
  }
  await stage.until('Please wait');
}

/** Passes over what is left of the check, up to the door. */
export async function skipRest(stage) {
  const skip = stage.page.getByRole('button', { name: 'Skip', exact: true });
  while (await stage.heading() !== 'Please wait') {
    const was = await stage.heading();
    await skip.click();
    await stage.page.waitForFunction((old) => document.querySelector('main h1').textContent !== old, was);
  }
}

/** Keeps every connection that the page makes in `window.peers`, and every track of its devices in `window.opened`; it lasts over reloads. */
export const keepConnections = (page) => page.addInitScript(keepPeers);

/** Runs in a page before any other script, see `keepConnections`. */
export function keepPeers() {
  globalThis.peers = [];
  globalThis.opened = [];
  const { mediaDevices } = navigator;
  const given = mediaDevices?.getUserMedia.bind(mediaDevices);
  if (given) {
    mediaDevices.getUserMedia = async (wanted) => {
      const stream = await given(wanted);
      globalThis.opened.push(...stream.getTracks());
      return stream;
    };
  }
  const { RTCPeerConnection } = globalThis;
  globalThis.RTCPeerConnection = class extends RTCPeerConnection {
    constructor(config) {
      super(config);
      globalThis.peers.push(this);
    }
  };
}

/** What this page's side of the connection is known by (ICE's user fragment, RFC 8839, section 5.4): another with each looking for ways anew. */
export const waysOf = (page) => page.evaluate(() => /a=ice-ufrag:(\S+)/.exec(globalThis.peers.at(-1).localDescription.sdp)[1]);

/** Waits until it is another. */
export const looksAnew = (page, before) => page.waitForFunction((old) => !globalThis.peers.at(-1).localDescription.sdp.includes(`a=ice-ufrag:${old}\r`), before);

/** Waits until this page's player shows pictures of the other that go on. */
export async function sees(page, player) {
  await page.waitForFunction((selector) => document.querySelector(selector)?.videoWidth > 0, player, { timeout: 15_000 });
  await goesOn(page, player);
}

/** Waits until ten more pictures were shown. */
export async function goesOn(page, player) {
  const pictures = (selector) => document.querySelector(selector).getVideoPlaybackQuality().totalVideoFrames;
  const before = await page.evaluate(pictures, player);
  await page.waitForFunction(([selector, least]) => document.querySelector(selector).getVideoPlaybackQuality().totalVideoFrames > least, [player, before + 10], { timeout: 10_000 });
}

/** Both pages send small pictures, two a second, that all the machine is there for what is looked at. */
export async function sparing(...pages) {
  for (const page of pages) {
    await page.evaluate(async () => {
      const sender = globalThis.peers.at(-1).getSenders().find(({ track }) => track?.kind === 'video');
      const parameters = sender.getParameters();
      for (const encoding of parameters.encodings) Object.assign(encoding, { maxFramerate: 2, scaleResolutionDownBy: 4 });
      await sender.setParameters(parameters);
    });
  }
}

/** The page's picture, or its `audio`, stops going out, as when a camera hangs. @returns how it goes on again */
export async function freeze(page, kind = 'video') {
  await page.evaluate((wanted) => {
    globalThis.frozen = globalThis.peers.at(-1).getSenders().find(({ track }) => track?.kind === wanted);
    globalThis.thawed = globalThis.frozen.track;
    return globalThis.frozen.replaceTrack(null);
  }, kind);
  return () => page.evaluate(() => globalThis.frozen.replaceTrack(globalThis.thawed));
}
