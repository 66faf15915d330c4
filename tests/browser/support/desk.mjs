// The clinician's live screen, driven by its keys and read as a clinician reads it.

import assert from 'node:assert/strict';

/** Cycles, the most that a set may have: one that is stopped, or looked at, is not over before that on the slowest machine. */
export const LONG = 200;

/** The desk of an open page. */
export class Desk {
  constructor(page) { this.page = page; }

  /** What stands in a part of the desk. */
  text(part) { return this.page.locator(`[data-part="${part}"]`).innerText(); }

  word() { return this.text('word'); }

  /** Waits for a state word, or says which ones came instead. It may pass by itself meanwhile, see history.mjs. */
  until(word, patience) { return this.untilText('word', word, patience); }

  /** Waits until a part reads as `pattern`, or has read so since the last keys, see history.mjs. */
  async untilText(part, pattern, patience) {
    await this.page.history.until(part, pattern, patience).catch(async (fault) => { throw new Error(`${fault.message}; ${await this.messages()}`); });
  }

  /** Waits until the set that was started is over, whatever the room waits for then. */
  untilOver(patience) { return this.untilText('word', (word) => !['STARTING', 'RUNNING', 'EASING', 'UNKNOWN', 'CONNECTING'].includes(word), patience); }

  async messages() { return `${await this.text('message-1')} ${await this.text('message-2')}`.trim(); }

  press(...keys) {
    this.page.history.act();
    return each(keys, (key) => this.page.keyboard.press(key));
  }

  /** Clicks a button by what stands on it. */
  click(name) {
    this.page.history.act();
    return this.page.getByRole('button', { name }).click();
  }

  /** Presses keys, by `KeyboardEvent.key`, with no time between them, and `next` in the very moment in which the state word becomes `word`. */
  pressAtOnce(keys, word, next) {
    this.page.history.act();
    return this.page.evaluate(([now, wanted, later]) => {
      const press = (key) => document.activeElement.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true }));
      const part = document.querySelector('[data-part="word"]');
      const observer = new MutationObserver(() => {
        if (part.textContent !== wanted) return;
        observer.disconnect();
        press(later);
      });
      observer.observe(part, { childList: true, characterData: true, subtree: true });
      now.forEach(press);
    }, [keys, word, next]);
  }

  /** Makes a link and its code. @returns `{link, code}` */
  async mint() {
    const button = this.page.getByRole('button', { name: 'New link' });
    if (!(await button.isVisible())) await this.press('c');
    const before = await this.page.locator('#join-link').inputValue();
    await button.click();
    await this.page.waitForFunction((old) => !['', old].includes(document.querySelector('#join-link').value), before);
    return { link: await this.page.locator('#join-link').inputValue(), code: await this.text('join-code') };
  }

  /** Admits who waits, and goes through the opening with nothing against the hour. `opening`: false leaves it open. */
  async admit({ location, callBack, opening = true }) {
    await this.untilText('seat-state', /^Somebody waits/);
    await this.page.locator('#location').fill(location);
    await this.page.locator('#location-confirmed').check();
    if (callBack) await this.page.locator('#call-back').fill(callBack);
    await this.page.locator('#private').check();
    await this.click('Admit');
    await this.untilText('seat-state', 'The client is admitted.');
    if (opening) await this.opening();
  }

  /** Answers whatever of the opening holds a start, by its first answer; a re-evaluation as this SUD. */
  async opening({ sud = 1 } = {}) {
    const { page } = this;
    await page.locator('[data-panel="opening"]').waitFor();
    while ((await page.locator('[data-part="opening-check"][data-met="yes"]').count()) === 0) {
      const matter = await page.locator('[data-part="opening-list"] [data-holds]').first().getAttribute('data-matter');
      const at = page.locator(`[aria-current="step"] [data-matter="${matter}"]`);
      if (await at.count() === 0) {
        await page.locator(`[data-part="opening-list"] [data-matter="${matter}"]`).focus();
        await page.keyboard.press('Enter');
      }
      await at.waitFor();
      await this.press(matter === 'reevaluation' ? String(sud) : '1');
      await page.locator(`[data-part="opening-list"] [data-matter="${matter}"][data-holds]`).waitFor({ state: 'detached' }).catch(async (fault) => {
        throw new Error(`${fault.message}; ${await this.messages()}; ${await this.text('opening-list')}`);
      });
    }
    await this.press('a');
  }

  /**
   * Closes the session by the panel's keys, with the client settled and nobody with them. @returns how many actions that took beyond the words
   * that were typed, each of which ends with its own Enter
   */
  async close({ kind, used, next }) {
    const { page } = this;
    let actions = 0;
    const act = (key) => {
      actions += 1;
      return this.press(key);
    };
    const at = (label) => page.locator('[data-panel="closing"] li[aria-current]', { hasText: label }).waitFor();
    const digit = async (label, words) => {
      await at(label);
      const choices = await page.locator('[data-panel="closing"] li[aria-current] .answers button').allInnerTexts();
      const place = choices.findIndex((text) => text.startsWith(words));
      assert.ok(place >= 0, `${words} is not among ${choices}`);
      await act(String(place + 1));
    };
    const type = async (label, words) => {
      await at(label);
      // Where something is offered by its number, Enter goes to the field.
      if (await page.locator('[data-panel="closing"] li[aria-current] .answers button').count() > 0) await act('Enter');
      await page.locator('[data-panel="closing"] li[aria-current] :is(input, textarea):focus').waitFor();
      await page.keyboard.type(words);
      await this.press('Enter');
    };
    await act('#');
    await digit('It ends', kind);
    await digit('Its effect', 'Settled');
    await type('Used to settle', used);
    await digit('On leaving', 'Calm');
    await digit('With them now', 'nobody');
    await type('Next contact', next);
    await page.locator('[data-part="close-now"]:focus').waitFor();
    await page.waitForTimeout(700);
    await act('Enter');
    return actions;
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
      await this.untilText('length', (text) => text !== shown);
    }
    assert.fail(`no way to ${wanted} cycles, only to ${await this.text('length')}`);
  }

  /** Starts the next set as soon as it may, and waits until the client's page has said that it moves: a second of rest comes first. */
  async start() {
    await this.page.waitForSelector('[data-part="start"]:not([aria-disabled])').catch(async (fault) => {
      throw new Error(`nothing may start, the desk says ${await this.word()}: ${await this.text('progress')}; ${await this.messages()}; ${fault.message}`);
    });
    await this.press('Space');
    await this.until('RUNNING');
  }

  /** Waits until the client's page shows cycle `cycle` (counted from 1) or a later one. */
  untilCycle(cycle, patience) {
    return this.untilText('showing', (text) => Number(/· cycle (\d+)/.exec(text)?.[1] ?? 0) >= cycle, patience);
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
    await this.untilSaved(saved + written);
  }

  /** Waits until so many entries are in the record. */
  untilSaved(count) { return this.page.waitForFunction(([selector, wanted]) => document.querySelectorAll(selector).length >= wanted, [SAVED, count]); }

  /** How many entries are in the record, as far as this page knows. */
  saved() { return this.page.locator(SAVED).count(); }
}

/** An entry in the log that is kept, in sight or in a line that is not opened. */
const SAVED = '[data-part="log"] ul li[data-saving="saved"]';

async function each(list, act) {
  for (const one of list) await act(one);
}
