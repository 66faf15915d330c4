import assert from "node:assert/strict";
import { test } from "node:test";
import type { Entry } from "../wire/Entry";
import { add, failed, hasUnsaved, isSignedOut, kept, nextToSend, remove, retry, savingOf, sent, type Item, type Queue } from "./entries";

const anEntry = (id: string): Entry => ({
  id,
  set: "set-1",
  replaces: null,
  moment: "after_set",
  segment: null,
  from_client: false,
  value: { kind: "sud", value: 5 },
});
const item = (queue: Queue, id: string): Item => {
  const found = queue.find((one) => one.entry.id === id);
  assert.ok(found);
  return found;
};
const two = add(add([], anEntry("a"), 0), anEntry("b"), 10);

test("entries go one at a time, in order", () => {
  assert.equal(nextToSend(two, 10)?.id, "a");
  const going = sent(two, "a");
  assert.equal(nextToSend(going, 10), null);
  assert.equal(nextToSend(kept(going, { id: "a", at: "2030-01-02T14:07:31Z" }), 20)?.id, "b");
});

test("saved only by the server's answer, with its time", () => {
  assert.deepEqual(savingOf(item(two, "a"), 10), { saving: "queued", words: "queued" });
  assert.deepEqual(savingOf(item(sent(two, "a"), "a"), 100), { saving: "queued", words: "queued" });
  const saved = kept(sent(two, "a"), { id: "a", at: "2030-01-02T14:07:31Z" });
  assert.equal(savingOf(item(saved, "a"), 100).saving, "saved");
  assert.equal(item(saved, "a").savedAt, "2030-01-02T14:07:31Z");
});

test("without an answer it reads not saved before 5 s are over", () => {
  assert.equal(savingOf(item(sent(two, "a"), "a"), 4999).saving, "failed");
  assert.match(savingOf(item(two, "a"), 4999).words, /^not saved/);
});

test("a failed try comes again after 1, 2, 4, then every 5 s, and blocks the later ones meanwhile", () => {
  let queue: Queue = two;
  let now = 0;
  const waits: number[] = [];
  for (let i = 0; i < 6; i++) {
    queue = failed(sent(queue, "a"), "a", { kind: "offline" }, now);
    waits.push(item(queue, "a").due - now);
    assert.equal(nextToSend(queue, item(queue, "a").due - 1), null);
    now = item(queue, "a").due;
    assert.equal(nextToSend(queue, now)?.id, "a");
  }
  assert.deepEqual(waits, [1000, 2000, 4000, 5000, 5000, 5000]);
});

test("a refused entry says why, waits for the clinician and lets the later ones pass", () => {
  const queue = failed(sent(two, "a"), "a", { kind: "refused", words: "Too long." }, 0);
  assert.deepEqual(savingOf(item(queue, "a"), 0), { saving: "failed", words: "not saved: Too long." });
  assert.equal(nextToSend(queue, 99999)?.id, "b");
  assert.equal(nextToSend(retry(queue, "a", 5), 5)?.id, "a");
  assert.ok(hasUnsaved(queue));
  assert.equal(remove(queue, "a").length, 1);
});

test("an entry that is on its way or saved cannot be removed", () => {
  assert.equal(remove(two, "a").length, 2);
  assert.equal(remove(kept(two, { id: "a", at: "t" }), "a").length, 2);
});

test("without a sign-in it stays and is tried again", () => {
  const queue = failed(sent(two, "a"), "a", { kind: "signed_out" }, 0);
  assert.ok(isSignedOut(queue));
  assert.match(savingOf(item(queue, "a"), 1).words, /sign in again/);
  assert.equal(nextToSend(queue, 1000)?.id, "a");
  assert.ok(!isSignedOut(kept(queue, { id: "a", at: "t" })));
});

test("leaving is safe only when everything is saved", () => {
  assert.ok(!hasUnsaved([]));
  assert.ok(hasUnsaved(two));
  assert.ok(!hasUnsaved(kept(kept(two, { id: "a", at: "t" }), { id: "b", at: "t" })));
});
