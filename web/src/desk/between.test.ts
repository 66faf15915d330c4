import assert from "node:assert/strict";
import { test } from "node:test";
import { beside, digitBetween, digitWords, nextWords } from "./between";
import { Desk } from "./desk.fixture";
import { aSet, aView } from "./sample.fixture";
import { stripWords } from "./status";

test("each digit is one thing that was seen or tried, and every digit has its words", () => {
  const desk = Desk.with(aView({ set: aSet({ ended: "done" }) }));
  desk.does({ kind: "lower", shown: "between" });
  for (const value of [1, 4, 6, 0]) desk.does({ kind: "between_digit", value });
  assert.deepEqual(beside(desk.state), { saw: ["glazed", "far_away"], tried: ["arousal", "interweave"] });
  assert.deepEqual([1, 5, 6, 9, 0].map(digitWords), [
    "glazed",
    "something else",
    "ground, resource, shorter sets",
    "earlier memory, belief in the way",
    "a few words of your own",
  ]);
  for (let digit = 0; digit <= 9; digit++) assert.notEqual(digitWords(digit), "");
});

test("before the first set there is nothing that it could belong to", () => {
  const { state } = digitBetween(Desk.with(aView()).state, 1, "a", 0);
  assert.match(state.notice?.words ?? "", /belongs to a set/);
});

test("what the rules offer is said as an offer, what was tried last of all", () => {
  assert.equal(nextWords(null), null);
  assert.equal(nextWords({ kind: "back_to_target" }), "Settled twice in a row: back to the target, and SUD (s)?");
  const ladder = ["arousal", "mechanics", "focus", "earlier", "interweave"] as const;
  assert.equal(
    nextWords({ kind: "stuck", why: "same", ladder: [...ladder], tried: ["mechanics"] }),
    "The same in a row: grounding, focus, earlier memory or belief, your own words? You decide (-).",
  );
  assert.match(
    nextWords({ kind: "stuck", why: "not_lower", ladder: [...ladder], tried: [...ladder] }) ?? "",
    /^SUD no lower at two returns: grounding, mechanics/,
  );
});

test("it is offered between sets and not while one runs", () => {
  const desk = Desk.with(aView({ set: aSet({ ended: "done" }) }));
  desk.reads({ next: { kind: "back_to_target" } });
  const said = (): boolean => stripWords(desk.state, 0, null).some((words) => words.startsWith("Settled twice"));
  assert.ok(said());
  desk.sees({ state: "running", set: aSet({ id: "set-2", number: 2 }) });
  assert.ok(!said());
});

test("what bears on the offer brings the log anew once it is kept", () => {
  const desk = Desk.with(aView({ set: aSet({ ended: "done" }) }));
  desk.event({ kind: "tick" });
  desk.reads({});
  desk.does({ kind: "mark", change: "same" });
  const entry = desk.state.queue.at(-1)?.entry;
  assert.equal(desk.state.logIs, "loaded");
  desk.event({ kind: "kept", kept: { id: entry?.id ?? "", at: "2030-01-02T14:07:31Z" } });
  assert.notEqual(desk.state.logIs, "loaded", "it is due, or on its way");
});
