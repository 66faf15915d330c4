// From the client's Stop to the last moving frame, as the screen shows it.

import { film, movesOf } from './pixels.mjs';

/** The client's Stop, `tries` times, with the network off: `[{after, frame}]`, how long the dot moved on, and a frame's time, ms. */
export async function stops(live, reader, tries) {
  const results = [];
  for (let i = 0; i < tries; i++) {
    await live.run();
    live.scene.link.silence();
    const reel = await film(live.page, reader);
    await live.page.waitForTimeout(150);
    await live.page.keyboard.press(i % 2 ? 'Space' : 'Escape');
    const { stops: taps, frame } = await live.rested();
    const moving = movesOf(await reel.stop());
    if (moving.length < 3) throw new Error(`the film shows ${moving.length} moving frames`);
    results.push({ after: Math.max(0, moving.at(-1).t - taps[0]), frame });
    live.scene.link.restore();
    await live.desk.until('STOPPED BY CLIENT', 20_000);
  }
  return results;
}
