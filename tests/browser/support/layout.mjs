// How a page lies in windows of many sizes: what is cut off, what stands on something else, what scrolls sideways.

import { mkdir } from 'node:fs/promises';

/** The folder for named pictures, or nothing: `tests/browser/pictures` sets it. */
const PICTURES = process.env.LEEWARD_PICTURES;

/** Ways to look at a page, each with what the browser is told. 200 %: the reader's own text size, which media queries follow too. */
export const APPEARANCES = {
  light: { colorScheme: 'light' },
  dark: { colorScheme: 'dark' },
  forced: { forcedColors: 'active' },
  large: { textSize: 32 },
  print: { media: 'print' },
};

/** Text twice as large on a window half as wide as this is a page of 320 px, than which none has to be narrower (WCAG 2.2, 1.4.4 and 1.4.10). */
const LEAST_FOR_LARGE = 640;

/**
 * Where what pushes at all pushes first: the widest of the windows, and the narrowest. In this order: a window that keeps its size while the text grows does not
 * ask its style sheet anew which rules hold (Chromium, told so by its protocol), and large text begins in a wide one.
 */
export const extremes = (sizes) => {
  const byWidth = [...sizes].sort(([a], [b]) => b - a);
  return [...new Set([byWidth[0], byWidth.at(-1)])];
};

/**
 * The windows in which a look is worth its time. Dark lies as light does, since it is colours alone (`tokens.test.ts` sees to that): axe
 * looks at its contrast, and nobody at its layout. Forced colours add a border of 1 px.
 */
function windows(appearance, sizes) {
  switch (appearance) {
    case 'print': return [PAPER];
    case 'large': return sizes.filter(([width]) => width >= LEAST_FOR_LARGE);
    case 'forced': return extremes(sizes);
    default: return sizes;
  }
}

/** A4 within margins of 1 cm, CSS px (ISO 216; 96 px an inch): what is printed is as wide as paper, whatever the window. */
export const PAPER = [718, 1046];

/** Makes the page look so, see `APPEARANCES`. */
export async function appear(page, { textSize = 16, ...media }) {
  await page.emulateMedia({ colorScheme: 'light', forcedColors: 'none', media: 'screen', ...media });
  page.layoutCdp ??= await page.context().newCDPSession(page);
  await page.layoutCdp.send('Page.setFontSizes', { fontSizes: { standard: textSize, fixed: Math.round(textSize * 0.8125) } });
}

/**
 * Looks at the page in each window and appearance.
 *
 * @param {[number, number][]} sizes
 * @param {(keyof APPEARANCES)[]} appearances
 * @param {{act?: () => Promise<void>, pictures?: string[]}} [more] act: what is done at each look besides; pictures: which looks are kept,
 *   each `WIDTHxHEIGHT-APPEARANCE`, when pictures are wanted
 * @returns {Promise<string[]>} what is wrong, a line each
 */
export async function faultsAt(page, name, sizes, appearances, { act = () => {}, pictures = [] } = {}) {
  const usual = page.viewportSize();
  const found = [];
  for (const appearance of appearances) {
    await appear(page, APPEARANCES[appearance]);
    for (const [width, height] of windows(appearance, sizes)) {
      const look = `${width}x${height}-${appearance}`;
      await page.setViewportSize({ width, height });
      // The page hears of its new size with the next frame.
      await painted(page);
      found.push(...(await page.evaluate(faultsHere)).map((fault) => `${name} ${look}: ${fault}`));
      await act(look);
      if (pictures.includes(look)) await keepPicture(page, `${name}-${look}`);
    }
  }
  await appear(page, APPEARANCES.light);
  await page.setViewportSize(usual);
  return found;
}

/** A named picture, where pictures are wanted. */
export async function keepPicture(page, name) {
  if (!PICTURES) return;
  await mkdir(PICTURES, { recursive: true });
  await page.screenshot({ path: `${PICTURES}/${name}.png` });
}

/**
 * Runs in the page. Text is held against every box that cuts it off: only what has `text-overflow: ellipsis`, or a scroll of its own,
 * may be longer than its box. Two texts never stand on each other, and nothing is wider than the window.
 */
function faultsHere() {
  const seen = (element) => element.checkVisibility({ visibilityProperty: true, opacityProperty: true }) && !element.closest('.unseen, [aria-hidden="true"], noscript');
  const short = (text) => `"${text.trim().replaceAll(/\s+/g, ' ').slice(0, 40)}"`;
  const faults = [];
  const over = document.scrollingElement.scrollWidth - innerWidth;
  if (over > 0) faults.push(`scrolls sideways by ${over} px`);

  const texts = [];
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const parent = node.parentElement;
    if (!node.data.trim() || !parent || !seen(parent) || parent.closest('svg, option')) continue;
    const range = document.createRange();
    range.selectNodeContents(node);
    for (const box of range.getClientRects()) if (box.width > 1 && box.height > 1) texts.push({ node, parent, box, text: short(node.data) });
  }

  /** Whether the box is out of sight because something that can be scrolled, or shortens with an ellipsis, holds it. */
  const held = (one) => {
    for (let up = one.parent; up; up = up.parentElement) {
      const style = getComputedStyle(up);
      const clips = (axis) => style[`overflow${axis}`] !== 'visible';
      if (!clips('X') && !clips('Y')) continue;
      const box = up.getBoundingClientRect();
      const past = { X: Math.max(one.box.right - box.right, box.left - one.box.left), Y: Math.max(one.box.bottom - box.bottom, box.top - one.box.top) };
      for (const axis of ['X', 'Y']) {
        if (!clips(axis) || past[axis] < 1) continue;
        if (['auto', 'scroll'].includes(style[`overflow${axis}`])) return 'scroll';
        if (axis === 'X' && style.textOverflow === 'ellipsis') return 'ellipsis';
        if (axis === 'Y' && past.Y < one.box.height / 4) continue; // the room that a font keeps above and below its letters
        return `cut off by ${up.className || up.localName} (${past[axis].toFixed(0)} px)`;
      }
    }
    return '';
  };
  const inSight = texts.filter((one) => {
    const by = held(one);
    if (by.startsWith('cut off')) faults.push(`${one.text} ${by}`);
    return by === '';
  });

  for (const { parent, box, text } of inSight) {
    const button = parent.closest('button, .button, output, td, th');
    const around = button?.getBoundingClientRect();
    if (around && (box.left < around.left - 1 || box.right > around.right + 1)) faults.push(`${text} runs out of its ${button.localName}`);
    if (box.left < -1 || box.right > innerWidth + 1) {
      let scrolls = parent;
      while (scrolls && !['auto', 'scroll'].includes(getComputedStyle(scrolls).overflowX)) scrolls = scrolls.parentElement;
      if (!scrolls) faults.push(`${text} lies outside the window`);
    }
  }

  /** What covers on purpose: it is above, and what is beneath is out of reach. */
  const layer = (element) => element.closest('[data-part="band-stop"], [data-part="seat"], dialog, details[open]');
  const stuck = (element) => { for (let up = element; up; up = up.parentElement) if (['sticky', 'fixed'].includes(getComputedStyle(up).position)) return up; return null; };
  for (const [i, a] of inSight.entries()) {
    for (const b of inSight.slice(i + 1)) {
      if (a.node === b.node) continue;
      const width = Math.min(a.box.right, b.box.right) - Math.max(a.box.left, b.box.left);
      const height = Math.min(a.box.bottom, b.box.bottom) - Math.max(a.box.top, b.box.top);
      // Lines of a text share the room between them.
      if (width < 2 || height < Math.min(a.box.height, b.box.height) * 0.45) continue;
      if (layer(a.parent) !== layer(b.parent) || stuck(a.parent) !== stuck(b.parent)) continue;
      faults.push(`${a.text} stands on ${b.text}`);
    }
  }
  return [...new Set(faults)];
}

/** Two frames later, or a second: a window that the browser does not paint for a while has no frames, and is laid out all the same. */
export const painted = (page) => page.evaluate(() => new Promise((done) => {
  requestAnimationFrame(() => requestAnimationFrame(done));
  setTimeout(done, 1000);
}));
