// How wide a path may really be on a screen whose card or distance was skipped.
import { pxOf } from "../live/optics";
import type { Device } from "../wire/Device";
import type { Plan } from "../wire/Plan";
import { degrees } from "./words";

interface Range {
  least: number;
  most: number;
}

/** Usual screens and how they are used, from memory: CSS px per mm, and mm from eye to screen. */
const SCALE: Range = { least: 3.5, most: 6.5 };
const DISTANCE: Range = { least: 250, most: 750 };
/** Eye to screen in CSS px when neither is known: fine screens are held near (250 mm of 6 px), coarse ones stand far (750 mm of 4.3 px). */
const NEITHER: Range = { least: 1500, most: 3225 };

function eyeToScreen({ px_per_mm: scale, distance_mm: distance }: Device): Range | null {
  const times = ({ least, most }: Range, by: number): Range => ({ least: least * by, most: most * by });
  if (scale === null) return distance === null ? NEITHER : times(SCALE, distance);
  return distance === null ? times(DISTANCE, scale) : null;
}

/** The least and the most degrees that `width` degrees, as ordered, are likely to be there; null when both were measured. */
export function likelyWidth(width: number, device: Device): Range | null {
  const range = eyeToScreen(device);
  if (range === null) return null;
  const angle = (px: number): number => (Math.atan(pxOf(width, device) / (2 * px)) * 360) / Math.PI;
  return { least: angle(range.most), most: angle(range.least) };
}

/** The same in words, none when both were measured. */
export function likelyWords(plan: Plan, device: Device): string[] {
  const likely = likelyWidth(plan.width, device);
  return likely === null ? [] : [`uncalibrated: likely ${degrees(Math.round(likely.least))} to ${degrees(Math.round(likely.most))}`];
}
