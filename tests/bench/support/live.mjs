// A real session for a line of the benchmark: real portal, real Chromium on both sides, links that can be slowed.

import { fresh, motionOf, sampled, stillFor, underWay, watchDot } from '../../browser/support/motion.mjs';
import { checkWithCall, keepConnections, sees, THEIRS_AT_DESK, THEIRS_AT_STAGE } from '../../browser/support/call.mjs';
import { LOCATION, openScene } from '../../browser/support/scene.mjs';
import { Stage } from '../../browser/support/stage.mjs';
import { chance } from './judge.mjs';
import { transit } from './link.mjs';

/**
 * A session up to where a set may start.
 *
 * @param {object} [options] link: one of `LINKS` of link.mjs for both sides' every way, or none; comfort: fields of the
 *   client's comfort sheet; sound: whether the client listens to the tones of the check; call: both see and hear each other, and
 *   their pages keep their connections; view: the size of the stage, small where it is
 *   filmed, since taking the pictures costs time
 */
export async function openLive({ link, seed = 1, comfort, sound = true, call = false, view = { width: 640, height: 400 } } = {}) {
  const scene = await openScene({ farDesk: link !== undefined, relay: call });
  try {
    const desk = await scene.openDesk({ comfort });
    const page = await scene.clientPage(view);
    if (call) await keepBoth(desk, page);
    await watchDot(page);
    const stage = scene.stage = new Stage(page);
    await stage.join(await desk.mint());
    await (call ? checkWithCall(stage) : sound ? stage.check() : stage.skipCheck());
    await desk.admit({ location: LOCATION });
    await desk.sight();
    if (call) await Promise.all([sees(desk.page, THEIRS_AT_DESK), sees(page, THEIRS_AT_STAGE)]);
    if (link) {
      scene.link.setDelay(one(link, seed));
      scene.deskLink.setDelay(one(link, seed + 1));
    }
    return new Live(scene, desk, stage);
  } catch (fault) {
    await scene.close();
    throw fault;
  }
}

/** Both pages keep their connections: the desk, which is there already, is loaded anew. */
async function keepBoth(desk, page) {
  await Promise.all([desk.page, page].map(keepConnections));
  await desk.page.reload();
  await desk.until('WAITING');
}

/** The paths as the desk calls them, and as the timeline does. */
export const PATHS = { across: 'across', 'up-down': 'up_down', 'diagonal down': 'falling', 'diagonal up': 'rising', eight: 'eight' };

/** Each piece by itself: what is lost comes after its retransmission, and all that follows after it. */
function one(link, seed) {
  const random = chance(seed);
  return () => transit(link, random);
}

/** See the head of this file. */
class Live {
  constructor(scene, desk, stage) {
    Object.assign(this, { scene, desk, stage, page: stage.page });
  }

  /** A page to read pictures with, out of the way of both. */
  async reader() {
    return (await this.scene.far.newContext()).newPage();
  }

  /** Presses `key` until `part` of the desk reads `wanted`. */
  async choose(key, part, wanted, most = 40) {
    const { desk } = this;
    for (let tries = 0; tries < most; tries++) {
      const shown = await desk.text(part);
      if (shown === wanted) return;
      await desk.press(typeof key === 'function' ? key(shown) : key);
      await desk.page.waitForFunction(([name, before]) => document.querySelector(`[data-part="${name}"]`).innerText !== before, [part, shown], { timeout: 5_000 });
    }
    throw new Error(`no way to ${wanted}: ${part} reads ${await desk.text(part)}, ${await desk.messages()}`);
  }

  /** Sets the rate by its keys, Hz. */
  async rate(wanted) {
    await this.choose((shown) => (Number.parseFloat(shown) > wanted ? 'ArrowLeft' : 'ArrowRight'), 'rate', `${wanted.toFixed(2)} Hz`);
  }

  /** The next set, at rest before it moves. */
  async begin() {
    await this.scene.settle();
    await fresh(this.page);
    await this.desk.start();
  }

  /** The next set, its dot under way. */
  async run() {
    await this.begin();
    await underWay(this.page);
  }

  /**
   * Where the path lies on the page; call it while the dot rests before it moves, at phase 0, half a width from the middle.
   *
   * @param unitAt phase => place in widths from the middle, of the path that is played
   * @returns phase => `{x, y}`, px of the page
   */
  async path(unitAt) {
    await this.page.waitForFunction(() => getComputedStyle(document.getElementById('dot')).visibility === 'visible');
    const { x, y, width } = await this.page.evaluate(() => {
      const dot = document.getElementById('dot');
      const box = dot.getBoundingClientRect();
      const { e, f } = new DOMMatrix(getComputedStyle(dot).transform);
      return { x: box.x + box.width / 2 - e, y: box.y + box.height / 2 - f, width: 2 * Math.hypot(e, f) };
    });
    return (phase) => {
      const unit = unitAt(phase);
      return { x: x + unit.x * width, y: y + unit.y * width };
    };
  }

  /** Waits for rest. @returns the last moving frame, the page times of taps and keys, and the frame time, ms */
  async rested(quiet = 300) {
    await stillFor(this.page, quiet);
    const { samples, stops } = await sampled(this.page);
    const gaps = samples.slice(1).map((sample, i) => sample.t - samples[i].t).sort((a, b) => a - b);
    return { last: motionOf(samples)?.last, stops, frame: gaps[Math.floor(gaps.length / 2)] };
  }

  /** Ends the sampling of the dot in every frame: it would count as the page's own work. */
  unwatch() { return this.page.evaluate(() => { globalThis.watched.off = true; }); }

  now() { return this.page.evaluate(() => performance.now()); }

  close() { return this.scene.close(); }
}
