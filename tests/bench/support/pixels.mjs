// Where the dot is in the pictures that the compositor puts on the screen, which go on while the page's script hangs.

/**
 * Films the stage until `stop()`.
 *
 * @param {Page} page the stage
 * @param {Page} reader any other page, to read the pictures with
 * @returns {Promise<{stop(): Promise<{t: number, x: number, y: number}[]>}>} t: the time of the frame, ms since the epoch;
 *   x, y: the middle of the dot in px of the page, only frames that show it
 */
export async function film(page, reader) {
  const cdp = await page.context().newCDPSession(page);
  const frames = [];
  cdp.on('Page.screencastFrame', ({ data, metadata, sessionId }) => {
    frames.push({ data, t: metadata.timestamp * 1000 });
    cdp.send('Page.screencastFrameAck', { sessionId }).catch(() => {}); // the film has been stopped meanwhile
  });
  const field = await page.evaluate(() => {
    const bottom = (element) => element.getBoundingClientRect();
    return { top: bottom(document.querySelector('header')).bottom, foot: bottom(document.querySelector('footer')).top, width: innerWidth };
  });
  await cdp.send('Page.startScreencast', { format: 'png', everyNthFrame: 1 });
  return {
    async stop() {
      await cdp.send('Page.stopScreencast');
      await cdp.detach();
      const found = [];
      for (const { data, t } of frames) {
        const place = await reader.evaluate(findDot, { data, field });
        if (place) found.push({ t, ...place });
      }
      return found;
    },
  };
}

/** Less from frame to frame is rest, px: what the reading of a soft edge is good for. */
export const STILL = 0.25;

/** Each frame that shows the dot elsewhere than the frame before: `{t, dt, step}`. */
export function movesOf(frames) {
  const steps = frames.slice(1).map((one, i) => ({ t: one.t, dt: one.t - frames[i].t, step: Math.hypot(one.x - frames[i].x, one.y - frames[i].y) }));
  return steps.filter(({ step }) => step > STILL);
}

/** Runs in `reader`: the middle of all that is much lighter than the field, between header and footer. */
async function findDot({ data, field }) {
  const bytes = Uint8Array.from(atob(data), (letter) => letter.charCodeAt(0));
  const picture = await createImageBitmap(new Blob([bytes], { type: 'image/png' }));
  const canvas = new OffscreenCanvas(picture.width, picture.height);
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
