// Firefox as a client has it, driven by WebDriver BiDi (W3C), which needs no driver beside it.

import { launch } from 'puppeteer-core';

/** A camera and a microphone of its own making, given without a question; and connections on the loopback, where the tests' relay is. */
const SETTINGS = {
  'media.navigator.streams.fake': true,
  'media.navigator.permission.disabled': true,
  'media.peerconnection.ice.loopback': true,
  'media.autoplay.default': 0,
};

/** A client's page in a Firefox of its own. `close()` it. */
export async function openFirefox({ width, height }) {
  const browser = await launch({
    browser: 'firefox', executablePath: process.env.LEEWARD_FIREFOX ?? '/usr/bin/firefox-esr', headless: true, extraPrefsFirefox: SETTINGS,
  });
  const page = await browser.newPage();
  await page.setViewport({ width, height });
  return new FirefoxClient(browser, page);
}

/** What a client does there. */
class FirefoxClient {
  constructor(browser, page) { Object.assign(this, { browser, page }); }

  /** Opens the link and types the code; ends at the device check. */
  async join({ link, code }) {
    await this.page.goto(link);
    await this.page.type('input[inputmode="numeric"]', code);
    await this.tap('Join');
    await this.until('A short check');
  }

  /** Presses the button that says exactly this. */
  async tap(words) {
    const button = await this.page.waitForFunction((wanted) => [...document.querySelectorAll('button')]
      .find((one) => one.textContent.trim() === wanted && one.checkVisibility()), {}, words)
      .catch(async (fault) => { throw new Error(`no "${words}": ${fault.message}; ${await this.page.evaluate(() => document.body.innerText)}`); });
    await button.click();
  }

  /** Waits for the first of these buttons. @returns what it says */
  async one(...words) {
    const found = await this.page.waitForFunction((wanted) => [...document.querySelectorAll('button')]
      .find((one) => wanted.includes(one.textContent.trim()) && one.checkVisibility())?.textContent.trim(), {}, words);
    return found.jsonValue();
  }

  heading() { return this.page.evaluate(() => document.querySelector('main h1').textContent); }

  /** Waits for the page with this heading. */
  until(heading) {
    return this.page.waitForFunction((wanted) => document.querySelector('main h1')?.textContent === wanted, {}, heading);
  }

  /** Waits until the player plays, and ten pictures of the other were decoded: without a screen Firefox counts none as shown. */
  async goesOn(player) {
    await this.page.waitForFunction(async (selector) => {
      const video = document.querySelector(selector);
      const report = await globalThis.peers.at(-1)?.getStats();
      const decoded = [...report?.values() ?? []].find(({ type, kind }) => type === 'inbound-rtp' && kind === 'video')?.framesDecoded;
      return video?.videoWidth > 0 && !video.paused && decoded > 10;
    }, { timeout: 20_000 }, player);
  }

  close() { return this.browser.close(); }
}
