import assert from "node:assert/strict";
import { test } from "node:test";
import { digit, choose, emptyLines, lines, neighbour, openLines, opened, put, refused, SUPPORT, type Closing, type Offer } from "./closing";

const offer = (more: Partial<Offer> = {}): Offer => ({
  kinds: [
    ["complete", "Complete: the target is at its end"],
    ["incomplete", "Incomplete: begun, and set aside for now"],
    ["no_reprocessing", "No reprocessing took place"],
    ["did_not_attend", "The client did not attend: no session"],
  ],
  proposed: "incomplete",
  becauses: [["judgement", "Clinical judgement"]],
  effects: [
    ["settled", "Settled after it"],
    ["not_needed", "Nothing was needed"],
  ],
  states: [
    ["calm", "Calm"],
    ["unsettled", "Still unsettled"],
  ],
  unsteady: ["unsettled"],
  asked: [
    ["SUD", "Open: 4", true],
    ["VOC", "Reached: 7", false],
  ],
  settled: null,
  left: null,
  form: { kind: "", note: "", version: "1" },
  short: false,
  crisis: "",
  calls: { incomplete: ["", "A call is due."], complete: ["", ""] },
  draft: 0,
  ...more,
});
const names = (closing: Closing): string[] => lines(closing).map((line) => line.name);
const current = (closing: Closing): string | undefined => lines(closing).find((line) => line.current)?.name;
const press = (closing: Closing, value: number): Closing => digit(closing, value) ?? assert.fail(`${value} means nothing at ${current(closing)}`);

// Incomplete: contained, no installation and no scan; closing never needs a SUD (clinical reference 1.7).
test("an incomplete closing is asked line by line, and needs no SUD", () => {
  let closing = press(opened(offer()), 2);
  assert.equal(current(closing), "effect");
  closing = press(closing, 1);
  assert.equal(current(closing), "resource");
  closing = press(put(closing, "resource", "the quay"), 1);
  assert.deepEqual([current(closing), closing.form.state], ["companion", "calm"]);
  closing = put(press(closing, 1), "next_contact", "Thursday");
  assert.deepEqual([openLines(closing), closing.form.companion, closing.form.sud ?? ""], [0, "nobody", ""]);
  assert.equal(current(closing), undefined);
});

test("called complete though something is open, it asks why; the record's own word is said and not chosen", () => {
  const closing = opened(offer());
  assert.match(lines(closing)[0]?.why ?? "", /^By the record: incomplete.*Still open: SUD\. You decide\./);
  assert.equal(closing.form.kind, "");
  assert.equal(current(press(closing, 1)), "because");
  assert.ok(!names(press(opened(offer({ asked: [["SUD", "Reached: 0", false]] })), 1)).includes("because"));
});

test("who leaves unsteady is stayed with first", () => {
  const closing = press(choose(press(opened(offer()), 2), "state"), 2);
  assert.ok(names(closing).includes("state_more"));
  const held = choose(closing, "state_more");
  assert.equal(press(held, 2).form.state_more, SUPPORT[1]);
  assert.ok(lines(closing).some((line) => line.name === "state_more" && line.open));
});

test("of what did not take place only the next contact is asked", () => {
  const closing = press(opened(offer()), 4);
  assert.deepEqual(names(closing), ["kind", "next_contact", "client_words", "note"]);
});

test("what was used last time is taken over by its digit, and needs nothing where nothing was needed", () => {
  const closing = choose(press(opened(offer({ settled: ["session 3", "the quay"] })), 2), "resource");
  assert.equal(press(closing, 1).form.resource, "the quay");
  assert.ok(!names(press(choose(closing, "effect"), 2)).includes("resource"));
});

test("what the server refuses is marked and taken up first, and typing on it clears the mark", () => {
  const closing = refused(press(opened(offer()), 2), { note: "The record now says “x”." }, { version: "4" });
  assert.deepEqual([current(closing), closing.form.version], ["note", "4"]);
  assert.equal(lines(put(closing, "note", "mine")).find((line) => line.name === "note")?.error, "");
});

test("a session that was left asks when it was over", () => {
  assert.ok(names(opened(offer({ left: "Mon 2 Mar, 14:05" }))).includes("over"));
  assert.equal(digit(opened(offer()), 9), null);
});

test("arrows lead to every line, those too that may stay empty, and what is empty is said", () => {
  const closing = choose(press(opened(offer()), 2), "next_contact");
  assert.equal(neighbour(closing, 1), "client_words");
  assert.equal(neighbour(closing, -1), "companion");
  assert.equal(neighbour(choose(closing, "note"), 1), null);
  const done = put(
    put(put(put(put(press(opened(offer()), 2), "effect", "not_needed"), "state", "calm"), "companion", "nobody"), "next_contact", "Monday"),
    "note",
    "x",
  );
  assert.deepEqual([openLines(done), neighbour(done, -1), emptyLines(done)], [0, "note", ["last words on their page"]]);
});

test("the call afterwards is said before it is agreed", () => {
  const call = (closing: Closing): string => lines(closing).find((line) => line.name === "next_contact")?.why ?? "";
  const closing = press(opened(offer()), 2);
  assert.ok(!call(closing).startsWith("A call"));
  assert.ok(call(put(closing, "state", "unsettled")).startsWith("A call is due. When"));
});
