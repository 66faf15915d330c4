// The client's Stop, with the network off and the call running, to the last moving frame.

import { atMost, quantile } from '../../support/judge.mjs';
import { openLive } from '../../support/live.mjs';
import { stops } from '../../support/stops.mjs';

export default { name: "client's Stop to the last moving frame, in a call", needs: ['portal', 'browser', 'relay'], run };

const TRIES = 20;

async function run() {
  const live = await openLive({ call: true });
  try {
    const tries = await stops(live, await live.reader(), TRIES);
    return atMost(quantile(tries.map(({ after, frame }) => after / frame), 0.95), 1, ' frames', `p95 of ${TRIES}:`);
  } finally {
    await live.close();
  }
}
