import assert from "node:assert/strict";
import { test } from "node:test";
import { Desk } from "./desk.fixture";
import { lines } from "./opening";
import { aView } from "./sample.fixture";
import { holdsInShort, holdsWords } from "./words";
import type { Hold } from "../wire/Hold";
import type { Matter } from "../wire/Matter";

const open = (...matters: Matter[]): Hold[] => matters.map((matter) => ({ matter, against: false }));
const said = (desk: Desk): (string | undefined)[] => lines(desk.state).map((line) => `${line.name}: ${line.said}`);
const current = (desk: Desk): string | undefined => lines(desk.state).find((line) => line.current)?.name;

// Clinical reference 1.10: the first two minutes of every remote session.
test("one key a matter, in the order of the hour", () => {
  const desk = Desk.with(aView({ state: "hold", holds: open("nearby", "contact", "risk", "fitness", "consent", "line_drop") }));
  desk.does({ kind: "lower", shown: "opening" });
  const asked: (string | undefined)[] = [];
  for (const value of [1, 1, 2, 1, 2, 2, 1, 1, 2]) {
    asked.push(current(desk));
    desk.does({ kind: "opening_digit", value });
  }
  assert.deepEqual(asked, [
    "Where they are",
    "Private",
    "Who is near",
    "Emergency contact",
    "Risk",
    "Fit today",
    "Consent",
    "If the line drops",
    "How they are",
  ]);
  assert.equal(current(desk), undefined);
  assert.equal(said(desk)[4], "Risk: present, the plan stands");
  assert.equal(said(desk)[8], "How they are: unsteady");
});

test("a line is chosen to be answered anew, and what was said last counts", () => {
  const desk = Desk.with(aView({ holds: open("risk") }));
  desk.does({ kind: "choose", matter: "risk" });
  desk.does({ kind: "opening_digit", value: 3 });
  assert.equal(said(desk)[4], "Risk: present now");
  desk.does({ kind: "choose", matter: "risk" });
  desk.does({ kind: "opening_digit", value: 1 });
  assert.equal(said(desk)[4], "Risk: nothing new");
  desk.does({ kind: "choose", matter: "risk" });
  desk.does({ kind: "opening_digit", value: 9 });
  assert.equal(said(desk)[4], "Risk: nothing new");
  assert.match(desk.notice(), /no answer here/);
});

test("what holds a start is gone past by a code, but not a consent that was withdrawn", () => {
  const desk = Desk.with(aView({ holds: [...open("fitness"), { matter: "consent", against: true }] }));
  desk.does({ kind: "choose", matter: "fitness" });
  desk.does({ kind: "toggle_pass" });
  desk.does({ kind: "opening_digit", value: 6 });
  assert.equal(said(desk)[5], "Fit today: gone past: clinical judgement");
  desk.does({ kind: "choose", matter: "consent" });
  desk.does({ kind: "toggle_pass" });
  assert.match(desk.notice(), /talk about it afresh/);
});

test("as last time only where that may be said", () => {
  const desk = Desk.with(aView({ holds: open("nearby", "risk") }));
  desk.reads({ opened_before: ["somebody_to_help", "nothing_new"] });
  desk.does({ kind: "choose", matter: "nearby" });
  desk.does({ kind: "as_before" });
  assert.equal(said(desk)[2], "Who is near: somebody who can help, as last time");
  desk.does({ kind: "choose", matter: "risk" });
  desk.does({ kind: "as_before" });
  assert.match(desk.notice(), /asked anew every time/);
});

test("a re-evaluation that is due is rated by the digits, with what it is of", () => {
  const desk = Desk.with(aView({ holds: open("reevaluation") }));
  desk.reads({ opened_before: ["kept"], reevaluates: "the ferry" });
  desk.does({ kind: "choose", matter: "reevaluation" });
  assert.match(lines(desk.state).find((line) => line.current)?.why ?? "", /^the ferry\. SUD now/);
  desk.does({ kind: "opening_digit", value: 0 });
  const entry = desk.state.queue.at(-1)?.entry;
  assert.deepEqual([entry?.moment, entry?.value], ["reevaluation", { kind: "sud", value: 0 }]);
});

test("what holds a start is said beside HOLD in a word or two, and in a sentence after a press", () => {
  assert.deepEqual(holdsInShort([]), []);
  assert.deepEqual(holdsInShort(open("risk", "line_drop")), ["risk, lost line (f)"]);
  assert.deepEqual(holdsInShort(open("risk", "line_drop", "consent")), ["the opening (f)"]);
  assert.deepEqual(holdsWords(open("nearby", "risk", "consent")), ["The opening (f): 3 lines are open."]);
  assert.deepEqual(holdsWords([...open("nearby"), { matter: "risk", against: true }]), [
    "The opening (f) is open: who is near.",
    "The opening (f) speaks against it: risk.",
  ]);
});
