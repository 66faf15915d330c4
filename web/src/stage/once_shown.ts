/** When the screen has taken up what the script has just changed. */

/** Of a screen that shows sixty a second, ms. */
const FRAME = 1000 / 60;
/** Without frames for this long none is shown, ms. */
const NO_FRAMES = 300;

/**
 * Calls `then` once, when what was just changed is on the screen, with the page time of the last frame that showed what was there
 * before: until the change has reached the compositor, it goes on with what it has. The second animation frame begins no sooner than
 * that, so the last is the frame before it. Where no frames are drawn, as on a hidden page, it calls without a time.
 */
export function onceShown(then: (last: number | undefined) => void): void {
  if (document.visibilityState === "hidden") return then(undefined);
  let open = true;
  const close = (last: number | undefined) => {
    if (open) then(last);
    open = false;
  };
  requestAnimationFrame((first) => requestAnimationFrame((second) => close(Math.max(first, second - FRAME))));
  setTimeout(() => close(undefined), NO_FRAMES);
}
