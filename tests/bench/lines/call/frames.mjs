// Frames that the compositor did not draw of a running set with the call beside it, and of the same set at the same time on a page without. Both calls'
// ends and the relay share the machine with the two pages.

import { compared, drawn } from '../../support/drawn.mjs';
import { openLive } from '../../support/live.mjs';

export default { name: 'lost frames with the call', needs: ['portal', 'browser', 'relay'], run };

const SECONDS = 40;
const AT_MOST = 1.1;

async function run() {
  const lives = [];
  try {
    for (const call of [true, false]) lives.push(await openLive({ call }));
    for (const live of lives) {
      await live.desk.press('u');
      await live.run();
      await live.unwatch();
    }
    const [withCall, without] = await Promise.all(lives.map(({ scene, page }) => drawn({ browser: scene.far, page }, SECONDS)));
    const words = await Promise.all(lives.map(({ desk }) => desk.word()));
    if (words.some((word) => word !== 'RUNNING')) throw new Error(`a set ended while it was measured: ${words.join(', ')}`);
    return compared(withCall, without, AT_MOST, `${SECONDS} s of a set:`);
  } finally {
    for (const live of lives) await live.close();
  }
}
