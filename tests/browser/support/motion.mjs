// Where the dot really is: sampled in every frame from the page's layout, not from what the page says of itself.

import { PATIENCE } from './history.mjs';

/** Samples from now on, in this page and whatever it loads, until `watched.off`; call it before the stage is opened. */
export function watchDot(page) {
  return page.addInitScript(() => {
    const watched = globalThis.watched = { samples: [], stops: [], heard: [] };
    const sample = (t) => {
      const dot = document.getElementById('dot');
      if (dot) {
        const box = dot.getBoundingClientRect();
        const visible = getComputedStyle(dot).visibility === 'visible';
        watched.samples.push({ t, x: box.x + box.width / 2, y: box.y + box.height / 2, visible, page: document.body.dataset.page });
      }
      if (!watched.off) requestAnimationFrame(sample);
    };
    requestAnimationFrame(sample);
    for (const kind of ['keydown', 'pointerdown']) {
      addEventListener(kind, (event) => {
        watched.stops.push(event.timeStamp);
        watched.heard.push(watched.samples.length);
      }, { capture: true });
    }
  });
}

/** Forgets what was sampled. @returns page time now, ms */
export function fresh(page) {
  return page.evaluate(() => {
    for (const list of ['samples', 'stops', 'heard']) globalThis.watched[list].length = 0;
    return performance.now();
  });
}

/**
 * Everything sampled since `fresh`: `{samples: [{t, x, y, visible, page}], stops: [t], heard: [count]}`; t is page time, ms, page the name of
 * what stands beside the dot; stops when each key or tap happened, heard how many samples there were when the page came to hear of it.
 */
export const sampled = (page) => page.evaluate(() => globalThis.watched);

/** Waits until the dot has not moved for `ms`, in samples that went on all that time. */
export function stillFor(page, ms, timeout = PATIENCE) {
  return page.waitForFunction((quiet) => {
    const { samples } = globalThis.watched;
    const last = samples.at(-1);
    const since = samples.findLastIndex((one, i) => one.t <= last.t - quiet && i >= 0);
    return since >= 0 && samples.slice(since).every((one) => !one.visible || Math.hypot(one.x - last.x, one.y - last.y) < 0.01);
  }, ms, { timeout });
}

/** Waits until the dot is under way: has gone `px` from where it was first sampled. */
export function underWay(page, px = 150) {
  return page.waitForFunction((far) => {
    const seen = globalThis.watched.samples.filter((one) => one.visible);
    return seen.length > 1 && Math.hypot(seen.at(-1).x - seen[0].x, seen.at(-1).y - seen[0].y) > far;
  }, px, { timeout: PATIENCE });
}

/** Less is no motion, px: keyframes are written with three decimals. */
const STILL = 0.01;

/** Each frame that shows the visible dot elsewhere than the frame before: `{t, dt, step, page}`. */
export function steps(samples) {
  return samples.slice(1).flatMap((one, i) => {
    const before = samples[i];
    const step = Math.hypot(one.x - before.x, one.y - before.y);
    return one.visible && before.visible && step > STILL ? [{ t: one.t, dt: one.t - before.t, step, page: one.page }] : [];
  });
}

/** Page time of the first and the last moving frame; `undefined` when none moved. */
export function motionOf(samples) {
  const moved = steps(samples);
  return moved.length === 0 ? undefined : { first: moved[0].t, last: moved.at(-1).t };
}

/** With frames further apart than this around it, nobody can say where the dot turned: it may have gone on and come back between them; ms. */
const TURN_SEEN = 40;

/**
 * The dot's passes along x, from turn to turn: `{way, whole}`. way: px, with the sign of its direction; whole: no frames were missing where it
 * began and ended, as they are on a busy machine.
 */
export function passes(samples) {
  const found = [];
  const seen = samples.filter((one) => one.visible);
  for (let i = 1; i < seen.length; i++) {
    const way = seen[i].x - seen[i - 1].x;
    if (Math.abs(way) <= STILL) continue;
    const last = found.at(-1);
    if (last && Math.sign(last.way) === Math.sign(way)) {
      last.way += way;
      continue;
    }
    // It was furthest between the frames before and after the one that has it furthest.
    const near = seen[i].t - seen[i - 1].t <= TURN_SEEN && (i < 2 || seen[i - 1].t - seen[i - 2].t <= TURN_SEEN);
    if (last) last.whole &&= near;
    found.push({ way, whole: near });
  }
  return found;
}
