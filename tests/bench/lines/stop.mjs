// The client's Stop, with the network off, to the last moving frame.

import { besideBusyCores } from '../support/busy.mjs';
import { atMost, quantile } from '../support/judge.mjs';
import { openLive } from '../support/live.mjs';
import { film, movesOf } from '../support/pixels.mjs';

export default { name: "client's Stop to the last moving frame", needs: ['portal', 'browser'], run };

const TRIES = 20;

async function run() {
  const live = await openLive();
  try {
    const reader = await live.reader();
    const quiet = await tries(live, reader);
    const loaded = await besideBusyCores(() => tries(live, reader));
    return [
      atMost(quantile(quiet.map(({ after, frame }) => after / frame), 0.95), 1, ' frames', `quiet, p95 of ${TRIES}:`),
      atMost(quantile(loaded.map(({ after }) => after), 0.99), 50, ' ms', `every core busy beside it, p99 of ${TRIES}:`),
    ];
  } finally {
    await live.close();
  }
}

async function tries(live, reader) {
  const results = [];
  for (let i = 0; i < TRIES; i++) {
    await live.run();
    live.scene.link.silence();
    const reel = await film(live.page, reader);
    await live.page.waitForTimeout(150);
    await live.page.keyboard.press(i % 2 ? 'Space' : 'Escape');
    const { stops, frame } = await live.rested();
    const moving = movesOf(await reel.stop());
    if (moving.length < 3) throw new Error(`the film shows ${moving.length} moving frames`);
    results.push({ after: Math.max(0, moving.at(-1).t - stops[0]), frame });
    live.scene.link.restore();
    await live.desk.until('STOPPED BY CLIENT', 20_000);
  }
  return results;
}
