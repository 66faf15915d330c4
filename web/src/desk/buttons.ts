// What a button means: its data attributes, read into an action. Pure.
import type { Change } from "../wire/Change";
import type { Matter } from "../wire/Matter";
import type { Action, Lower, Scale } from "./model";
import type { Setting } from "./plan";

/** The parts of an element's dataset that are read. */
export type Data = Readonly<Record<string, string | undefined>>;

const SETTINGS: Setting[] = ["rate", "width", "dot", "path", "length", "channels", "purpose"];
const CHANGES: Change[] = ["changing", "same", "settled"];
const PANELS: Lower[] = ["log", "join", "opening", "phase", "between", "steady", "safety", "closing", "card", "target", "mechanics", "keys"];
const MATTERS: Matter[] = [
  "location",
  "privacy",
  "nearby",
  "contact",
  "risk",
  "fitness",
  "consent",
  "line_drop",
  "arrival",
  "agreed",
  "reevaluation",
  "assessment",
  "reprocessing",
  "time",
];
const SCALES: Scale[] = ["sud", "voc"];
const PLAIN = [
  "stop",
  "start",
  "end",
  "extend",
  "sight",
  "cannot_see",
  "take_control",
  "toggle_open",
  "undo_setting",
  "ask_sides",
  "next_moment",
  "toggle_preview",
  "toggle_private",
  "toggle_shortcuts",
  "as_before",
  "toggle_pass",
  "too_much",
  "ask_client",
] as const;
const ON_ENTRY = ["take_back", "put_back", "retry", "edit"] as const;

const pick = <T extends string>(list: readonly T[], value: string | undefined): T | undefined => list.find((one) => one === value);

/** The action of an element with these data attributes, or null when they make none. `shift`: the step goes the other way. */
export function buttonAction(data: Data, shift: boolean): Action | null {
  const plain = pick(PLAIN, data.act);
  if (plain !== undefined) return { kind: plain };
  const onEntry = pick(ON_ENTRY, data.act);
  if (onEntry !== undefined) return data.entry === undefined ? null : { kind: onEntry, entry: data.entry };
  switch (data.act) {
    case "step":
      return stepAction(data, shift);
    case "mark": {
      const change = pick(CHANGES, data.change);
      return change === undefined ? null : { kind: "mark", change };
    }
    case "arm": {
      const scale = pick(SCALES, data.scale);
      return scale === undefined ? null : { kind: "arm", scale };
    }
    case "open_row":
      return data.row === undefined ? null : { kind: "open_row", row: data.row };
    case "preset":
      return data.index === undefined ? null : { kind: "preset", index: Number(data.index) };
    case "rate":
      return data.value === undefined ? null : { kind: "rate", value: Number(data.value) };
    case "opening_digit":
      return data.value === undefined ? null : { kind: "opening_digit", value: Number(data.value) };
    case "phase_digit":
    case "steady_digit":
    case "reach_digit":
    case "turn":
      return data.value === undefined ? null : { kind: data.act, value: Number(data.value) };
    case "between_digit":
      return data.value === undefined ? null : { kind: "between_digit", value: Number(data.value) };
    case "choose": {
      const matter = pick(MATTERS, data.matter);
      return matter === undefined ? null : { kind: "choose", matter };
    }
    case "lower": {
      const shown = pick(PANELS, data.shown);
      return shown === undefined ? null : { kind: "lower", shown };
    }
    default:
      return null;
  }
}

function stepAction(data: Data, shift: boolean): Action | null {
  const setting = pick(SETTINGS, data.setting);
  if (setting === undefined) return null;
  const forward = (data.direction === "1") !== shift;
  return { kind: "step", setting, direction: forward ? 1 : -1 };
}
