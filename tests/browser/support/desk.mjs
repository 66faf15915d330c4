// The clinician's live screen, driven by its keys and read as a clinician reads it.

import assert from 'node:assert/strict';

/** The desk of an open page. */
export class Desk {
  constructor(page) { this.page = page; }

  /** What stands in a part of the desk. */
  text(part) { return this.page.locator(`[data-part="${part}"]`).innerText(); }

  word() { return this.text('word'); }

  /** Waits for a state word, or says which one stands there instead. */
  async until(word, timeout = 10_000) {
    await this.untilText('word', word, timeout);
  }

  /** Waits until a part reads as `pattern`, a string for the whole text or a regular expression. */
  async untilText(part, pattern, timeout = 10_000) {
    const whole = typeof pattern === 'string';
    await this.page.waitForFunction(([name, source, exact]) => {
      const text = document.querySelector(`[data-part="${name}"]`)?.textContent.trim() ?? '';
      return exact ? text === source : new RegExp(source).test(text);
    }, [part, whole ? pattern : pattern.source, whole], { timeout }).catch(async (fault) => {
      throw new Error(`${part} reads "${await this.text(part)}", not ${pattern}: ${await this.messages()} (${fault.message.split('\n')[0]})`);
    });
  }

  async messages() { return `${await this.text('message-1')} ${await this.text('message-2')}`.trim(); }

  press(...keys) { return each(keys, (key) => this.page.keyboard.press(key)); }

  /** Makes a link and its code. @returns `{link, code}` */
  async mint() {
    const button = this.page.getByRole('button', { name: 'New link' });
    if (!(await button.isVisible())) await this.press('c');
    const before = await this.page.locator('#join-link').inputValue();
    await button.click();
    await this.page.waitForFunction((old) => !['', old].includes(document.querySelector('#join-link').value), before);
    return { link: await this.page.locator('#join-link').inputValue(), code: await this.text('join-code') };
  }

  /** Admits who waits. */
  async admit({ location, callBack }) {
    await this.untilText('seat-state', /^Somebody waits/);
    await this.page.locator('#location').fill(location);
    await this.page.locator('#location-confirmed').check();
    if (callBack) await this.page.locator('#call-back').fill(callBack);
    await this.page.locator('#private').check();
    await this.page.getByRole('button', { name: 'Admit' }).click();
    await this.untilText('word', /^(HOLD|READY|STOPPED)/);
  }

  /** Says that the client is seen and heard, where that is still needed. */
  async sight() {
    await this.page.waitForSelector('[data-part="sight"]:not([aria-disabled])');
    await this.press('i');
    await this.page.waitForSelector('[data-part="sight"][aria-disabled]');
  }

  /** Sets the length by its keys, in cycles. */
  async cycles(wanted) {
    for (let press = 0; press < 60; press++) {
      const shown = await this.text('length');
      if (shown === `${wanted} cycles`) return;
      await this.press(Number.parseInt(shown, 10) > wanted ? ',' : '.');
      await this.page.waitForFunction((before) => document.querySelector('[data-part="length"]').textContent !== before, shown);
    }
    assert.fail(`no way to ${wanted} cycles, only to ${await this.text('length')}`);
  }

  /** Starts the next set as soon as it may, and waits until the client's page has said that it moves: a second of rest comes first. */
  async start() {
    await this.page.waitForSelector('[data-part="start"]:not([aria-disabled])');
    await this.press('Space');
    await this.until('RUNNING', 5_000);
  }

  /** Waits until the client's page shows cycle `cycle` (counted from 1) or a later one. */
  async untilCycle(cycle, timeout = 20_000) {
    await this.page.waitForFunction((least) => {
      const shown = /cycle (\d+)/.exec(document.querySelector('[data-part="showing"]').textContent);
      return shown !== null && Number(shown[1]) >= least;
    }, cycle, { timeout });
  }

  /** Writes a few words and marks and ratings by their keys; each is waited for until it is saved. */
  async note({ words, mark, sud, voc }) {
    const saved = await this.saved();
    if (words) {
      await this.press('w');
      await this.page.keyboard.type(words);
      await this.press('Enter');
    }
    if (mark) await this.press({ changing: 'j', same: 'k', settled: 'l' }[mark]);
    if (sud !== undefined) await this.press('s', sud === 10 ? 't' : String(sud));
    if (voc !== undefined) await this.press('v', String(voc));
    const written = [words, mark, sud, voc].filter((one) => one !== undefined).length;
    await this.page.waitForFunction((least) => document.querySelector('[data-part="log"]').textContent.split(/saved \d\d:/).length - 1 >= least, saved + written);
  }

  async saved() { return ((await this.text('log')).match(/saved \d\d:/g) ?? []).length; }

  /** The log's heads, latest set first: `{number, done, planned, rate, ending}`. */
  async sets() {
    return this.page.locator('[data-part="log"] > li').evaluateAll((rows) => rows.map((row) => row.innerText));
  }
}

async function each(list, act) {
  for (const one of list) await act(one);
}
