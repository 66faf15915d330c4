import assert from "node:assert/strict";
import { test } from "node:test";
import { after, firstOpen, Keeper, type Standing, type Went, whole } from "./steps";

test("a form goes on where it was left, and ends at what was passed over or at its last question", () => {
  assert.equal(firstOpen(["0", null, "1"]), 1);
  assert.equal(firstOpen(["0", "-", "1"]), 2);
  assert.equal(firstOpen([]), 0);
  assert.deepEqual([after(0, ["0", null, null]), after(2, ["0", null, "1"]), after(2, ["0", "1", "1"])], [1, 1, 2]);
  assert.deepEqual([whole(["0", "-"]), whole(["0", null])], [true, false]);
});

/** A keeper whose sendings are answered by hand. */
function held() {
  const sent: ((went: Went) => void)[] = [];
  const told: Standing[] = [];
  const timers: { run: () => void; milliseconds: number; live: boolean }[] = [];
  const keeper = new Keeper(
    () => new Promise<Went>((resolve) => sent.push(resolve)),
    (standing) => told.push(standing),
    (run, milliseconds) => {
      const timer = { run, milliseconds, live: true };
      timers.push(timer);
      return () => {
        timer.live = false;
      };
    },
  );
  const answer = async (went: Went): Promise<void> => {
    sent.at(-1)?.(went);
    await new Promise((resolve) => setTimeout(resolve, 0));
  };
  return { keeper, sent, told, timers, answer };
}

test("one sending at a time, of the latest; nothing is called kept before all of it is", async () => {
  const { keeper, sent, told, answer } = held();
  keeper.changed();
  keeper.changed();
  keeper.changed();
  assert.equal(sent.length, 1);
  await answer("kept");
  assert.deepEqual([sent.length, told], [2, ["keeping"]], "what changed meanwhile goes with the next");
  await answer("kept");
  assert.deepEqual(told, ["keeping", "kept"]);
  keeper.changed();
  assert.equal(told.at(-1), "keeping", "it does not stay called kept");
});

test("what was not reached is tried again by one timer, ever more slowly, and at once when something changes", async () => {
  const { keeper, sent, told, timers, answer } = held();
  keeper.changed();
  await answer("again");
  assert.deepEqual(told, ["keeping", "unkept"]);
  keeper.changed();
  assert.deepEqual([sent.length, timers[0]?.live], [2, false], "the timer is taken back");
  await answer("again");
  timers.at(-1)?.run();
  await answer("again");
  assert.deepEqual(
    timers.map((timer) => timer.milliseconds),
    [2000, 4000, 8000],
  );
  assert.equal(timers.filter((timer) => timer.live).length, 1, "one waits at a time");
  timers.at(-1)?.run();
  await answer("kept");
  assert.equal(told.at(-1), "kept");
});

test("handing in waits until all is kept, tries at once when it is not, and hears why it cannot be", async () => {
  const { keeper, sent, answer } = held();
  assert.equal(await keeper.settled(), "kept", "nothing was changed");
  keeper.changed();
  const first = keeper.settled();
  await answer("kept");
  assert.equal(await first, "kept");
  keeper.changed();
  await answer("again");
  const second = keeper.settled();
  assert.equal(sent.length, 3, "not after the timer");
  await answer("again");
  assert.equal(await second, "unkept");
  const third = keeper.settled();
  await answer("over");
  assert.equal(await third, "over");
  keeper.changed();
  assert.equal(sent.length, 4, "nothing goes to a link that holds no more");
});

test("a page that goes away sends what is not on its way", async () => {
  const { keeper, sent, answer } = held();
  keeper.changed();
  keeper.leaving();
  assert.equal(sent.length, 1, "all of it is on its way");
  keeper.changed();
  keeper.leaving();
  assert.equal(sent.length, 2);
  await answer("kept");
});
