// What the opening asks, matter by matter: our own words for what to find out and why it matters.
import type { Answer } from "../wire/Answer";
import type { Because } from "../wire/Because";
import type { Matter } from "../wire/Matter";

/** One matter as the panel asks it. */
export interface Asked {
  matter: Matter;
  /** Its name. */
  name: string;
  /** What to find out, and why. */
  why: string;
  /** In the order of the digits, from 1. */
  answers: readonly (readonly [Answer, string])[];
  /** It may be as last time. */
  repeats?: true;
  /** Asked from the second session on. */
  later?: true;
}

/** In the order of the hour (clinical reference 1.10). */
export const ASKED: readonly Asked[] = [
  {
    matter: "location",
    name: "Where they are",
    why: "Ask for the address aloud: help is sent there. The number to call back is in the card.",
    answers: [
      ["usual_place", "where they usually are"],
      ["another_place", "another place"],
    ],
  },
  {
    matter: "privacy",
    name: "Private",
    why: "Alone, or content with who may hear.",
    answers: [
      ["private", "private"],
      ["overheard", "somebody may listen"],
    ],
  },
  {
    matter: "nearby",
    name: "Who is near",
    why: "Who could come if it is needed.",
    answers: [
      ["nobody", "nobody"],
      ["somebody_to_help", "somebody who can help"],
      ["others", "others"],
    ],
    repeats: true,
  },
  {
    matter: "contact",
    name: "Emergency contact",
    why: "Whether that person can be reached during this hour.",
    answers: [
      ["reachable", "can be reached"],
      ["not_reachable", "cannot"],
    ],
    repeats: true,
  },
  {
    matter: "risk",
    name: "Risk",
    why: "Danger to them or to others, asked every time.",
    answers: [
      ["nothing_new", "nothing new"],
      ["plan_stands", "present, the plan stands"],
      ["acute", "present now"],
    ],
  },
  {
    matter: "fitness",
    name: "Fit today",
    why: "Sleep, substances, what has happened since.",
    answers: [
      ["fit", "fit"],
      ["strained", "strained, and enough"],
      ["not_fit", "not today"],
    ],
    repeats: true,
  },
  {
    matter: "consent",
    name: "Consent",
    why: "Whether they still want this, and all of it. A stop is no withdrawal.",
    answers: [
      ["consents", "stands"],
      ["no_reprocessing", "withdrawn: reprocessing"],
      ["no_stimulation", "withdrawn: all stimulation"],
    ],
  },
  {
    matter: "line_drop",
    name: "If the line drops",
    why: "Who calls whom, and how soon.",
    answers: [
      ["way_agreed", "agreed"],
      ["way_open", "not agreed"],
    ],
    repeats: true,
  },
  {
    matter: "arrival",
    name: "How they are",
    why: "As they arrive. No set waits for it.",
    answers: [
      ["steady", "steady"],
      ["unsteady", "unsteady"],
    ],
  },
  {
    matter: "agreed",
    name: "What was agreed",
    why: "Last time, for between the sessions. No set waits for it.",
    answers: [
      ["kept", "kept"],
      ["partly_kept", "in part"],
      ["not_kept", "not"],
    ],
    later: true,
  },
  {
    matter: "reprocessing",
    name: "Reprocessing",
    why: "Today's plan. Without it a calm place still works.",
    answers: [
      ["planned", "planned"],
      ["not_for_risk", "not today: risk"],
      ["not_as_they_are", "not today: as they are"],
      ["not_by_wish", "not today: their wish"],
      ["not_for_time", "not today: time"],
    ],
  },
];

/** Said beside the answers. */
export const TIME = { name: "Time", why: "How long this hour is, and what of it is kept for closing. No set waits for it." };

/** Rated, not answered: with the scale's own digits. */
export const RATED: Partial<Record<Matter, { name: string; why: string }>> = {
  reevaluation: { name: "Re-evaluation", why: "SUD now of the target worked on last time. VOC and what is new may follow." },
  assessment: { name: "Assessment", why: "SUD of today's target before the first set: what all that follows is compared with." },
};

/** Codes for what is gone past, in the order of the digits. */
export const CODES: readonly (readonly [Because, string])[] = [
  ["asked_elsewhere", "asked before, or by somebody else"],
  ["client_declines", "the client does not want it"],
  ["too_much_now", "too much now"],
  ["fits_the_facts", "fits the facts"],
  ["does_not_apply", "does not apply today"],
  ["judgement", "clinical judgement"],
];
