/**
 * From degrees of visual angle to CSS px and back: the twin of `leeward_core::optics`.
 *
 * size = 2 · distance · tan(angle / 2). What the client did not measure is filled in so that a CSS
 * px has the angle its standard gives it: 1/96 inch seen from 28 inches, about 0.0213 degrees (CSS
 * Values and Units, "reference pixel").
 */
import type { Device } from "../wire/Device";

/** What of a device decides sizes. */
export type Screen = Pick<Device, "width_px" | "height_px" | "px_per_mm" | "distance_mm">;

const MM_PER_INCH = 25.4;
const REFERENCE_PX_PER_MM = 96 / MM_PER_INCH;
const REFERENCE_DISTANCE_MM = 28 * MM_PER_INCH;

/** Eye to screen in CSS px of that screen. */
function distancePx(screen: Screen): number {
  if (screen.distance_mm === null) return REFERENCE_DISTANCE_MM * REFERENCE_PX_PER_MM;
  return screen.distance_mm * (screen.px_per_mm ?? REFERENCE_PX_PER_MM);
}

/** CSS px that `degrees` take up on that screen, centred before the eye. */
export const pxOf = (degrees: number, screen: Screen): number =>
  2 * distancePx(screen) * Math.tan((degrees * Math.PI) / 360);

/** Degrees that `px` CSS px take up on that screen, centred before the eye. */
export const degreesOf = (px: number, screen: Screen): number =>
  (Math.atan(px / (2 * distancePx(screen))) * 360) / Math.PI;
