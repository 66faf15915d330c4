// From the clinician's "Admit" to the first picture and the first sound of the other, on both pages, by the relay.

import { checkWithCall, keepConnections, THEIRS_AT_DESK, THEIRS_AT_STAGE } from '../../../browser/support/call.mjs';
import { LOCATION, openScene } from '../../../browser/support/scene.mjs';
import { atMost, quantile } from '../../support/judge.mjs';

export default { name: 'admitted to first picture and sound', needs: ['portal', 'browser', 'relay'], run };

const TRIES = 20;
const AT_MOST = 2_000;

async function run() {
  const scene = await openScene({ relay: true });
  try {
    const waits = [];
    for (let i = 0; i < TRIES; i++) waits.push(await one(scene));
    const p95 = (of) => quantile(waits.map(of), 0.95);
    const parts = ['desk', 'stage'].map((side) => `${side} picture ${p95((wait) => wait[side].picture)}, sound ${p95((wait) => wait[side].sound)}`);
    const result = atMost(p95(({ desk, stage }) => Math.max(desk.picture, desk.sound, stage.picture, stage.sound)), AT_MOST, ' ms', `all four, p95 of ${TRIES}:`);
    return { ...result, text: `${result.text}; p95 by itself, ms: ${parts.join('; ')}` };
  } finally {
    await scene.close();
  }
}

/** A session of its own. @returns `{desk, stage}`, each `{picture, sound}`: ms from the click */
async function one(scene) {
  const desk = await scene.openDesk();
  await watch(desk.page, THEIRS_AT_DESK);
  await desk.page.reload();
  await desk.until('WAITING');
  const page = await scene.clientPage();
  await watch(page, THEIRS_AT_STAGE);
  await scene.join(page);
  await checkWithCall(scene.stage);
  await desk.admit({ location: LOCATION, opening: false });
  const firsts = await Promise.all([desk.page, page].map(firstsOf));
  const admitted = await desk.page.evaluate(() => globalThis.clicked);
  await scene.leave();
  const [atDesk, atStage] = firsts.map(({ picture, sound }) => ({ picture: picture - admitted, sound: sound - admitted }));
  return { desk: atDesk, stage: atStage };
}

/** When a page first shows a picture of the other and first plays a sound of theirs, and when it was last clicked, by the machine's clock. */
async function watch(page, player) {
  await keepConnections(page);
  await page.addInitScript((selector) => {
    const firsts = globalThis.firsts = {};
    addEventListener('click', () => { globalThis.clicked = Date.now(); }, { capture: true });
    const look = async () => {
      const video = document.querySelector(selector);
      if (video?.getVideoPlaybackQuality().totalVideoFrames > 0) firsts.picture ??= Date.now();
      const report = await globalThis.peers.at(-1)?.getStats();
      const played = [...report?.values() ?? []].some(({ type, kind, jitterBufferEmittedCount }) => type === 'inbound-rtp' && kind === 'audio' && jitterBufferEmittedCount > 0);
      if (played && !video.paused) firsts.sound ??= Date.now();
      if (!firsts.picture || !firsts.sound) setTimeout(look, 20);
    };
    void look();
  }, player);
}

async function firstsOf(page) {
  await page.waitForFunction(() => globalThis.firsts.picture && globalThis.firsts.sound, undefined, { timeout: 20_000 });
  return page.evaluate(() => globalThis.firsts);
}
