// How a client's page lies on its screen: what is cut off, covered, out of the middle, or too small to be touched.

/** WCAG 2.2, 2.5.5 (target size, enhanced): CSS px. */
const TARGET = 44;

/**
 * Faults of the client's page as it stands, as short lines; `[]` is what a test expects. Each thing is scrolled to first, so that what
 * can be reached by scrolling down counts as there.
 *
 * @param {{centred?: boolean}} [options] centred: what is read stands in the middle of the page, not only of its part of it
 */
export async function layoutFaults(page, { centred = true } = {}) {
  return page.evaluate(inspect, { centred, least: TARGET });
}

/** Runs in the page. */
function inspect({ centred, least }) {
  const faults = [];
  const name = (one) => `${one.tagName.toLowerCase()} "${(one.textContent || one.id).trim().slice(0, 30)}"`;
  const seen = (selector) => [...document.querySelectorAll(selector)].filter((one) => one.checkVisibility({ visibilityProperty: true }) && !one.matches('.unseen'));
  const main = document.querySelector('main');

  const reachable = () => {
    for (const one of seen('button, input, summary, a')) {
      one.scrollIntoView({ block: 'nearest' });
      const { x, y, width, height } = one.getBoundingClientRect();
      if (!one.contains(document.elementFromPoint(x + width / 2, y + height / 2))) faults.push(`${name(one)} lies under something`);
      if (width < least || height < least) faults.push(`${name(one)} is ${Math.round(width)} by ${Math.round(height)} px`);
    }
  };

  const words = (one) => {
    const range = document.createRange();
    range.selectNodeContents(one);
    return [...range.getClientRects()].filter(({ width, height }) => width > 1 && height > 1);
  };

  const whole = () => {
    for (const box of [document.scrollingElement, document.body, main]) {
      if (box.scrollWidth > box.clientWidth) faults.push(`${name(box)} scrolls sideways`);
    }
    for (const one of seen('h1, p, li, label, button, summary')) {
      const box = one.getBoundingClientRect();
      const out = words(one).some(({ left, right, top, bottom }) => left < Math.max(0, box.left - 1) || right > Math.min(innerWidth, box.right + 1)
        || one.matches('button, summary') && (top < box.top - 1 || bottom > box.bottom + 1));
      if (out) faults.push(`${name(one)} is cut off`);
    }
  };

  const apart = () => {
    const boxes = [...seen('main h1, main p, main li, main label, main button, main input, main svg, main .card'), ...seen('header summary, header #leave, footer button, #dot')];
    const rects = boxes.map(visible);
    boxes.forEach((one, i) => boxes.slice(i + 1).forEach((other, j) => {
      if (one.contains(other) || other.contains(one)) return;
      if (rects[i].some((a) => rects[i + 1 + j].some((b) => meet(a, b)))) faults.push(`${name(one)} lies over ${name(other)}`);
    }));
  };
  const meet = (a, b) => Math.min(a.right, b.right) - Math.max(a.left, b.left) > 1 && Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > 1;
  /** What of it can be seen: `main` scrolls, and of text the words count, not the box that they stand in. */
  const visible = (one) => {
    const rects = one.matches('h1, p, li, label') ? words(one) : [one.getBoundingClientRect()];
    if (!main.contains(one)) return rects;
    const view = main.getBoundingClientRect();
    return rects.map(({ left, right, top, bottom }) => ({ left, right, top: Math.max(top, view.top), bottom: Math.min(bottom, view.bottom) }));
  };

  const middle = () => {
    const view = main.getBoundingClientRect();
    const [centre, of] = centred ? [innerWidth / 2, 'the page'] : [(view.left + view.right) / 2, 'its part'];
    for (const one of [...main.children].filter((child) => child.checkVisibility() && !child.matches('.unseen'))) {
      // Of text the words count, not the box that they stand in.
      const rects = one.matches('h1, p') ? words(one) : [one.getBoundingClientRect()];
      if (rects.length === 0) continue;
      const at = (Math.min(...rects.map(({ left }) => left)) + Math.max(...rects.map(({ right }) => right))) / 2;
      if (Math.abs(at - centre) > 2) faults.push(`${name(one)} is ${Math.round(at - centre)} px beside the middle of ${of}`);
    }
  };

  for (const look of [reachable, whole, apart, middle]) look();
  main.scrollTop = 0;
  return faults;
}

/** What can be pressed on the page, by its words. */
export function pressable(page) {
  return page.evaluate(() => [...document.querySelectorAll('button, input, summary, a, [tabindex="0"]')]
    .filter((one) => one.checkVisibility({ visibilityProperty: true })).map((one) => one.textContent || one.id));
}
