// A desk and a stage side by side in one window, so that one picture of the screen shows what both drew in one frame.

import { launch } from '../../browser/support/chromium.mjs';
import { Desk } from '../../browser/support/desk.mjs';
import { openScene } from '../../browser/support/scene.mjs';
import { Stage } from '../../browser/support/stage.mjs';
import { chance } from './judge.mjs';
import { transit } from './link.mjs';
import { roomTimes } from './replay.mjs';
import { noted, witness } from './witness.mjs';

/** The window and the two within it, px: as wide as the desk's column, and as high as shows the desk's preview. */
const VIEW = { width: 470, height: 420, desk: 170 };
/** Clocks are compared so often in a film, times. */
const MOMENTS = 100;
/** Where the window with both is; the portal has no such page. */
const BOTH = '/both';

/** See the head of this file. `close()` it. */
export class Pair {
  /** A session with an admitted client. */
  static async open(seed) {
    const pair = new Pair();
    pair.random = chance(seed);
    pair.scene = await openScene();
    await pair.#open().catch(async (fault) => { await pair.close(); throw fault; });
    return pair;
  }

  async #open() {
    const { scene } = this;
    // Both sides by one browser, whose every connection is delayed by itself.
    await scene.near.close();
    scene.near = await launch({ flags: scene.link.flags });
    const desk = await scene.openDesk({ width: VIEW.width });
    const page = this.page = await scene.windowBeside(desk.page);
    await scene.join(page);
    await scene.stage.skipCheck();
    await scene.admit();
    if (/cycles/.test(await desk.text('length'))) await desk.press('u');
    await page.setViewportSize({ width: VIEW.width, height: VIEW.height });
    // To the browser a page whose head was changed on its way comes from nowhere, and a socket back to this machine needs a permission.
    await page.context().grantPermissions(['local-network-access'], { origin: scene.house.origin });
    await witness(page);
    await page.route('**/*', (route) => this.#frameable(route));
    this.deskPath = new URL(desk.page.url()).pathname;
    await desk.page.close();
  }

  /** Lets the two pages be shown within another, which they forbid, and makes that other one. */
  async #frameable(route) {
    if (route.request().resourceType() !== 'document') return route.continue();
    if (new URL(route.request().url()).pathname === BOTH) {
      const frame = (name, path, height) => `<iframe name="${name}" src="${path}" style="display: block; border: 0; width: 100%; height: ${height}px"></iframe>`;
      const body = `<!doctype html><html lang="en"><title>both</title><body style="margin: 0; overflow: hidden">
        ${frame('desk', this.deskPath, VIEW.desk)}${frame('stage', '/stage', VIEW.height - VIEW.desk)}`;
      return route.fulfill({ contentType: 'text/html', body });
    }
    const response = await route.fetch();
    const headers = { ...response.headers() };
    headers['content-security-policy'] = headers['content-security-policy']?.replace(/frame-ancestors 'none';?/, '');
    delete headers['x-frame-options'];
    return route.fulfill({ response, headers });
  }

  /** Both pages anew, their clocks too, over `link`; a set without end runs. @returns the rows of a picture that show each dot alone, and the rate, Hz */
  async run(link) {
    const { page, scene } = this;
    scene.link.setDelay(() => transit(link, this.random));
    await page.goto(BOTH);
    scene.desk = new Desk(within(page, 'desk'));
    const stage = scene.stage = new Stage(within(page, 'stage'));
    await stage.until('A short check');
    await stage.skipCheck();
    await scene.settle();
    this.begun = await this.now();
    await scene.desk.start();
    // The stage has taken the keyboard, and what the desk says of that would cover its preview.
    await page.frame('desk').evaluate(() => { document.querySelector('[data-part="band-stop"]').style.visibility = 'hidden'; });
    return this.#field();
  }

  async #field() {
    const box = (frame, selector) => this.page.frame(frame).locator(selector).boundingBox();
    const preview = await box('desk', '[data-part="preview"]');
    const [leave, foot] = [await box('stage', '#leave'), await box('stage', 'footer')];
    const rate = Number.parseFloat(await this.scene.desk.text('rate'));
    return {
      preview: { from: Math.ceil(preview.y) + 2, to: Math.floor(preview.y + preview.height) - 2 },
      stage: { from: Math.ceil(leave.y + leave.height) + 2, to: Math.floor(foot.y) },
      rate,
    };
  }

  /** Milliseconds since the epoch, by the one clock that both pages' times are of: they are of one process. */
  now() { return this.page.frame('desk').evaluate(() => performance.timeOrigin + performance.now()); }

  /** By how many ms the desk's clock says a later time of the room than the stage's, at moments from `from` to `until`, see `now`; `RoomClock` of web/src/live/clock.ts. */
  async clocksApart(from, until, RoomClock) {
    const moments = Array.from({ length: MOMENTS + 1 }, (_, i) => from + ((until - from) * i) / MOMENTS);
    const [desk, stage] = await Promise.all(['desk', 'stage'].map(async (name) => {
      const frame = this.page.frame(name);
      const [heard, origin] = [await noted(frame), await frame.evaluate(() => performance.timeOrigin)];
      return roomTimes(heard, this.begun - origin, moments.map((at) => at - origin), RoomClock);
    }));
    return moments.map((_, i) => desk[i] - stage[i]);
  }

  /** The set, which must still be running, is stopped. */
  async stop() {
    const { desk } = this.scene;
    const word = await desk.word();
    if (word !== 'RUNNING') throw new Error(`the set did not last, the desk says ${word}: ${await desk.messages()}`);
    await desk.press('Escape');
    await desk.untilOver();
  }

  close() { return this.scene.close(); }
}

/** A page within `page`, for `Desk` and `Stage`; a key goes to the page that it is meant for, wherever the last tap went. */
function within(page, name) {
  const frame = page.frame(name);
  const same = ['locator', 'getByRole', 'getByLabel', 'waitForSelector', 'waitForFunction', 'waitForTimeout', 'evaluate'];
  const press = async (key) => {
    await frame.evaluate(() => {
      window.focus();
      document.getElementById('desk')?.focus();
    });
    await page.keyboard.press(key);
  };
  return { keyboard: { press }, history: page.historyOf(frame), ...Object.fromEntries(same.map((how) => [how, (...args) => frame[how](...args)])) };
}
