/**
 * From degrees of visual angle to CSS px and back: the twin of `leeward_core::optics`.
 * size = 2 · distance · tan(angle / 2).
 */
import type { Device } from "../wire/Device";

/** What of a device decides sizes. */
export type Screen = Pick<Device, "width_px" | "height_px" | "px_per_mm" | "distance_mm">;

/** Width and height of an ID-1 card (a bank card), mm: ISO/IEC 7810. */
export const CARD_MM = { width: 85.6, height: 53.98 } as const;
/** When the card was skipped: 96 px an inch, as CSS defines its px. */
export const DEFAULT_PX_PER_MM = 96 / 25.4;
/** When the distance was not stated, mm: about arm's length (common practice, no source). */
export const DEFAULT_DISTANCE_MM = 600;

/** Eye to screen in CSS px of that screen. */
const distancePx = (screen: Screen): number => (screen.distance_mm ?? DEFAULT_DISTANCE_MM) * (screen.px_per_mm ?? DEFAULT_PX_PER_MM);

/** CSS px that `degrees` take up on that screen, centred before the eye. */
export const pxOf = (degrees: number, screen: Screen): number => 2 * distancePx(screen) * Math.tan((degrees * Math.PI) / 360);

/** Degrees that `px` CSS px take up on that screen, centred before the eye. */
export const degreesOf = (px: number, screen: Screen): number => (Math.atan(px / (2 * distancePx(screen))) * 360) / Math.PI;
