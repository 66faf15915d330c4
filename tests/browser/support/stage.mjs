// The client's page, driven by taps and keys and read as a client reads it.

import { PATIENCE } from './history.mjs';

/** The stage of an open page. */
export class Stage {
  constructor(page) { this.page = page; }

  /** Opens a link, types the code and taps Join; ends at the device check. */
  async join({ link, code }) {
    await this.page.goto(link);
    await this.page.getByLabel('Six numbers').fill(code);
    await this.page.getByRole('button', { name: 'Join' }).click();
    await this.page.waitForURL('**/stage');
    await this.until('A short check');
  }

  heading() { return this.page.locator('main h1').innerText(); }

  /** Waits for the page with this heading, which may have passed again by itself, see history.mjs. */
  until(heading, patience) { return this.page.history.until('heading', heading, patience); }

  /** Waits until the page of this name stands beside the dot, say `running`, or one whose name fits. */
  untilPage(name) { return this.page.history.until('page', name); }

  tap(name) {
    this.page.history.act();
    return this.page.getByRole('button', { name, exact: true }).click();
  }

  press(key) {
    this.page.history.act();
    return this.page.keyboard.press(key);
  }

  /** Passes over the questions. */
  skipCheck() { return this.tap('Skip all'); }

  /** Goes through every page: getting ready, the card, the distance, sound and its sides, the lock of the screen, the whole screen. */
  async check() {
    await this.tap('Start');
    await this.tap('Done');
    await this.tap('It fits');
    await this.tap('About as long as my arm');
    await this.sides();
    for (const question of ['Your screen', 'The whole screen']) {
      if (await this.page.getByRole('heading', { name: question }).isVisible()) await this.tap('Skip');
    }
  }

  /** Listens to three tones and says each side, all of them right: what was played is read off the browser's panners. */
  async sides() {
    await this.page.evaluate(() => {
      window.Panner ??= window.StereoPannerNode;
      window.panned = [];
      window.StereoPannerNode = class extends window.Panner { constructor(context, options) { super(context, options); window.panned.push(options.pan); } };
    });
    await this.tap('Play a tone');
    for (const tone of [1, 2, 3]) {
      const pan = await this.page.waitForFunction((n) => window.panned[n - 1], tone);
      await this.tap(await pan.jsonValue() < 0 ? 'Left' : 'Right');
    }
  }

  /** Taps Ready until it is taken: the page passes over a tap so soon after a stop that it may belong to the stop. */
  async ready() {
    const button = this.page.getByRole('button', { name: 'I am ready' });
    await button.waitFor();
    for (const since = Date.now(); await button.isVisible();) {
      if (Date.now() - since > PATIENCE) throw new Error('"I am ready" was not taken');
      await button.click({ timeout: 1000 }).catch(() => {}); // it has gone meanwhile: that is what was wanted
      await this.page.waitForTimeout(100);
    }
  }

  /** A tap in the middle of the field. */
  async tapAnywhere() {
    const [width, height] = await this.page.evaluate(() => [innerWidth, innerHeight]);
    this.page.history.act();
    await this.page.mouse.click(width / 2, height / 3);
  }
}
