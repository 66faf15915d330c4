import assert from "node:assert/strict";
import { test } from "node:test";
import { after, firstOpen, Keeper, whole } from "./steps";

test("a form goes on where it was left, and ends at its last question", () => {
  assert.equal(firstOpen(["0", null, "1"]), 1);
  assert.equal(firstOpen(["0", "-", "1"]), 2);
  assert.equal(firstOpen([]), 0);
  assert.deepEqual([after(0, 3), after(2, 3)], [1, 2]);
  assert.deepEqual([whole(["0", "-"]), whole(["0", null])], [true, false]);
});

test("one sending at a time; what changed meanwhile goes with the next", async () => {
  let release: (version: number) => void = () => undefined;
  let sent = 0;
  const told: string[] = [];
  const keeper = new Keeper(
    () => {
      sent += 1;
      return new Promise<number>((resolve) => {
        release = resolve;
      });
    },
    (how) => told.push(how),
    () => undefined,
  );
  const first = keeper.changed();
  void keeper.changed();
  void keeper.changed();
  assert.equal(sent, 1);
  release(1);
  await new Promise((resolve) => setTimeout(resolve, 0));
  assert.equal(sent, 2);
  release(2);
  await first;
  assert.deepEqual(told, ["kept"]);
});

test("what was not reached is tried again; what another device has is not", async () => {
  const answers: (number | null | undefined)[] = [undefined, 1, null];
  const told: string[] = [];
  let retry: () => void = () => undefined;
  const keeper = new Keeper(
    () => Promise.resolve(answers.shift()),
    (how) => told.push(how),
    (again) => {
      retry = again;
    },
  );
  await keeper.changed();
  retry();
  await new Promise((resolve) => setTimeout(resolve, 0));
  await keeper.changed();
  assert.deepEqual(told, ["unkept", "kept", "elsewhere"]);
});
