// A page of nothing but one CSS animation, for comparison: a dot of the same size on the same way.

import { launch } from '../../browser/support/chromium.mjs';
import { openLive } from './live.mjs';

/**
 * A set without an end that runs while `act` measures it, and a bare page in a browser of its own.
 *
 * @param {object} options those of `openLive`; sound: both pages hold the sound open as well
 * @param act `(stage, bare) => result`; each `{browser, page}`
 */
export async function besideBare({ sound, ...options }, act) {
  const live = await openLive({ sound, ...options });
  const beside = await launch();
  try {
    await live.desk.press('u');
    const bare = await (await beside.newContext({ viewport: live.page.viewportSize() })).newPage();
    await bareAnimation(bare, { width: 500, dot: 30, seconds: 1 });
    if (sound) await openSound(bare);
    await live.run();
    await live.unwatch();
    const result = await act({ browser: live.scene.far, page: live.page }, { browser: beside, page: bare });
    if ((await live.desk.word()) !== 'RUNNING') throw new Error(`the set ended while it was measured: ${await live.desk.word()}`);
    return result;
  } finally {
    await beside.close();
    await live.close();
  }
}

/** As the client's page does it when the client listens to a tone: in a tap. */
async function openSound(page) {
  await page.evaluate(() => addEventListener('pointerdown', () => { globalThis.sound = new AudioContext({ latencyHint: 'interactive' }); }, { once: true }));
  await page.mouse.click(10, 10);
  await page.waitForFunction(() => globalThis.sound?.state === 'running');
}

/** Fills `page`: the dot moves without end, by a style sheet alone. */
function bareAnimation(page, { width, dot, seconds }) {
  return page.setContent(`<!doctype html><title>bare</title><style>
    body { margin: 0; background: #1c2326; overflow: hidden; }
    i { position: fixed; top: 50%; left: 50%; width: ${dot}px; height: ${dot}px; margin: ${-dot / 2}px; border-radius: 50%; background: #d9c9a3;
      animation: go ${seconds / 2}s ease-in-out infinite alternate; }
    @keyframes go { from { transform: translate(${-width / 2}px, 0); } to { transform: translate(${width / 2}px, 0); } }
  </style><i></i>`);
}
