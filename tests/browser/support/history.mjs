// What a page has said, kept as it says it, so that a state that passes by itself can still be waited for after it has passed.
//
// An observer in the page tells each change to the test. Waiting then asks nothing of the page, which may be in the background,
// where nothing is drawn and timers are slow, or too busy to answer before its words have changed again.

import { EventEmitter, once } from 'node:events';

/** How long is waited for what must come, ms: nothing hangs on this figure but how soon a failure is told. */
export const PATIENCE = 30_000;

/** Keeps the history of `page` from its next document on, as `page.history`, and of each document within it, as `page.historyOf(frame)`. */
export async function keepHistory(page) {
  const histories = new Map();
  page.historyOf = (frame) => {
    if (!histories.has(frame)) histories.set(frame, new History());
    return histories.get(frame);
  };
  page.history = page.historyOf(page.mainFrame());
  await page.exposeBinding('leewardTold', ({ frame }, told) => page.historyOf(frame).add(told));
  await page.addInitScript(observe);
  return page;
}

/**
 * Runs in a page: tells the texts of the parts of a desk (`data-part`) under their names, the heading of a stage as `heading` and the
 * name of its page as `page`, at first and whenever they change.
 */
function observe() {
  const said = new Map();
  const look = () => {
    const told = [];
    const tell = (name, text) => {
      if (said.get(name) === text) return;
      said.set(name, text);
      told.push([name, text]);
    };
    for (const one of document.querySelectorAll('[data-part]')) tell(one.dataset.part, one.textContent.trim());
    tell('heading', document.querySelector('main h1')?.textContent ?? '');
    tell('page', document.body?.dataset.page ?? '');
    if (told.length > 0) globalThis.leewardTold(told);
  };
  globalThis.leewardTold(null);
  new MutationObserver(look).observe(document, { subtree: true, childList: true, characterData: true, attributeFilter: ['data-page', 'data-part'] });
}

/** See the head of this file. */
export class History {
  #told = [];
  #standing = new Map();
  /** What lies before this has been waited for, or was there before the last act. */
  #from = 0;
  #news = new EventEmitter().setMaxListeners(0);

  /** Takes in changes, each `[name, text]`; null: a new document, of which nothing is known yet. */
  add(told) {
    if (told === null) this.#standing.clear();
    for (const [name, text] of told ?? []) {
      this.#told.push({ name, text });
      this.#standing.set(name, text);
    }
    this.#news.emit('told');
  }

  /** Something is about to be done: what was said before it is no answer to it, unless it still stands. */
  act() { this.#from = this.#told.length; }

  /**
   * Waits until `name` reads as `pattern`, a string for the whole text, a regular expression or a function, or has done so since the
   * last act and the last text that was waited for.
   */
  async until(name, pattern, patience = PATIENCE) {
    const fits = fitting(pattern);
    const giveUp = AbortSignal.timeout(patience);
    while (!this.#passed(name, fits)) {
      await once(this.#news, 'told', { signal: giveUp }).catch(() => { throw new Error(this.#missed(name, pattern, patience)); });
    }
  }

  #passed(name, fits) {
    const found = this.#told.findIndex((one, i) => i >= this.#from && one.name === name && fits(one.text));
    if (found >= 0) this.#from = found + 1;
    return found >= 0 || (this.#standing.has(name) && fits(this.#standing.get(name)));
  }

  #missed(name, pattern, patience) {
    const since = this.#told.slice(this.#from).filter((one) => one.name === name).map(({ text }) => `"${text}"`);
    return `${name} never read ${pattern} within ${patience / 1000} s: it reads "${this.#standing.get(name)}", and went by ${since.join(', ') || 'nothing'}`;
  }
}

function fitting(pattern) {
  if (pattern instanceof Function) return pattern;
  return pattern instanceof RegExp ? (text) => pattern.test(text) : (text) => text === pattern;
}
