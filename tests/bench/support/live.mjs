// A real session for a line of the benchmark: real portal, real Chromium on both sides, links that can be slowed.

import { Desk } from '../../browser/support/desk.mjs';
import { fresh, motionOf, sampled, stillFor, underWay, watchDot } from '../../browser/support/motion.mjs';
import { LOCATION, openScene } from '../../browser/support/scene.mjs';
import { Stage } from '../../browser/support/stage.mjs';
import { chance } from './judge.mjs';
import { transit } from './link.mjs';

/** A session up to where a set may start. `link`: one of `LINKS` of link.mjs for both sides' every way, or none. */
export async function openLive({ link, seed = 1 } = {}) {
  const scene = await openScene({ farDesk: link !== undefined });
  try {
    const desk = await scene.openDesk();
    const { page } = await scene.clientTab();
    await watchDot(page);
    const stage = scene.stage = new Stage(page);
    await stage.join(await desk.mint());
    await stage.check();
    await desk.admit({ location: LOCATION });
    await desk.sight();
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

  /** The next set, its dot under way. */
  async run() {
    await this.scene.settle();
    await fresh(this.page);
    await this.desk.start();
    await underWay(this.page);
  }

  /** Waits for rest. @returns the last moving frame, the page times of taps and keys, and the frame time, ms */
  async rested(quiet = 300) {
    await stillFor(this.page, quiet);
    const { samples, stops } = await sampled(this.page);
    const gaps = samples.slice(1).map((sample, i) => sample.t - samples[i].t).sort((a, b) => a - b);
    return { last: motionOf(samples)?.last, stops, frame: gaps[Math.floor(gaps.length / 2)] };
  }

  now() { return this.page.evaluate(() => performance.now()); }

  close() { return this.scene.close(); }
}
