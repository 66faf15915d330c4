// The client's page gets another address in the middle of a set: when both see each other again, and that the set has come to rest meanwhile.

import { spawnSync } from 'node:child_process';
import { checkWithCall, goesOn, keepConnections, sees, THEIRS_AT_DESK, THEIRS_AT_STAGE } from '../../../browser/support/call.mjs';
import { launch } from '../../../browser/support/chromium.mjs';
import { LOCATION, openScene } from '../../../browser/support/scene.mjs';
import { atMost, quantile } from '../../support/judge.mjs';
import { NoTun, openTun, whyNoTun } from '../../support/tun.mjs';

export default { name: 'another network', needs: ['portal', 'browser', 'relay'], run };

const TRIES = 10;
const AT_MOST = 5_000;
/** Of the range kept for measuring networks (RFC 2544), beside the links' own: the relay is where both pages get to. */
const RELAY = '198.19.255.1';
/** Without a picture for so long the old way was given up, ms: each picture is due after 30 or 40. */
const GAP = 300;

async function run() {
  const why = whyNoTun();
  if (why) return { verdict: 'SKIP', text: why };
  address('add');
  try {
    return await measured();
  } catch (fault) {
    if (fault instanceof NoTun) return { verdict: 'SKIP', text: fault.message };
    throw fault;
  } finally {
    address('del');
  }
}

function address(what) {
  const { status, stderr } = spawnSync('ip', ['address', what, `${RELAY}/32`, 'dev', 'lo'], { encoding: 'utf8' });
  if (status !== 0) throw new Error(`the relay's address could not be set: ${stderr}`);
}

async function measured() {
  const scene = await openScene({ relay: RELAY });
  let tun;
  try {
    tun = await openTun(scene.house.origin, 1);
    const pages = await inCall(scene, tun);
    const moves = [];
    for (let i = 0; i < TRIES; i++) moves.push(await one(scene, tun, pages));
    const rested = moves.filter(({ word }) => !['RUNNING', 'EASING'].includes(word)).length;
    return [
      atMost(quantile(moves.map(({ back }) => back), 0.95), AT_MOST, ' ms', `both see each other again, p95 of ${TRIES}:`),
      atMost(TRIES - rested, 0, ' sets', `of ${TRIES} not at rest when the picture was back (${[...new Set(moves.map(({ word }) => word))].join(', ')}):`),
    ];
  } finally {
    await scene.close();
    await tun?.close();
  }
}

/** A session in a call, the client's browser beyond the link. */
async function inCall(scene, tun) {
  scene.far = await launch({ ...tun.browser, flags: scene.devices });
  const desk = await scene.openDesk();
  const client = await scene.clientPage({ width: 640, height: 400 });
  for (const page of [desk.page, client]) await keepConnections(page);
  await desk.page.reload();
  await desk.until('WAITING');
  await scene.join(client);
  await checkWithCall(scene.stage);
  await scene.admit();
  await desk.press('u');
  const pages = [[desk.page, THEIRS_AT_DESK], [client, THEIRS_AT_STAGE]];
  for (const [page, player] of pages) {
    await sees(page, player);
    await page.evaluate(keepPictures, player);
  }
  return pages;
}

/** @returns `{back, word}`: ms until both see each other, and the desk's word then */
async function one(scene, tun, pages) {
  await scene.settle();
  await scene.desk.start();
  await scene.stage.untilPage('running');
  await scene.desk.page.waitForTimeout(2_000);
  const since = Date.now();
  await tun.move();
  const backs = await Promise.all(pages.map(([page]) => backAfter(page, since)));
  const word = await scene.desk.word();
  for (const [page, player] of pages) await goesOn(page, player);
  return { back: Math.max(...backs) - since, word };
}

/** Runs in a page: when each picture of the other was shown, by the machine's clock. */
function keepPictures(selector) {
  globalThis.pictures = [];
  const video = document.querySelector(selector);
  const keep = () => {
    globalThis.pictures.push(Date.now());
    video.requestVideoFrameCallback(keep);
  };
  video.requestVideoFrameCallback(keep);
}

/** When the first picture after the gap came. */
async function backAfter(page, since) {
  const back = await page.waitForFunction(([from, gap]) => {
    const after = globalThis.pictures.filter((at) => at >= from - 1_000);
    return after.find((at, i) => at > from && i > 0 && at - after[i - 1] > gap);
  }, [since, GAP], { timeout: 60_000, polling: 50 });
  return back.jsonValue();
}
