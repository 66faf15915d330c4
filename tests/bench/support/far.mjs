// A real session whose desk and stage each go by an emulated link, with everything noted that their pages draw and hear.

import { launch } from '../../browser/support/chromium.mjs';
import { LOCATION, openScene } from '../../browser/support/scene.mjs';
import { Stage } from '../../browser/support/stage.mjs';
import { openTun } from './tun.mjs';
import { witness, witnessed } from './witness.mjs';

/** See the head of this file. `close()` it, also when `open()` has failed. */
export class FarSession {
  #links = [];

  /** A session with an admitted client, over links without delay. */
  async open() {
    const scene = this.scene = await openScene();
    for (const seed of [1, 2]) this.#links.push(await openTun(scene.house.origin, seed));
    // In place of the browser that has the portal beside it.
    await scene.near.close();
    [scene.near, scene.far] = await Promise.all(this.#links.map(({ browser }) => launch(browser)));
    this.desk = await scene.openDesk();
    await witness(this.desk.page);
    const page = await scene.clientPage();
    await witness(page);
    this.stage = scene.stage = new Stage(page);
    await this.stage.join(await this.desk.mint());
    await this.stage.skipCheck();
    await this.desk.admit({ location: LOCATION });
    if (/cycles/.test(await this.desk.text('length'))) await this.desk.press('u');
  }

  /** A set by pages whose clocks begin anew on this link, stopped after `from + lasts` ms. @returns `{desk, stage}`, see `witnessed` */
  async set({ link, from, lasts }) {
    const { desk, stage } = this;
    await this.#over(link);
    await Promise.all([desk.page.reload(), stage.page.reload()]);
    await stage.until('A short check');
    await stage.skipCheck();
    await this.scene.settle();
    const begun = performance.now();
    await desk.start();
    await desk.page.waitForTimeout(from + lasts - (performance.now() - begun));
    const [word, pages] = [await desk.word(), await Promise.all([desk, stage].map(({ page }) => witnessed(page)))];
    if (word !== 'RUNNING') throw new Error(`${link.label}: the set did not last, the desk says ${word}: ${await desk.messages()}`);
    await desk.press('Escape');
    await desk.until('STOPPED');
    return { desk: pages[0], stage: pages[1] };
  }

  /** The desk, loaded again and again, each time watched for `watched` ms from its open socket. */
  async loads({ link, loads, watched }) {
    const { page } = this.desk;
    await this.#over(link);
    const seen = [];
    for (let i = 0; i < loads; i++) {
      await page.reload();
      await page.waitForFunction((ms) => performance.now() - (globalThis.witnessed.lines.at(-1)?.opened ?? Infinity) > ms, watched);
      seen.push(await witnessed(page));
    }
    return seen;
  }

  async #over(link) {
    for (const one of this.#links) await one.set(link);
  }

  async close() {
    try {
      await this.scene?.close();
    } finally {
      for (const one of this.#links) await one.close();
    }
  }
}
