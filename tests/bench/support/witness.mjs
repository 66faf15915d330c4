// What a page of a live session draws and hears, noted in the page, in time that two browsers of one machine share.

/** Notes from now on, in this page and whatever it loads. */
export function witness(page) {
  return page.addInitScript(() => {
    const noted = globalThis.witnessed = { dots: [], lines: [] };
    const note = (element, t) => {
      const box = element.getBoundingClientRect();
      noted.dots.push({ t, x: box.x + box.width / 2 });
    };
    // Both dots are played by the browser: in every frame they stand where the document's timeline says.
    const look = () => {
      const dot = document.getElementById('dot') ?? document.querySelector('[data-part="preview"] [data-part="dot"]');
      if (dot && getComputedStyle(dot).visibility === 'visible') note(dot, document.timeline.currentTime);
      requestAnimationFrame(look);
    };
    requestAnimationFrame(look);

    const Socket = globalThis.WebSocket;
    globalThis.WebSocket = class extends Socket {
      constructor(...options) {
        super(...options);
        const line = { opened: null, heard: [] };
        noted.lines.push(line);
        this.addEventListener('open', () => { line.opened = performance.now(); });
        // Before the page's own handler, which reads the clock first of all.
        this.addEventListener('message', ({ data }) => { line.heard.push({ at: performance.now(), data }); });
      }
    };
  });
}

/**
 * All that was noted since the page was loaded. Times are the machine's monotonic clock in ms, which does not care about processes: the
 * driver is told by the browser when on that clock the page's time began. (`performance.timeOrigin` is by the wall clock,
 * read anew in every process, so a clock that is being set would come between the two.)
 *
 * @returns `{dots: [{t, x}], lines: [{opened, beats: [{at, page, beat}], views: [view]}], origin}`; `page` is page time, `origin` when that began
 */
export async function witnessed(page) {
  const cdp = await page.context().newCDPSession(page);
  await cdp.send('Performance.enable', { timeDomain: 'timeTicks' });
  const { metrics } = await cdp.send('Performance.getMetrics');
  await cdp.detach();
  const origin = metrics.find(({ name }) => name === 'NavigationStart').value * 1000;
  const { dots, lines } = await noted(page);
  return { origin, dots: dots.map(({ t, x }) => ({ t: t + origin, x })), lines };
}

/** The same of a page or of one page within another, with the dots in page time, ms. */
export async function noted(frame) {
  const { dots, lines } = await frame.evaluate(() => globalThis.witnessed);
  return {
    dots,
    lines: lines.map(({ opened, heard }) => {
      const messages = heard.map(({ at, data }) => ({ at, message: JSON.parse(data) }));
      return {
        opened,
        beats: messages.filter(({ message }) => message.type === 'beat').map(({ at, message }) => ({ page: at, beat: message })),
        views: messages.filter(({ message }) => message.type === 'view').map(({ message }) => message),
      };
    }),
  };
}
