/** When the screen has taken up what the script has just changed. */

/** Of a screen that shows sixty a second, ms. */
const FRAME = 1000 / 60;
/** So much of a frame the compositor waits for the page's script, ms, before it draws what it has; measured by film. */
const WAITS = 12;
/** Without frames for this long none is shown, ms. */
const NO_FRAMES = 300;

/**
 * Calls `then` once, when what was just changed goes to the screen, with the page time of the last frame that showed what was there
 * before. A script that is in time has its change shown in the very frame that asks for it. Until it has had its turn, the compositor
 * goes on with what it has. Where no frames are drawn, as on a hidden page, it calls without a time.
 */
export function onceShown(then: (last: number | undefined) => void, now = () => performance.now()): void {
  if (document.visibilityState === "hidden") return then(undefined);
  let open = true;
  const close = (last: number | undefined) => {
    if (open) then(last);
    open = false;
  };
  requestAnimationFrame((asked) => {
    const late = Math.max(0, Math.ceil((now() - asked - WAITS) / FRAME));
    close(asked + (late - 1) * FRAME);
  });
  setTimeout(() => close(undefined), NO_FRAMES);
}
