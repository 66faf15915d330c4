// How far ahead of the client's dot the desk's preview is in one frame of one screen that shows both, read from its pixels.
//
// On a poor link a page knows the room's time to some ms only, more or less by chance in each set, so that a set may show ten. That is
// what the line live_clock is about; here it is taken out, set by set: what the two pages' clocks said is found again from the beats they
// heard. What is left is what the drawing itself does, the same in every set.

import { atMost, quantile } from '../../support/judge.mjs';
import { LINKS } from '../../support/link.mjs';
import { Pair } from '../../support/pair.mjs';
import { filmPair, leads, readPair } from '../../support/pair_film.mjs';

/** Sets by pages whose clocks begin anew, each filmed for `lasts` ms from `from` ms on: the median is over all of them. */
const PARTS = [{ link: LINKS.near, sets: 4 }, { link: LINKS.far, sets: 6 }];
const FROM = 15_000;
const LASTS = 12_000;
const MOST = 0.7;

export default { name: 'preview and dot in one frame', needs: ['portal', 'browser'], run };

async function run({ web }) {
  const pair = await Pair.open(1);
  try {
    const { RoomClock } = await web('live/clock');
    const results = [];
    for (const part of PARTS) results.push(judged(part, await measured(pair, part, RoomClock)));
    return results;
  } finally {
    await pair.close();
  }
}

/** @returns for each set `{seen, clocks}`: by how many ms the preview is ahead in each picture, and by how many its page's clock was */
async function measured(pair, { link, sets }, RoomClock) {
  const each = [];
  for (let i = 0; i < sets; i++) {
    const field = await pair.run(link);
    await pair.page.waitForTimeout(FROM);
    const from = await pair.now();
    const pictures = await filmPair(pair.page, LASTS);
    const clocks = quantile(await pair.clocksApart(from, from + LASTS, RoomClock), 0.5);
    await pair.stop();
    // Only now, so that the set does not suffer from it.
    each.push({ seen: leads(await readPair(pair.scene.near, pictures, field, LASTS), field.rate), clocks });
  }
  return each;
}

function judged({ link }, each) {
  const drawn = each.map(({ seen, clocks }) => seen.map((ahead) => ahead - clocks));
  const all = drawn.flat();
  const alone = (of) => each.map((one, i) => of(one, i).toFixed(2)).join(', ');
  const lead = quantile(all, 0.5);
  const spread = `${all.length} pictures in ${each.length} sets, each set alone ${alone((_, i) => quantile(drawn[i], 0.5))}`;
  const seen = `with what the clocks were apart ${quantile(each.flatMap((one) => one.seen), 0.5).toFixed(2)}, each set alone ${alone((one) => quantile(one.seen, 0.5))}`;
  return atMost(Math.abs(lead), MOST, ' ms', `${link.label} each way, the preview is drawn ${lead < 0 ? 'behind' : 'ahead'} by, median (${spread}; ${seen}):`);
}
