// Two dots in pictures of one screen, and what lies between them in time.

import { reelOf } from './pixels.mjs';

/** The sine is read where it is steep: up to this share of the way from its middle to an extreme. */
const STEEP = 0.7;
/** A dot that goes less far does not go its way, px. */
const LEAST_WAY = 50;
/** Fewer pictures than this in a second tell nothing. */
const ENOUGH = 8;

/** Films both for `lasts` ms. @returns the pictures, in order */
export async function filmPair(page, lasts) {
  const reel = await reelOf(page, 1);
  await page.waitForTimeout(lasts);
  await reel.stop();
  return reel.frames.sort((a, b) => a.t - b.t).map(({ data }) => data);
}

/**
 * Reads pictures in a page of `browser`, which takes its time.
 *
 * @param field the rows that show each dot alone, see `Pair.run`
 * @returns `[{preview, stage}]`: the middle of each dot along x, px, in each picture that shows both, in order
 */
export async function readPair(browser, pictures, field, lasts) {
  const reader = await (await browser.newContext()).newPage();
  try {
    const found = (await reader.evaluate(findBoth, { pictures, field })).filter(({ preview, stage }) => preview !== null && stage !== null);
    if (found.length < (ENOUGH * lasts) / 1000) throw new Error(`${found.length} of ${pictures.length} pictures in ${lasts / 1000} s show both dots`);
    return found;
  } finally {
    await reader.context().close();
  }
}

/**
 * By how many ms the preview is ahead of the client's dot in each picture in which both are where the sine is steep.
 *
 * The phase of each is told by its place between its own extremes, x = middle - amplitude cos(2 pi phase). A layer that is drawn on whole
 * px is off to one side, always the same: to the right it seems ahead, to the left behind, and as much. So each picture to the
 * right is taken together with the nearest to the left.
 */
export function leads(pictures, rate) {
  const msPerRadian = 1000 / (2 * Math.PI * rate);
  const [preview, stage] = ['preview', 'stage'].map((which) => angles(pictures.map((one) => one[which])));
  const read = pictures.flatMap((_, i) => {
    if (preview[i] === null || stage[i] === null) return [];
    const right = pictures[Math.min(i + 1, pictures.length - 1)].stage > pictures[Math.max(i - 1, 0)].stage;
    return [{ right, ahead: (right ? 1 : -1) * (preview[i] - stage[i]) * msPerRadian }];
  });
  const [to, fro] = [true, false].map((way) => read.filter(({ right }) => right === way).map(({ ahead }) => ahead));
  return to.slice(0, fro.length).map((ahead, i) => (ahead + fro[i]) / 2);
}

/** The angle from 0 (left) to pi (right) of each place on a sine between the extremes of all; null where it is not steep. */
function angles(places) {
  const [least, most] = [Math.min(...places), Math.max(...places)];
  if (most - least < LEAST_WAY) throw new Error(`a dot went ${most - least} px, not to and fro`);
  return places.map((x) => {
    const way = ((least + most) / 2 - x) / ((most - least) / 2);
    return Math.abs(way) > STEEP ? null : Math.acos(way);
  });
}

/** Runs in a page of its own: of each picture the middle of what differs from its ground, along x, in the rows of the preview and of the stage. */
async function findBoth({ pictures, field }) {
  let context;
  const found = [];
  for (const data of pictures) {
    const bytes = Uint8Array.from(atob(data), (letter) => letter.charCodeAt(0));
    const picture = await createImageBitmap(new Blob([bytes], { type: 'image/png' }));
    context ??= new OffscreenCanvas(picture.width, picture.height).getContext('2d', { willReadFrequently: true });
    context.drawImage(picture, 0, 0);
    found.push({ preview: middle(field.preview), stage: middle(field.stage) });
  }
  return found;

  function middle({ from, to }) {
    const { data: pixels, width, height } = context.getImageData(0, from, context.canvas.width, to - from);
    const ground = [0, 1, 2].map((part) => pixels[part]);
    let [sum, x] = [0, 0];
    for (let at = 0; at < width * height; at++) {
      const off = Math.abs(pixels[4 * at] - ground[0]) + Math.abs(pixels[4 * at + 1] - ground[1]) + Math.abs(pixels[4 * at + 2] - ground[2]);
      if (off < 24) continue;
      sum += off;
      x += off * ((at % width) + 0.5);
    }
    return sum === 0 ? null : x / sum;
  }
}
