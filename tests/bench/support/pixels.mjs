// Where the dot is in the pictures that the compositor puts on the screen, which go on while the page's script hangs.
//
// The time that the browser tells with a picture is up to two frames from the one it shows. So each picture shows its time
// itself: a mark runs along the top of the page, moved by the compositor as the dot is, in the same frames.

/** The mark begins anew each second; its way in that time, px; where its strip ends, px. */
const STRIP = { lasts: 1_000, way: 400, foot: 12 };

/**
 * Films the stage, sixty pictures a second or one in `every` of them.
 *
 * @param {Page} page the stage, small: every picture is encoded; its dot is visible
 * @param {Page} reader any other page, to read the pictures with
 */
export async function film(page, reader, every = 1) {
  await page.evaluate(showTime, STRIP);
  const field = await page.evaluate(() => {
    const { left, bottom } = document.getElementById('leave').getBoundingClientRect();
    const foot = document.querySelector('footer').getBoundingClientRect().top;
    // With picture and voice the field begins beneath them.
    const top = document.body.dataset.calling === undefined ? 0 : document.getElementById('field').getBoundingClientRect().top;
    return { button: { left, bottom }, top, foot, size: document.getElementById('dot').getBoundingClientRect().width, width: innerWidth, origin: performance.timeOrigin };
  });
  return new Film(await reelOf(page, every), reader, { ...field, strip: STRIP });
}

/** Runs in the page: puts the mark on it, once. Its middle begins at 6 px. */
function showTime({ lasts, way, foot }) {
  if (document.getElementById('time-strip')) return;
  const [strip, mark] = [document.createElement('div'), document.createElement('div')];
  strip.id = 'time-strip';
  Object.assign(strip.style, { position: 'fixed', zIndex: 9, top: 0, left: 0, width: `${way + 12}px`, height: `${foot}px`, background: '#000', pointerEvents: 'none' });
  Object.assign(mark.style, { position: 'absolute', top: '3px', left: '3px', width: '6px', height: '6px', background: '#fff', willChange: 'transform' });
  strip.append(mark);
  document.body.append(strip);
  mark.animate({ transform: ['translateX(0)', `translateX(${way}px)`] }, { duration: lasts, iterations: Infinity }).startTime = 0;
}

/** The pictures of a page, as they come: `{frames: [{data, t}], stop()}`; t: about the time of the frame, ms since the epoch. */
export async function reelOf(page, every) {
  const cdp = await page.context().newCDPSession(page);
  const frames = [];
  cdp.on('Page.screencastFrame', ({ data, metadata, sessionId }) => {
    frames.push({ data, t: metadata.timestamp * 1000 });
    cdp.send('Page.screencastFrameAck', { sessionId }).catch(() => {}); // the film has been stopped meanwhile
  });
  await cdp.send('Page.startScreencast', { format: 'png', everyNthFrame: every });
  const stop = async () => {
    await cdp.send('Page.stopScreencast');
    await cdp.detach();
  };
  return { frames, stop };
}

/** The size of the dot is read to this much, px. */
const SAME_SIZE = 3;

/** See `film`. */
class Film {
  constructor(reel, reader, field) {
    Object.assign(this, { reel, reader, field });
  }

  /**
   * Ends the film. `blind` is then how long after the last picture of the dot the next picture was, ms: what became of the dot in that
   * time is not known.
   *
   * @returns `[{t, x, y}]`: t the page time of the frame, ms; x and y the middle of the dot, px of the page; only pictures that show
   *   the dot and nothing else: no words
   */
  async stop() {
    await this.reel.stop();
    const read = await this.reader.evaluate(findAll, { pictures: this.reel.frames.map(({ data }) => data), field: this.field });
    const pictures = read.flatMap(({ dot, mark }, i) => (mark ? [{ dot, t: timeOf(mark, this.reel.frames[i].t - this.field.origin) }] : []));
    // They may overtake one another on their way.
    pictures.sort((a, b) => a.t - b.t);
    const alone = ({ dot }) => dot !== null && Math.abs(dot.size - this.field.size) <= SAME_SIZE;
    const last = pictures.findLastIndex(alone);
    this.blind = last + 1 < pictures.length ? pictures[last + 1].t - pictures[last].t : 0;
    return pictures.filter(alone).map(({ t, dot }) => ({ t, ...dot }));
  }
}

/** Less from frame to frame is rest, px: what the reading of a soft edge is good for. */
const STILL = 0.25;

/** Each frame that shows the dot elsewhere than the frame before: `{t, dt, step}`. */
export function movesOf(frames) {
  const steps = frames.slice(1).map((one, i) => ({ t: one.t, dt: one.t - frames[i].t, step: Math.hypot(one.x - frames[i].x, one.y - frames[i].y) }));
  return steps.filter(({ step }) => step > STILL);
}

/** The page time that the mark shows and that is the nearest to `about`, ms. */
function timeOf({ x }, about) {
  const shown = ((x - 6) / STRIP.way) * STRIP.lasts;
  return shown + STRIP.lasts * Math.round((about - shown) / STRIP.lasts);
}

/** Runs in `reader`: of each picture the middle and size of the dot, above the footer, and of the mark; each is what is much lighter than its ground. */
async function findAll({ pictures, field: { strip, top, foot, button, width: pageWidth } }) {
  let context;
  let scale = 1;
  const found = [];
  for (const picture of pictures) found.push(await findBoth(picture));
  return found;

  async function findBoth(data) {
    const bytes = Uint8Array.from(atob(data), (letter) => letter.charCodeAt(0));
    const picture = await createImageBitmap(new Blob([bytes], { type: 'image/png' }));
    context ??= new OffscreenCanvas(picture.width, picture.height).getContext('2d', { willReadFrequently: true });
    context.drawImage(picture, 0, 0);
    scale = picture.width / pageWidth;
    const mark = light(0, strip.foot, (strip.way + 12) * scale);
    // The button for leaving stays where it is, in the corner that the dot never gets to.
    context.clearRect(button.left * scale - 2, 0, picture.width, button.bottom * scale + 2);
    return { dot: light(Math.max(strip.foot, top), foot, picture.width), mark };
  }

  /** All that is light in the rows from `from` to `to`, px of the page, and the first `columns` of the picture. */
  function light(from, to, columns) {
    const top = Math.ceil(from * scale);
    const { data: pixels, width, height } = context.getImageData(0, top, columns, Math.floor(to * scale) - top);
    const brightness = (at) => pixels[at] + pixels[at + 1] + pixels[at + 2];
    const dark = brightness(0);
    let sum = 0;
    let [x, y] = [0, 0];
    const [across, down] = [{ least: Infinity, most: -Infinity }, { least: Infinity, most: -Infinity }];
    const reach = (range, at) => {
      range.least = Math.min(range.least, at);
      range.most = Math.max(range.most, at);
    };
    for (let row = 0; row < height; row++) {
      for (let column = 0; column < width; column++) {
        // Weighted by how light it is, so that the soft edge counts for what it is.
        const more = brightness(4 * (row * width + column)) - dark;
        if (more < 24) continue;
        sum += more;
        x += more * (column + 0.5);
        y += more * (row + 0.5);
        reach(across, column);
        reach(down, row);
      }
    }
    const size = Math.max(across.most - across.least, down.most - down.least) / scale;
    return sum === 0 ? null : { x: x / sum / scale, y: (y / sum + top) / scale, size };
  }
}
