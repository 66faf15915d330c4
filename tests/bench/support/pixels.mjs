// Where the dot is in the pictures that the compositor puts on the screen, which go on while the page's script hangs.

/**
 * Films the stage, sixty pictures a second while anything on it moves.
 *
 * @param {Page} page the stage, small: every picture is encoded
 * @param {Page} reader any other page, to read the pictures with
 */
export async function film(page, reader) {
  const field = await page.evaluate(() => ({
    top: document.querySelector('header').getBoundingClientRect().bottom,
    foot: document.querySelector('footer').getBoundingClientRect().top,
    width: innerWidth,
  }));
  const reel = await reelOf(page);
  return new Film(reel, reader, field);
}

/** The pictures of a page, as they come: `{frames: [{data, t}], stop()}`; t: the time of the frame, ms since the epoch. */
export async function reelOf(page) {
  const cdp = await page.context().newCDPSession(page);
  const frames = [];
  cdp.on('Page.screencastFrame', ({ data, metadata, sessionId }) => {
    frames.push({ data, t: metadata.timestamp * 1000 });
    cdp.send('Page.screencastFrameAck', { sessionId }).catch(() => {}); // the film has been stopped meanwhile
  });
  await cdp.send('Page.startScreencast', { format: 'png', everyNthFrame: 1 });
  const stop = async () => {
    await cdp.send('Page.stopScreencast');
    await cdp.detach();
  };
  return { frames, stop };
}

/** See `film`. */
class Film {
  constructor(reel, reader, field) {
    Object.assign(this, { reel, reader, field });
  }

  /** @returns `[{t, x, y}]` of what was filmed since the last time: t in ms since the epoch, x and y the middle of the dot in px of the page, only pictures that show it */
  async take() {
    // They may overtake one another on their way.
    const frames = this.reel.frames.splice(0).sort((a, b) => a.t - b.t);
    const found = [];
    for (const { data, t } of frames) {
      const place = await this.reader.evaluate(findDot, { data, field: this.field });
      if (place) found.push({ t, ...place });
    }
    return found;
  }

  /** Ends the film. @returns what `take` returns */
  async stop() {
    await this.reel.stop();
    return this.take();
  }
}

/** Less from frame to frame is rest, px: what the reading of a soft edge is good for. */
const STILL = 0.25;

/** Each frame that shows the dot elsewhere than the frame before: `{t, dt, step}`. */
export function movesOf(frames) {
  const steps = frames.slice(1).map((one, i) => ({ t: one.t, dt: one.t - frames[i].t, step: Math.hypot(one.x - frames[i].x, one.y - frames[i].y) }));
  return steps.filter(({ step }) => step > STILL);
}

/** Runs in `reader`: the middle of all that is much lighter than the field, between header and footer. */
async function findDot({ data, field }) {
  const bytes = Uint8Array.from(atob(data), (letter) => letter.charCodeAt(0));
  const picture = await createImageBitmap(new Blob([bytes], { type: 'image/png' }));
  const canvas = (globalThis.canvas ??= new OffscreenCanvas(picture.width, picture.height));
  const context = canvas.getContext('2d', { willReadFrequently: true });
  context.drawImage(picture, 0, 0);
  const scale = picture.width / field.width;
  const top = Math.ceil(field.top * scale);
  const { data: pixels, width, height } = context.getImageData(0, top, picture.width, Math.floor(field.foot * scale) - top);
  const light = (at) => pixels[at] + pixels[at + 1] + pixels[at + 2];
  const dark = light(0);
  let count = 0;
  let [x, y] = [0, 0];
  for (let row = 0; row < height; row++) {
    for (let column = 0; column < width; column++) {
      // Weighted by how light it is, so that the soft edge counts for what it is.
      const more = light(4 * (row * width + column)) - dark;
      if (more < 24) continue;
      count += more;
      x += more * (column + 0.5);
      y += more * (row + 0.5);
    }
  }
  return count === 0 ? null : { x: x / count / scale, y: (y / count + top) / scale };
}
