// The page and the room's state words: what is shown, told and held in each, and that both ends agree.
import assert from "node:assert/strict";
import { test } from "node:test";
import { nothing } from "../live/needs.fixture";
import type { RoomState } from "../wire/RoomState";
import { type Event, reduce } from "./machine";
import { open, plays, ready, run, running, seen, sent, setView, view } from "./machine.fixture";
import { pageOf } from "./screen";
import { generator } from "../live/random.fixture";

test("a set is shown while the word is still STARTING, and none while it is being written down", () => {
  assert.deepEqual(plays(run([...ready, seen(view("starting", { set: setView("a") }))]).last), ["a"]);
  assert.deepEqual(plays(run([...ready, seen(view("starting", { set: setView("a", { ended: "done" }) }))]).last), []);
});

test("at the door the client's Stop is told, and Ready too; a device that only asks for the seat tells nothing", () => {
  const stopped = run([open, { type: "skip-all" }, seen(view("at_the_door")), { type: "stop" }]);
  assert.deepEqual(sent(stopped.last), ["stop"]);
  const needs = { ...nothing, client_ready: true };
  const known = run([seen(view("at_the_door", { needs, desk_knows: true }))], stopped.state);
  assert.deepEqual(pageOf(known.state), { name: "held", why: "stop", told: true, asksReady: true, online: true, longer: "may" });
  const on = run([{ type: "ready" }], known.state);
  assert.deepEqual([sent(on.last), pageOf(on.state).name], [["ready"], "waiting"]);
  assert.deepEqual(sent(run([open, { type: "skip-all" }, seen(view("waiting")), { type: "stop" }, { type: "again" }]).all), []);
});

test("a hold that the room does not know of is told again, until it does", () => {
  for (const [event, word] of [
    [{ type: "stop" }, "stop"],
    [{ type: "interrupted", cause: "full_screen_left" }, "interrupted"],
  ] as [Event, string][]) {
    const needs = { ...nothing, client_ready: true };
    const known = run([...running(), event, seen(view("stopped", { set: setView("a", { ended: "page_interrupted" }), needs }))]).state;
    assert.equal(known.untold, undefined);
    // The room began anew and asks for nothing.
    const anew = run([seen({ ...view("ready"), epoch: 2 }), { type: "again" }], known);
    assert.deepEqual(sent(anew.last), [word]);
    assert.equal(pageOf(anew.state).name, "held");
    assert.equal(run([seen({ ...view("hold", { needs }), epoch: 2 })], anew.state).state.untold, undefined);
  }
});

test("what the client reads and what the desk reads agree: while the room is ready, so is the page, or it says why not", () => {
  const random = generator(11);
  const pick = (n: number) => Math.floor(random() * n);
  const states: RoomState[] = ["hold", "ready", "starting", "running", "running", "easing", "stopped", "stopped_by_client", "link_lost"];
  const causes = ["hidden", "full_screen_left", "resized", "sound_lost", "silence"] as const;
  let agreed = 0;
  for (let round = 0; round < 2_000; round++) {
    let { state } = run(ready);
    for (let i = 0; i < 12; i++) {
      const set = setView("abc"[pick(3)]!, { ended: pick(2) === 0 ? "link_lost" : null });
      const events: Event[] = [
        { type: "stop" },
        { type: "interrupted", cause: causes[pick(5)]! },
        { type: "link", state: (["open", "lost"] as const)[pick(2)]! },
        { type: "ready" },
        { type: "again" },
        { type: "finished" },
        seen(view(states[pick(states.length)]!, { set, needs: { ...nothing, client_ready: pick(3) === 0 } })),
      ];
      [state] = reduce(state, events[pick(events.length)]!);
    }
    // What the room sends once it starts sets again: nothing is needed, nothing runs.
    [state] = reduce(state, { type: "link", state: "open" });
    [state] = reduce(state, seen(view("ready", { set: setView("z", { ended: "done" }) })));
    const page = pageOf(state).name;
    if (page === "held") {
      const [, effects] = reduce(state, { type: "again" });
      assert.equal(sent(effects).length, 1, "held, and the room is not told");
      continue;
    }
    assert.ok(["ready", "between", "between-still"].includes(page), page);
    assert.deepEqual(plays(run([seen(view("starting", { set: setView("next") }))], state).last), ["next"], "the page would refuse");
    agreed++;
  }
  assert.ok(agreed > 500, `${agreed} rounds`);
});
