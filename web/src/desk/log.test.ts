import assert from "node:assert/strict";
import { test } from "node:test";
import type { Entry } from "../wire/Entry";
import type { LogSet } from "../wire/LogSet";
import type { SessionLog } from "../wire/SessionLog";
import { add, failed } from "./entries";
import { lastRating, mergeLogs, rows, standing, withSet, written } from "./log";
import { EMPTY_LOG, freshDesk } from "./model";
import { aPlan, aSet } from "./sample.fixture";

const at = new Date(2030, 0, 2, 14, 7, 31).toISOString();
const entry = (id: string, value: Entry["value"], replaces: string | null = null, set: string | null = "set-1"): Entry => ({
  id,
  set,
  replaces,
  moment: "after_set",
  segment: null,
  from_client: false,
  value,
});
const aLogSet = (changes: Partial<LogSet> = {}): LogSet => ({ id: "set-1", number: 1, plan: aPlan(), cycles: 24.02, ending: "done", ...changes });
const log = (entries: Entry[], sets: LogSet[] = [aLogSet()]): SessionLog => ({ ...EMPTY_LOG, sets, entries: entries.map((one) => ({ entry: one, at })) });

test("rows come latest first, with cycles shown of cycles planned, and what came before the first set last", () => {
  const sets = [
    aLogSet(),
    aLogSet({ id: "set-2", number: 2, cycles: 11.4, ending: "stopped_by_client" }),
    aLogSet({ id: "set-3", number: 3, cycles: null, ending: "unknown" }),
  ];
  const drawn = rows(log([entry("a", { kind: "sud", value: 8 }, null, null)], sets), [], 0, null);
  assert.deepEqual(
    drawn.map((row) => `${row.number} ${row.done}`),
    ["3 ?/24 eyes", "2 11/24 eyes", "1 24 eyes", " before set 1"],
  );
  assert.deepEqual(
    drawn.map((row) => row.ending),
    ["end unknown", "stopped by client", "", ""],
  );
});

test("a set without an end runs only while it is known to", () => {
  const open = [aLogSet({ ending: null })];
  assert.deepEqual(
    rows(log([], open), [], 0, "set-1").map((row) => [row.ending, row.broken]),
    [["running", false]],
  );
  assert.deepEqual(
    rows(log([], open), [], 0, null).map((row) => [row.ending, row.broken]),
    [["end unknown", true]],
  );
});

test("a cycle counts when it is complete; a hundredth short of it is measurement", () => {
  assert.match(rows(log([], [aLogSet({ cycles: 23.99 })]), [], 0, null)[0]?.done ?? "", /^24 /);
  assert.match(rows(log([], [aLogSet({ cycles: 23.9 })]), [], 0, null)[0]?.done ?? "", /^23\/24 /);
});

test("each entry says what is true of its saving", () => {
  const queue = failed(add([], entry("b", { kind: "words", words: "odd" }), 0), "b", { kind: "refused", words: "Too long." }, 0);
  const [row] = rows(log([entry("a", { kind: "sud", value: 5 })]), add(queue, entry("c", { kind: "change", change: "same" }), 0), 10, null);
  assert.deepEqual(
    row?.chips.map((chip) => [chip.text, chip.saving, chip.status]),
    [
      ["SUD 5", "saved", "saved 14:07:31"],
      ["odd", "failed", "not saved: Too long."],
      ["same", "queued", "queued"],
    ],
  );
});

test("history keeps both values: a corrected one stays and is marked", () => {
  const [row] = rows(log([entry("a", { kind: "sud", value: 5 }), entry("b", { kind: "sud", value: 6 }, "a")]), [], 0, null);
  assert.deepEqual(
    row?.chips.map((chip) => [chip.text, chip.standing]),
    [
      ["SUD 5", "replaced"],
      ["SUD 6", "current"],
    ],
  );
});

test("a taken-back entry stays readable; put back, it stands again once", () => {
  const taken = [entry("a", { kind: "words", words: "cold" }), entry("b", { kind: "taken_back" }, "a")];
  const [row] = rows(log(taken), [], 0, null);
  assert.deepEqual(
    row?.chips.map((chip) => [chip.text, chip.standing, chip.status]),
    [["cold", "taken_back", "taken back, saved 14:07:31"]],
  );
  const again = [...taken, entry("c", { kind: "words", words: "cold" }, "b")];
  assert.deepEqual(
    rows(log(again), [], 0, null)[0]?.chips.map((chip) => [chip.id, chip.standing]),
    [["c", "current"]],
  );
  assert.deepEqual(standing(written(log(taken), [])), []);
  assert.deepEqual(
    standing(written(log(again), [])).map((one) => one.id),
    ["c"],
  );
});

test("what was refused does not count: the entry it would have replaced stands", () => {
  const refused = (one: Entry) => failed(add([], one, 0), one.id, { kind: "refused", words: "Corrected already." }, 0);
  const rated = [entry("a", { kind: "sud", value: 5 })];
  const better = refused(entry("b", { kind: "sud", value: 6 }, "a"));
  assert.deepEqual(
    standing(written(log(rated), better)).map((one) => one.id),
    ["a"],
  );
  assert.deepEqual(
    rows(log(rated), better, 0, null)[0]?.chips.map((chip) => [chip.id, chip.standing]),
    [
      ["a", "current"],
      ["b", "current"],
    ],
  );
  const away = refused(entry("b", { kind: "taken_back" }, "a"));
  assert.deepEqual(
    rows(log(rated), away, 0, null)[0]?.chips.map((chip) => [chip.standing, chip.saving, chip.status]),
    [["current", "failed", "not taken back, not saved: Corrected already."]],
  );
});

test("a correction counts where its first entry was asked, and an early one is not the latest", () => {
  const early = entry("a", { kind: "sud", value: 9 }, null, "set-1");
  const late = entry("b", { kind: "sud", value: 4 }, null, "set-2");
  const corrected: Entry = { ...entry("c", { kind: "sud", value: 8 }, "a", null), moment: "closing" };
  const kept = standing(written(log([early, late, corrected]), []));
  assert.deepEqual(
    kept.map((one) => [one.id, one.set, one.moment]),
    [
      ["c", "set-1", "after_set"],
      ["b", "set-2", "after_set"],
    ],
  );
  assert.equal(lastRating({ ...freshDesk(0), log: log([early, late, corrected]) }, "sud"), 4);
});

test("a re-evaluation of another target is not this target's last rating", () => {
  const again: Entry = { ...entry("a", { kind: "sud", value: 2 }, null, null), moment: "reevaluation" };
  const at = (other_reevaluated: boolean) => lastRating({ ...freshDesk(0), log: { ...log([again]), other_reevaluated } }, "sud");
  assert.deepEqual([at(true), at(false)], [null, 2]);
});

test("an entry in the record and in the queue is drawn once", () => {
  const both = rows(log([entry("a", { kind: "sud", value: 5 })]), add([], entry("a", { kind: "sud", value: 5 }), 0), 0, null);
  assert.equal(both[0]?.chips.length, 1);
});

test("a rating asked at another moment than after a set says when", () => {
  const asked: Entry = { ...entry("a", { kind: "voc", value: 6 }), moment: "installation" };
  assert.equal(rows(log([asked]), [], 0, null)[0]?.chips[0]?.text, "VOC 6 (installation)");
});

test("the room's set joins the log; the server's log keeps what only this page has heard", () => {
  const here = withSet(EMPTY_LOG, aSet({ ended: "done" }), 24);
  assert.equal(here.sets[0]?.cycles, 24);
  assert.equal(mergeLogs(log([], [aLogSet({ cycles: null })]), here).sets[0]?.cycles, 24);
  assert.equal(mergeLogs(log([], [aLogSet({ cycles: 23 })]), here).sets[0]?.cycles, 23);
  for (const ending of [null, "link_lost", "unknown"] as const) {
    assert.equal(mergeLogs(log([], [aLogSet({ cycles: 23, ending })]), here).sets[0]?.cycles, 24);
    assert.equal(mergeLogs(log([], [aLogSet({ cycles: 25, ending })]), here).sets[0]?.cycles, 25);
  }
  assert.equal(mergeLogs(EMPTY_LOG, here).sets.length, 1);
});

test("what does not open is said so, leaves the rest alone, and is neither undone nor corrected unseen", () => {
  const [row] = rows(log([entry("a", { kind: "unreadable" }), entry("b", { kind: "sud", value: 4 })], [aLogSet({ plan: null })]), [], 0, null);
  assert.deepEqual([row?.number, row?.done, row?.order, row?.rated], ["1", "24/?", "its order does not open", "SUD 4"]);
  assert.deepEqual(
    row?.chips.map((chip) => [chip.text, chip.unreadable]),
    [
      ["This entry does not open. Tell the administrator.", true],
      ["SUD 4", false],
    ],
  );
});

test("a line says what stands, and what is true of the saving of all of it", () => {
  const kept = [entry("a", { kind: "words", words: "SUD 3, she says" }), entry("b", { kind: "change", change: "same" }), entry("c", { kind: "sud", value: 5 })];
  const taken = entry("d", { kind: "taken_back" }, "b");
  const [saved] = rows(log(kept), [], 0, null);
  assert.deepEqual([saved?.said, saved?.rated, saved?.saving, saved?.status], ["SUD 3, she says · same", "SUD 5", "saved", "saved 14:07:31"]);
  assert.equal(rows(log([...kept, taken]), [], 0, null)[0]?.said, "SUD 3, she says");
  const queued = add([], entry("e", { kind: "voc", value: 3 }), 0);
  assert.deepEqual(rows(log(kept), queued, 0, null)[0]?.status, "queued");
  const refused = failed(queued, "e", { kind: "refused", words: "Too late." }, 0);
  assert.deepEqual(rows(log(kept), refused, 0, null)[0]?.status, "not saved: Too late.");
  assert.equal(rows(log([]), [], 0, null)[0]?.status, "");
});
