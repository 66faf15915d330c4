import assert from "node:assert/strict";
import { test } from "node:test";
import { nothing } from "../live/needs.fixture";
import type { RoomState } from "../wire/RoomState";
import type { SetView } from "../wire/SetView";
import { type Event, opened, reduce } from "./machine";
import { open, plain, plays, ready, run, running, seen, sent, setView, view } from "./machine.fixture";
import { pageOf } from "./screen";
import { generator } from "../live/random.fixture";

test("from the link to the first set, in order", () => {
  const pages: string[] = [];
  let state = opened(plain);
  const steps: Event[] = [
    open,
    seen(view("waiting")),
    { type: "answered", step: "start" },
    { type: "answered", step: "settle" },
    { type: "answered", step: "card" },
    { type: "answered", step: "distance" },
    { type: "answered", step: "sound" },
    seen(view("ready")),
    seen(view("running", { set: setView("a") })),
    { type: "finished" },
  ];
  for (const step of steps) {
    [state] = reduce(state, step);
    const page = pageOf(state);
    pages.push(page.name === "check" ? page.step : page.name);
  }
  assert.deepEqual(pages, ["start", "start", "settle", "card", "distance", "sound", "waiting", "ready", "running", "between"]);
});

test("nothing plays before the check is done, and the room hears why", () => {
  const { all } = run([open, seen(view("running", { set: setView("a") }))]);
  assert.deepEqual(plays(all), []);
  assert.deepEqual(sent(all), ["interrupted"]);
});

test("a set that this page cannot show from its start is not shown at all", () => {
  for (const cause of ["hidden", "silence", "sound_lost"] as const) {
    const { all, state } = run([...ready, seen(view("running", { set: setView("a") }), cause), seen(view("running", { set: setView("a") }))]);
    assert.deepEqual(plays(all), []);
    assert.ok(state.spent.has("a"));
  }
});

test("every view of a running set brings its timeline to the player", () => {
  const { all } = run([...running(), seen(view("running", { set: setView("a") })), seen(view("easing", { set: setView("a") }))]);
  assert.deepEqual(plays(all), ["a", "a", "a"]);
});

test("Stop cuts at once with the line down, is told when it is back, and is repeated until it shows", () => {
  const stopped = run([...running(), { type: "link", state: "lost" }, { type: "stop" }]);
  assert.deepEqual(stopped.last, [{ do: "cut", ending: "stopped_by_client" }]);
  assert.deepEqual(pageOf(stopped.state), { name: "held", why: "stop", told: false, asksReady: true, online: false, longer: "no" });

  const back = run([open], stopped.state);
  assert.deepEqual(sent(back.last), ["stop"]);
  const again = run([{ type: "again" }, { type: "again" }], back.state);
  assert.deepEqual(sent(again.all), ["stop", "stop"]);

  const stillRuns = run([seen(view("running", { set: setView("a") })), { type: "again" }], again.state);
  assert.deepEqual(plays(stillRuns.all), []);
  assert.deepEqual(sent(stillRuns.last), ["stop"]);

  const needs = { ...nothing, client_ready: true };
  const shown = run([seen(view("stopped_by_client", { set: setView("a", { ended: "stopped_by_client" }), needs })), { type: "again" }], stillRuns.state);
  assert.deepEqual(sent(shown.all), []);
  assert.equal((pageOf(shown.state) as { told: boolean }).told, false, "the desk has not drawn it yet");
  const drawn = run([seen(view("stopped_by_client", { set: setView("a", { ended: "stopped_by_client" }), needs, desk_knows: true }))], shown.state);
  assert.equal((pageOf(drawn.state) as { told: boolean }).told, true);
});

test("a set that the room ended for a lost line does not hide the client's Stop", () => {
  const stopped = run([...running(), { type: "link", state: "lost" }, { type: "stop" }]);
  const ended = view("stopped", { set: setView("a", { ended: "link_lost" }) });
  const back = run([open, seen(ended), { type: "again" }], stopped.state);
  assert.deepEqual(sent(back.all), ["stop", "stop"]);
});

test("the answer to what was repeated may be the same view again", () => {
  const before = run(running());
  const ended = view("stopped", { set: setView("a", { ended: "link_lost" }), needs: { ...nothing, client_ready: true } });
  const told = run([seen(ended), { type: "interrupted", cause: "hidden" }], before.state);
  assert.deepEqual(told.state.untold?.message, { type: "interrupted", cause: "hidden" });
  assert.equal(run([seen(ended)], told.state).state.untold, undefined);
});

test("silence eases, everything else cuts", () => {
  assert.deepEqual(run([...running(), { type: "interrupted", cause: "silence" }]).last[0], { do: "ease", ending: "link_lost" });
  for (const cause of ["hidden", "full_screen_left", "resized", "sound_lost"] as const) {
    const { last } = run([...running(), { type: "interrupted", cause }]);
    assert.deepEqual(last[0], { do: "cut", ending: "page_interrupted" });
    assert.deepEqual(last[1], { do: "send", message: { type: "interrupted", cause } });
  }
});

test("what eases to rest by itself is cut by the client's Stop, and by a page that is hidden", () => {
  const easing = run([...running(), { type: "interrupted", cause: "silence" }]).state;
  assert.deepEqual(run([{ type: "stop" }], easing).last[0], { do: "cut", ending: "stopped_by_client" });
  const hidden = run([{ type: "interrupted", cause: "hidden" }], easing);
  assert.deepEqual(hidden.last, [
    { do: "cut", ending: "page_interrupted" },
    { do: "send", message: { type: "interrupted", cause: "hidden" } },
  ]);
  assert.deepEqual(plays(run([seen(view("running", { set: setView("b") }))], hidden.state).last), [], "the client taps first");
});

test("what eases to rest by itself is cut by a stop the room tells of, and goes on easing when it tells of a lost line", () => {
  const easing = run([...running(), { type: "interrupted", cause: "silence" }]).state;
  for (const ended of ["stopped_by_clinician", "cannot_see", "page_interrupted", "stopped_by_client"] as const) {
    assert.deepEqual(run([seen(view("stopped", { set: setView("a", { ended }) }))], easing).last, [{ do: "cut", ending: ended }]);
  }
  for (const ended of ["link_lost", "done", null] as const) {
    assert.deepEqual(run([seen(view("running", { set: setView("a", { ended }) }))], easing).last, []);
  }
});

test("the room's ends: at once, or by the timeline", () => {
  for (const ended of ["stopped_by_clinician", "cannot_see", "link_lost", "page_interrupted", "unknown", "stopped_by_client"] as const) {
    assert.deepEqual(run([...running(), seen(view("stopped", { set: setView("a", { ended }) }))]).last, [{ do: "cut", ending: ended }]);
  }
  for (const ended of ["done", "ended_by_clinician", "hard_limit"] as const) {
    assert.deepEqual(plays(run([...running(), seen(view("ready", { set: setView("a", { ended }) }))]).last), ["a"]);
  }
});

test("a room that began anew stops what still moves from the old one", () => {
  const anew = { ...view("running", { set: setView("a") }), epoch: 2, seq: 1 };
  const { last, state } = run([...running(), seen(anew)]);
  assert.deepEqual(last, [{ do: "cut", ending: "unknown" }]);
  assert.equal(state.playing, undefined);
});

test("an older view changes nothing", () => {
  const old = view("running", { set: setView("old") });
  const { last } = run([...running(), seen(old), seen({ ...old, seq: 1 })]);
  assert.deepEqual(last, []);
});

test("after Stop nothing starts before the client's Ready", () => {
  const stopped = run([...running(), { type: "stop" }]);
  const next = run([seen(view("running", { set: setView("b") }))], stopped.state);
  assert.deepEqual(plays(next.all), []);
  const allowed = run([{ type: "ready" }, seen(view("running", { set: setView("b") }))], stopped.state);
  assert.deepEqual(sent(allowed.all).slice(0, 1), ["ready"]);
  assert.deepEqual(plays(allowed.all), ["b"]);
});

test("Ready with the line down is not kept for later", () => {
  const down = run([...running(), { type: "stop" }, { type: "link", state: "lost" }, { type: "ready" }]);
  assert.deepEqual(sent(down.last), []);
  assert.equal(down.state.halt, "stop");
});

test("after a lost line or a turned screen the clinician alone may go on; after others the client taps", () => {
  const goOn = (cause: Extract<Event, { type: "interrupted" }>["cause"]) => {
    const ended = view("stopped", { set: setView("a", { ended: "page_interrupted" }) });
    return plays(run([...running(), { type: "interrupted", cause }, seen(ended), seen(view("running", { set: setView("b") }))]).last);
  };
  assert.deepEqual(goOn("silence"), ["b"]);
  assert.deepEqual(goOn("resized"), ["b"]);
  for (const cause of ["hidden", "sound_lost", "full_screen_left"] as const) assert.deepEqual(goOn(cause), []);
});

test("a page hidden between sets says so, and no set starts into it", () => {
  const hidden = run([...ready, { type: "interrupted", cause: "hidden" }]);
  assert.deepEqual(sent(hidden.last), ["interrupted"]);
  assert.deepEqual(run([...ready, { type: "interrupted", cause: "resized" }]).last, []);
});

test("before the client is let in, nothing but the page's own hold is touched", () => {
  const waiting = [open, { type: "skip-all" } as Event, seen(view("waiting"))];
  const stopped = run([...waiting, { type: "stop" }, { type: "again" }]);
  assert.deepEqual(sent(stopped.all), []);
  const on = run([{ type: "ready" }], stopped.state);
  assert.deepEqual(sent(on.all), []);
  assert.equal(pageOf(on.state).name, "waiting");
});

test("a newer page is fetched once nothing moves", () => {
  const during = run([...running(), { type: "reload" }]);
  assert.deepEqual(during.last, []);
  assert.deepEqual(run([{ type: "finished" }], during.state).last, [{ do: "reload" }]);
});

test("the end shows the chosen words", () => {
  const { state } = run([...ready, seen(view("closed", { closing_words: "Until Thursday." }))]);
  assert.deepEqual(pageOf(state), { name: "end", words: "Until Thursday." });
});

test("whatever comes in whatever order: a set that came to rest here never plays again, and none is eased twice", () => {
  const random = generator(5);
  const pick = (n: number) => Math.floor(random() * n);
  const states: RoomState[] = ["waiting", "ready", "running", "running", "running", "easing", "stopped", "stopped_by_client", "link_lost"];
  const causes = ["hidden", "full_screen_left", "resized", "sound_lost", "silence"] as const;
  const event = (): Event => {
    switch (pick(9)) {
      case 0:
        return { type: "stop" };
      case 1:
        return { type: "interrupted", cause: causes[pick(5)]! };
      case 2:
        return { type: "link", state: (["open", "lost"] as const)[pick(2)]! };
      case 3:
        return { type: "ready" };
      case 4:
        return { type: "again" };
      case 5:
        return { type: "finished" };
      default: {
        const set = setView("abcdef"[pick(6)]!, { ended: pick(4) === 0 ? "stopped_by_clinician" : null });
        return seen(view(states[pick(states.length)]!, { set, epoch: 1 + (pick(40) === 0 ? 1 : 0) }));
      }
    }
  };
  let played = 0;
  for (let round = 0; round < 400; round++) {
    let { state } = run([open, { type: "skip-all" }]);
    const over = new Set<string>();
    let now: string | undefined;
    for (let i = 0; i < 60; i++) {
      const next = event();
      const [after, effects] = reduce(state, next);
      for (const effect of effects) {
        if (effect.do === "play") {
          assert.ok(!over.has(effect.set.id), "played again");
          assert.ok(now === undefined || now === effect.set.id, "two at once");
          if (now === undefined) played++;
          now = effect.set.id;
        } else if (effect.do === "cut" || effect.do === "ease") {
          assert.ok(now !== undefined || effect.do === "cut", "eased twice");
          if (now !== undefined) over.add(now);
          now = undefined;
        }
      }
      if (next.type === "finished" && now !== undefined) {
        over.add(now);
        now = undefined;
      }
      assert.equal(after.playing, now);
      state = after;
    }
  }
  assert.ok(played > 300, `the walk must play sets to say anything: ${played}`);
});

test("the desk's wish for left and right opens that page alone, and gives way to a set", () => {
  const asked = (n: number, change = {}) => view("ready", { sides_asked: n, ...change });
  const idle = run([open, { type: "skip-all" }, seen(asked(2))]).state;
  assert.equal(idle.check, undefined, "what was asked before this page came is not asked again");
  const asking = run([seen(asked(3))], idle).state;
  assert.deepEqual(pageOf(asking), { name: "check", step: "sides", place: undefined, back: false, given: false });
  assert.equal(run([{ type: "answered", step: "sides" }], asking).state.check, undefined);
  const { state, all } = run([seen(view("running", { sides_asked: 3, set: setView("a") }))], asking);
  assert.deepEqual(plays(all), ["a"]);
  assert.equal(state.check, undefined);
  // Not over a page on which the client has stopped.
  const stopped = run([{ type: "stop" }, seen(asked(4))], idle).state;
  assert.equal(stopped.check, undefined);
});

test("between sets nothing is said of a dot that is not there: none was shown, or it was cut", () => {
  const set = setView("a");
  const tones = { ...set, plan: { ...set.plan, channels: { eyes: false, ears: true, hands: true } } };
  const after = (shown: SetView, ended: SetView["ended"]) =>
    pageOf(
      run([open, { type: "skip-all" }, seen(view("running", { set: shown })), { type: "finished" }, seen(view("ready", { set: { ...shown, ended } }))]).state,
    ).name;
  assert.equal(after(set, "done"), "between");
  assert.equal(after(set, null), "between", "the room has yet to hear that it is at rest");
  assert.equal(after(tones, "done"), "between-still");
  assert.equal(after(set, "stopped_by_clinician"), "between-still");
});

test("a page that was away when the session ended says so, whatever it showed before; one sent away otherwise does not", () => {
  const away: Event[] = [...ready, { type: "stop" }, { type: "link", state: "lost" }];
  assert.deepEqual(pageOf(run([...away, { type: "link", state: "refused", over: true }]).state), { name: "end", words: undefined });
  assert.deepEqual(pageOf(run([...away, { type: "link", state: "refused", over: false }]).state), { name: "refused" });
});
