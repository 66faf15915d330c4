// Closing from the desk: what is asked in which order, what a digit gives, and what is still open. Pure; what is right is the server's word.

/** A name for the server, and words. */
export type Choice = readonly [string, string];

/** What the server says about this session, see `sessions/close_desk.rs`. */
export interface Offer {
  kinds: readonly Choice[];
  proposed: string;
  becauses: readonly Choice[];
  effects: readonly Choice[];
  states: readonly Choice[];
  unsteady: readonly string[];
  /** Name, how far it is, and whether it is open. */
  asked: readonly (readonly [string, string, boolean])[];
  settled: readonly [string, string] | null;
  left: string | null;
  /** Risk turned the hour: nothing is asked about settling, and the safety plan comes first. */
  short: boolean;
  /** Whom they can call between sessions, in the practice's words. */
  crisis: string;
  /** Of each kind: what is said of the call afterwards where they leave steady, and where they do not; "": none is agreed. */
  calls: Readonly<Record<string, readonly [string, string]>>;
  form: Form;
  draft: number;
}

/** The form as the server has it: every field is a text. */
export type Form = Readonly<Record<string, string>>;

export interface Closing {
  offer: Offer;
  form: Form;
  /** The line that was chosen by hand; null: the first that is open. */
  chosen: string | null;
  /** What the server has against it, by field. */
  errors: Readonly<Record<string, string>>;
}

/** Where somebody is not steady: what is done before the session is closed. It stands with the state on leaving. */
export const SUPPORT: readonly string[] = [
  "I stayed until they were steadier",
  "somebody is with them now",
  "the emergency contact was called",
  "help was called for them",
];

/** One line of the panel. */
export interface Line {
  name: string;
  /** 1 to 3: how it ends, how they leave, who is there and what comes next. */
  step: 1 | 2 | 3;
  label: string;
  /** What to find out, and why. */
  why: string;
  choices: readonly Choice[];
  /** A text may be typed: of one line, or of several. */
  text: "" | "line" | "lines";
  said: string;
  /** It has to be filled in before the session is closed. */
  open: boolean;
  error: string;
  current: boolean;
}

export const STEPS = ["How it ends", "How they leave", "Who is there, and what comes next"] as const;

const NO_SESSION: readonly string[] = ["did_not_attend", "by_mistake"];
const of = ({ form }: Closing, name: string): string => form[name] ?? "";
const isNone = (closing: Closing): boolean => NO_SESSION.includes(of(closing, "kind"));
const isUnsteady = (closing: Closing): boolean => closing.offer.unsteady.includes(of(closing, "state"));
/** It is called complete though something is open: then it needs its code. */
const needsCode = (closing: Closing): boolean => of(closing, "kind") === "complete" && closing.offer.asked.some(([, , open]) => open);

type Draft = Pick<Line, "name" | "step" | "label" | "why"> & Partial<Pick<Line, "choices" | "text">> & { needed?: boolean };

function drafts(closing: Closing): Draft[] {
  const { offer } = closing;
  const none = isNone(closing);
  const open = offer.asked.filter(([, , isOpen]) => isOpen).map(([name]) => name);
  const ends = open.length === 0 ? "" : ` Still open: ${open.join(", ")}.`;
  const proposed = offer.kinds.find(([name]) => name === offer.proposed)?.[1] ?? "";
  const kind: Draft = {
    name: "kind",
    step: 1,
    label: "It ends",
    why: `By the record: ${proposed.toLowerCase()}.${ends} You decide.`,
    choices: offer.kinds,
    needed: true,
  };
  const because: Draft = {
    name: "because",
    step: 1,
    label: "Why all the same",
    why: "It is called complete though something is open. The code is kept with it.",
    choices: offer.becauses,
    needed: true,
  };
  const over: Draft = {
    name: "over",
    step: 1,
    label: "It was over at",
    why: `The last thing was written down ${offer.left ?? ""}. Empty: it is over now.`,
    text: "line",
  };
  const sud: Draft = { name: "sud", step: 1, label: "Closing SUD", why: "Only if it was asked anew. Closing never needs one.", text: "line" };
  const before = offer.settled === null ? "" : ` Last time, ${offer.settled[0]}: ${offer.settled[1]}.`;
  const used: Draft = {
    name: "resource",
    step: 2,
    label: "Used to settle",
    why: `The container, the calm place, breathing.${before}`,
    choices: offer.settled === null ? [] : [[offer.settled[1], "used again"]],
    text: "line",
    needed: of(closing, "effect") !== "not_needed",
  };
  const effect: Draft = {
    name: "effect",
    step: 2,
    label: "Its effect",
    why: "What you see and hear, not what was hoped for.",
    choices: offer.effects,
    needed: true,
  };
  const state: Draft = {
    name: "state",
    step: 2,
    label: "On leaving",
    why: "Let them say where they are and what day it is.",
    choices: offer.states,
    needed: true,
  };
  const support: Draft = {
    name: "state_more",
    step: 2,
    label: "Stay and support",
    why: "They are not steady: stay, ground, let somebody come. The safety plan is one key away (').",
    choices: SUPPORT.map((words) => [words, words]),
    text: "line",
    needed: true,
  };
  const companion: Draft = {
    name: "companion",
    step: 3,
    label: "With them now",
    why: "Who it is, or nobody.",
    choices: [["nobody", "nobody"]],
    text: "line",
    needed: true,
  };
  const call = offer.calls[of(closing, "kind")]?.[isUnsteady(closing) ? 1 : 0] ?? "";
  const next: Draft = {
    name: "next_contact",
    step: 3,
    label: "Next contact",
    why: `${call === "" ? "" : `${call} `}When, how, and who gets in touch. Say whom to call before that${offer.crisis === "" ? "." : `: ${offer.crisis}`}`,
    text: "line",
    needed: of(closing, "kind") !== "by_mistake",
  };
  const words: Draft = {
    name: "client_words",
    step: 3,
    label: "Last words on their page",
    why: "They may read this alone: what may go on coming, whom to call. Nothing that says why you met.",
    text: "lines",
  };
  const note: Draft = { name: "note", step: 3, label: "Note", why: "What was done and agreed. You can go on writing later.", text: "lines" };
  if (none) return [kind, next, words, note];
  if (offer.short)
    return [
      { ...kind, why: `Risk comes first: the safety plan is one key away ('). ${kind.why}` },
      state,
      ...(isUnsteady(closing) ? [support] : []),
      companion,
      next,
      words,
      note,
    ];
  return [
    kind,
    ...(needsCode(closing) ? [because] : []),
    ...(offer.left === null ? [] : [over]),
    sud,
    effect,
    ...(of(closing, "effect") === "not_needed" ? [] : [used]),
    state,
    ...(isUnsteady(closing) ? [support] : []),
    companion,
    next,
    words,
    note,
  ];
}

/** The panel, line by line. */
export function lines(closing: Closing): Line[] {
  const all = drafts(closing);
  const current = currentName(closing, all);
  return all.map(({ name, step, label, why, choices = [], text = "", needed = false }) => {
    const typed = of(closing, name);
    const said = choices.find(([code]) => code === typed)?.[1] ?? typed;
    return { name, step, label, why, choices, text, said, open: needed && typed.trim() === "", error: closing.errors[name] ?? "", current: name === current };
  });
}

function currentName(closing: Closing, all: readonly Draft[]): string | null {
  if (closing.chosen !== null && all.some(({ name }) => name === closing.chosen)) return closing.chosen;
  const wrong = all.find(({ name }) => closing.errors[name] !== undefined);
  return (wrong ?? all.find(({ name, needed }) => needed === true && of(closing, name).trim() === ""))?.name ?? null;
}

/** Texts that may stay empty, and are. */
export const emptyLines = (closing: Closing): string[] =>
  lines(closing).flatMap((line) => (line.text === "lines" && line.said.trim() === "" ? [line.label.toLowerCase()] : []));

/** The line after the one at hand, or before it; from none at hand the last one. Null: there is none. */
export function neighbour(closing: Closing, by: 1 | -1): string | null {
  const all = lines(closing);
  const at = all.findIndex((line) => line.current);
  return (at === -1 ? all.at(-1) : all[at + by])?.name ?? null;
}

/** How many lines are still open. */
export const openLines = (closing: Closing): number => lines(closing).filter((line) => line.open).length;

/** The panel as it opens, with what was typed before. */
export const opened = (offer: Offer): Closing => ({ offer, form: offer.form, chosen: null, errors: {} });

/** What was typed or chosen of a line; on to the next that is open. */
export function put(closing: Closing, name: string, value: string): Closing {
  const { [name]: _, ...errors } = closing.errors;
  return { ...closing, form: { ...closing.form, [name]: value }, errors, chosen: null };
}

/** What a digit gives of the line at hand; null: nothing here. */
export function digit(closing: Closing, value: number): Closing | null {
  const line = lines(closing).find((one) => one.current);
  const choice = line?.choices[value - 1];
  return line === undefined || choice === undefined ? null : put(closing, line.name, choice[0]);
}

/** A line is taken up by hand, or let go again. */
export const choose = (closing: Closing, name: string): Closing => ({ ...closing, chosen: closing.chosen === name ? null : name });

/** The server did not take it. What it says of the record is taken over, so that sending again replaces that knowingly. */
export function refused(closing: Closing, errors: Readonly<Record<string, string>>, now: Form = {}): Closing {
  return { ...closing, errors, chosen: null, form: { ...closing.form, ...now } };
}
