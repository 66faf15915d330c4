import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";
import { buttonAction } from "./buttons";

test("a button's data become its action", () => {
  assert.deepEqual(buttonAction({ act: "stop" }, false), { kind: "stop" });
  assert.deepEqual(buttonAction({ act: "step", setting: "rate", direction: "-1" }, false), { kind: "step", setting: "rate", direction: -1 });
  assert.deepEqual(buttonAction({ act: "step", setting: "path", direction: "1" }, true), { kind: "step", setting: "path", direction: -1 });
  assert.deepEqual(buttonAction({ act: "rate", value: "10" }, false), { kind: "rate", value: 10 });
  assert.deepEqual(buttonAction({ act: "take_back", entry: "a" }, false), { kind: "take_back", entry: "a" });
  assert.deepEqual(buttonAction({ act: "lower", shown: "card" }, false), { kind: "lower", shown: "card" });
  assert.deepEqual(buttonAction({ act: "preset", index: "2" }, false), { kind: "preset", index: 2 });
  assert.equal(buttonAction({ act: "preset" }, false), null);
});

test("data that make no action make none", () => {
  for (const data of [{}, { act: "explode" }, { act: "step", setting: "colour", direction: "1" }, { act: "mark" }, { act: "retry" }, { act: "rate" }]) {
    assert.equal(buttonAction(data, false), null);
  }
});

test("every button in the page's templates has an action", () => {
  const folder = "../server/portal/src/live/";
  const html = [
    "desk.html",
    "desk_card.html",
    "desk_join.html",
    "desk_keys.html",
    "desk_mechanics.html",
    "desk_phase.html",
    "desk_safety.html",
    "desk_steady.html",
    "desk_target.html",
  ]
    .map((name) => readFileSync(folder + name, "utf8"))
    .join("");
  const buttons = [...html.matchAll(/<button[^>]*data-act=[^>]*>/g)].map(([tag]) => tag);
  assert.ok(buttons.length > 25, `${buttons.length} buttons found`);
  for (const tag of buttons) {
    const data = Object.fromEntries([...tag.matchAll(/data-([a-z]+)="([^"]*)"/g)].map(([, name, value]) => [name, value]));
    assert.notEqual(buttonAction({ ...data, value: data.value?.startsWith("{{") ? "1" : data.value }, false), null, tag);
  }
});
