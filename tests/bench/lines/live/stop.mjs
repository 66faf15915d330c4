// The client's Stop, with the network off, to the last moving frame.

import { besideBusyCores } from '../../support/busy.mjs';
import { atMost, quantile } from '../../support/judge.mjs';
import { openLive } from '../../support/live.mjs';
import { stops } from '../../support/stops.mjs';

export default { name: "client's Stop to the last moving frame", needs: ['portal', 'browser'], run };

const TRIES = 20;

async function run() {
  const live = await openLive();
  try {
    const reader = await live.reader();
    const quiet = await stops(live, reader, TRIES);
    const loaded = await besideBusyCores(() => stops(live, reader, TRIES));
    return [
      atMost(quantile(quiet.map(({ after, frame }) => after / frame), 0.95), 1, ' frames', `quiet, p95 of ${TRIES}:`),
      atMost(quantile(loaded.map(({ after }) => after), 0.99), 50, ' ms', `every core busy beside it, p99 of ${TRIES}:`),
    ];
  } finally {
    await live.close();
  }
}
