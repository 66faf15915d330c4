// A link that is cut or falls silent, to rest, after as many signs of life as the silence limit needs to adapt.

import { atMost, quantile } from '../../support/judge.mjs';
import { LINKS } from '../../support/link.mjs';
import { openLive } from '../../support/live.mjs';

export default { name: 'link cut to rest', needs: ['portal', 'browser'], run };

const TRIES = 4;
/** The limit adapts after 100 gaps, four a second. */
const LEARNING = 27_000;

async function run() {
  // Side by side: for the most part both wait.
  return (await Promise.all([onLink(LINKS.near, 1500), onLink(LINKS.far, 2200)])).flat();
}

async function onLink(link, most) {
  const live = await openLive({ link });
  try {
    await live.page.waitForTimeout(LEARNING);
    const after = [];
    for (let i = 0; i < TRIES; i++) {
      await live.run();
      const since = await live.now();
      live.scene.link[i % 2 ? 'cut' : 'silence']();
      const { last } = await live.rested(700);
      after.push(last - since);
      live.scene.link.restore();
      await live.desk.until('STOPPED', 20_000);
    }
    return [atMost(quantile(after, 1), most, ' ms', `${link.label}, the slowest of ${TRIES}:`)];
  } finally {
    await live.close();
  }
}
