// What a key means. Pure: (key, where the focus is, state) -> action. The table below is also what the key sheet shows.
import type { Action, Lower } from "./model";

/** The parts of a keydown that matter here. */
export interface Press {
  key: string;
  shift: boolean;
  /** Control, Alt or Meta is down: the press belongs to the browser or the system. */
  modified: boolean;
  /** The key is being held. */
  repeat: boolean;
  /** An input method is composing a character. */
  composing: boolean;
}

/** Where the keyboard focus is: on nothing in particular, in the words field, in another field, on a button or link. */
export type Place = "keys" | "words" | "field" | "button";

export interface KeyState {
  armed: "sud" | "voc" | null;
  /** What shows: some panels give the digits a meaning of their own. */
  panel: Lower;
  /** A tapped rate waits to be set. */
  tapped: boolean;
  /** Single-character keys are on (WCAG 2.2, 2.1.4 lets people turn them off). */
  shortcuts: boolean;
}

export interface Outcome {
  action: Action | null;
  /** The browser shall not act on the press as well. */
  prevent: boolean;
}

interface Shortcut {
  action: Action;
  /** With Shift held. */
  shifted?: Action;
  /** Goes on while the key is held. */
  repeats?: true;
}

const step = (setting: "rate" | "width" | "dot" | "path" | "length" | "channels" | "purpose", direction: 1 | -1): Action => ({
  kind: "step",
  setting,
  direction,
});

const ARROWS: Record<string, Action> = {
  ArrowLeft: step("rate", -1),
  ArrowRight: step("rate", 1),
  ArrowDown: step("width", -1),
  ArrowUp: step("width", 1),
};

const SHORTCUTS: Record<string, Shortcut> = {
  e: { action: { kind: "end" } },
  "+": { action: { kind: "extend" } },
  // Plus without Shift on many keyboards.
  "=": { action: { kind: "extend" } },
  i: { action: { kind: "sight" } },
  x: { action: { kind: "cannot_see" } },
  d: { action: step("dot", 1), shifted: step("dot", -1) },
  p: { action: step("path", 1), shifted: step("path", -1) },
  n: { action: step("channels", 1), shifted: step("channels", -1) },
  ",": { action: step("length", -1), repeats: true },
  ".": { action: step("length", 1), repeats: true },
  t: { action: step("purpose", 1) },
  u: { action: { kind: "toggle_open" } },
  o: { action: { kind: "lower", shown: "mechanics" } },
  a: { action: { kind: "lower", shown: "log" } },
  r: { action: { kind: "toggle_private" } },
  z: { action: { kind: "undo_setting" } },
  y: { action: { kind: "tap" } },
  q: { action: { kind: "ask_sides" } },
  w: { action: { kind: "to_words" } },
  j: { action: { kind: "mark", change: "changing" } },
  k: { action: { kind: "mark", change: "same" } },
  l: { action: { kind: "mark", change: "settled" } },
  s: { action: { kind: "arm", scale: "sud" } },
  v: { action: { kind: "arm", scale: "voc" } },
  b: { action: { kind: "next_moment" } },
  f: { action: { kind: "lower", shown: "opening" } },
  "-": { action: { kind: "lower", shown: "between" } },
  m: { action: { kind: "lower", shown: "card" }, shifted: { kind: "mute" } },
  g: { action: { kind: "lower", shown: "target" } },
  c: { action: { kind: "lower", shown: "join" } },
  "?": { action: { kind: "lower", shown: "keys" } },
  h: { action: { kind: "toggle_preview" } },
  ";": { action: { kind: "lower", shown: "phase" } },
  "'": { action: { kind: "lower", shown: "safety" } },
  "/": { action: { kind: "ask_client" } },
  "#": { action: { kind: "lower", shown: "closing" } },
};

/** Every key that the desk answers to outside its fields; each is labelled on the page. */
export const LABELLED_KEYS: readonly string[] = ["Esc", "Space", "←", "→", "↓", "↑", "=", "Del", ...Object.keys(SHORTCUTS).filter((key) => key !== "=")];

const LEFT_ALONE: Outcome = { action: null, prevent: false };
const SWALLOWED: Outcome = { action: null, prevent: true };

/** The rating that a key gives while `scale` is armed: a digit, or t for 10 on SUD. Whether it lies on the scale is the reducer's business. */
function ratingKey(key: string, scale: "sud" | "voc"): number | null {
  if (/^[0-9]$/.test(key)) return Number(key);
  return scale === "sud" && key.toLowerCase() === "t" ? 10 : null;
}

/** What a key means while the opening shows; null: what it means elsewhere. */
function openingKey(key: string): Action | null {
  if (/^[0-9]$/.test(key)) return { kind: "opening_digit", value: Number(key) };
  if (key.toLowerCase() === "t") return { kind: "opening_digit", value: 10 };
  if (key === "=") return { kind: "as_before" };
  return key === "-" ? { kind: "toggle_pass" } : null;
}

/** What a key means while this panel shows; null: what it means elsewhere. */
function panelKey(key: string, panel: Lower): Action | null {
  if (panel === "opening") return openingKey(key);
  if (!/^[0-9]$/.test(key)) return null;
  const value = Number(key);
  switch (panel) {
    case "between":
      return { kind: "between_digit", value };
    case "phase":
      return { kind: "phase_digit", value };
    case "steady":
      return { kind: "steady_digit", value };
    case "card":
      return { kind: "reach_digit", value };
    case "closing":
      return { kind: "closing_digit", value };
    case "target":
      return { kind: "turn", value };
    case "mechanics":
      return value === 0 ? null : { kind: "preset", index: value - 1 };
    default:
      return null;
  }
}

function characterKey(press: Press, state: KeyState): Outcome {
  if (!state.shortcuts) return LEFT_ALONE;
  const value = state.armed === null ? null : ratingKey(press.key, state.armed);
  if (value !== null) return press.repeat ? SWALLOWED : { action: { kind: "rate", value }, prevent: true };
  const own = panelKey(press.key, state.panel);
  if (own !== null) return press.repeat ? SWALLOWED : { action: own, prevent: true };
  const shortcut = SHORTCUTS[press.key.toLowerCase()];
  if (shortcut === undefined) return LEFT_ALONE;
  if (press.repeat && !shortcut.repeats) return SWALLOWED;
  return { action: press.shift && shortcut.shifted ? shortcut.shifted : shortcut.action, prevent: true };
}

/** The one place that gives a key its meaning. Escape comes before everything, whatever has the focus. */
export function keyAction(press: Press, place: Place, state: KeyState): Outcome {
  if (press.key === "Escape") return { action: { kind: "stop" }, prevent: true };
  if (press.modified || press.composing) return LEFT_ALONE;
  if (place === "words") return press.key === "Enter" ? { action: { kind: "save_words" }, prevent: true } : LEFT_ALONE;
  if (place === "field") return LEFT_ALONE;
  if (press.key === "Enter" && state.tapped && state.shortcuts) return { action: press.repeat ? null : { kind: "set_tapped" }, prevent: true };
  if (press.key === "Enter" && state.panel === "closing" && place === "keys" && state.shortcuts)
    return { action: press.repeat ? null : { kind: "closing_enter" }, prevent: true };
  if (press.key === "Enter" && state.panel === "join" && place === "keys" && state.shortcuts)
    return { action: press.repeat ? null : { kind: "to_admission" }, prevent: true };
  if (press.key === " ") {
    if (!state.shortcuts) return LEFT_ALONE;
    return press.repeat ? SWALLOWED : { action: { kind: "start" }, prevent: true };
  }
  // No character, so it works with the single keys off too: it must not have to be found first.
  if (press.key === "Delete" || press.key === "Backspace") return { action: press.repeat ? null : { kind: "too_much" }, prevent: true };
  const line = ({ ArrowUp: -1, ArrowDown: 1 } as const)[press.key];
  if (line !== undefined && state.panel === "closing") return { action: { kind: "closing_move", by: line }, prevent: true };
  const arrow = ARROWS[press.key];
  if (arrow !== undefined) return { action: arrow, prevent: true };
  return characterKey(press, state);
}

/** Whether letting this key go would click a focused button: then the page swallows the keyup too. */
export function swallowsRelease(key: string, place: Place, state: KeyState): boolean {
  return key === " " && state.shortcuts && (place === "button" || place === "keys");
}
