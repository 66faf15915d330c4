// What a page of a live session draws and hears, noted in the page, in time that two browsers of one machine share.

/** Notes from now on, in this page and whatever it loads. */
export function witness(page) {
  return page.addInitScript(() => {
    const noted = globalThis.witnessed = { dots: [], lines: [] };
    // The preview is drawn for the time that the page read last before it drew.
    const now = performance.now.bind(performance);
    let read = 0;
    performance.now = () => (read = now());

    const note = (element, t) => {
      const box = element.getBoundingClientRect();
      noted.dots.push({ t, x: box.x + box.width / 2 });
    };
    // The stage's dot is played by the browser: in every frame it stands where the document's timeline says.
    const look = () => {
      const dot = document.getElementById('dot');
      if (dot && getComputedStyle(dot).visibility === 'visible') note(dot, document.timeline.currentTime);
      requestAnimationFrame(look);
    };
    requestAnimationFrame(look);
    // The desk's preview is placed by the page's script, which is seen as soon as that has run.
    addEventListener('DOMContentLoaded', () => {
      const dot = document.querySelector('[data-part="preview"] [data-part="dot"]');
      if (dot) new MutationObserver(() => note(dot, read)).observe(dot, { attributeFilter: ['style'] });
    });

    const Socket = globalThis.WebSocket;
    globalThis.WebSocket = class extends Socket {
      constructor(...options) {
        super(...options);
        const line = { opened: null, heard: [] };
        noted.lines.push(line);
        this.addEventListener('open', () => { line.opened = now(); });
        // Before the page's own handler, which reads the clock first of all.
        this.addEventListener('message', ({ data }) => { line.heard.push({ at: now(), data }); });
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
  const { dots, lines } = await page.evaluate(() => globalThis.witnessed);
  return {
    origin,
    dots: dots.map(({ t, x }) => ({ t: t + origin, x })),
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
