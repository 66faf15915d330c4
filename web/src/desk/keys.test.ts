import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";
import { keyAction, LABELLED_KEYS, swallowsRelease, type KeyState, type Place, type Press } from "./keys";
import type { Action } from "./model";

const press = (key: string, more: Partial<Press> = {}): Press => ({ key, shift: false, modified: false, repeat: false, composing: false, ...more });
const plain: KeyState = { armed: null, shortcuts: true, panel: "log", tapped: false };
const places: Place[] = ["keys", "words", "field", "button"];
const act = (key: string, place: Place = "keys", state: KeyState = plain, more: Partial<Press> = {}): Action | null =>
  keyAction(press(key, more), place, state).action;

test("Escape stops from every place, with any modifier, held or composing, shortcuts on or off", () => {
  for (const place of places)
    for (const shortcuts of [true, false])
      for (const armed of [null, "sud", "voc"] as const)
        for (const more of [{}, { modified: true }, { repeat: true }, { composing: true }]) {
          const outcome = keyAction(press("Escape", more), place, { armed, shortcuts, panel: "mechanics", tapped: false });
          assert.deepEqual(outcome, { action: { kind: "stop" }, prevent: true }, `${place} ${JSON.stringify(more)}`);
        }
});

test("in the words field every key but Enter and Escape is left to the field", () => {
  const keys = [" ", "0", "5", "9", "t", "e", "s", "v", "x", "i", "m", "+", ",", ".", "?", "ArrowLeft", "ArrowUp", "Tab", "Backspace"];
  for (const key of keys)
    for (const armed of [null, "sud", "voc"] as const)
      assert.deepEqual(keyAction(press(key), "words", { armed, shortcuts: true, panel: "mechanics", tapped: false }), { action: null, prevent: false }, key);
  assert.deepEqual(act("Enter", "words"), { kind: "save_words" });
});

test("Enter does not save while an input method composes", () => {
  assert.equal(act("Enter", "words", plain, { composing: true }), null);
});

test("other fields keep all their keys, Space for a tick box included", () => {
  for (const key of [" ", "Enter", "3", "e", "ArrowDown"]) assert.deepEqual(keyAction(press(key), "field", plain), { action: null, prevent: false });
});

test("Space asks for the next set and never reaches a focused button", () => {
  for (const place of ["keys", "button"] as const) {
    assert.deepEqual(keyAction(press(" "), place, plain), { action: { kind: "start" }, prevent: true });
    assert.ok(swallowsRelease(" ", place, plain));
  }
  assert.ok(!swallowsRelease(" ", "words", plain));
  assert.ok(!swallowsRelease(" ", "field", plain));
  assert.ok(!swallowsRelease("Enter", "button", plain));
});

test("y taps; Enter sets what was tapped, only while it waits, and never in a field", () => {
  assert.deepEqual(act("y"), { kind: "tap" });
  assert.equal(act("y", "keys", plain, { repeat: true }), null);
  const waiting: KeyState = { ...plain, tapped: true };
  for (const place of ["keys", "button"] as const)
    assert.deepEqual(keyAction(press("Enter"), place, waiting), { action: { kind: "set_tapped" }, prevent: true });
  assert.deepEqual(keyAction(press("Enter", { repeat: true }), "keys", waiting), { action: null, prevent: true });
  assert.deepEqual(keyAction(press("Enter"), "button", plain), { action: null, prevent: false });
  assert.deepEqual(act("Enter", "words", waiting), { kind: "save_words" });
  assert.equal(act("Enter", "field", waiting), null);
  assert.equal(act("Enter", "keys", { ...waiting, shortcuts: false }), null);
});

test("a held Space does not start again and again", () => {
  assert.deepEqual(keyAction(press(" ", { repeat: true }), "keys", plain), { action: null, prevent: true });
});

test("digits do nothing unless a rating is armed", () => {
  for (const digit of "0123456789") assert.deepEqual(keyAction(press(digit), "keys", plain), { action: null, prevent: false });
});

test("one key a rating: 0 to 9 and t for 10", () => {
  const armed: KeyState = { armed: "sud", shortcuts: true, panel: "log", tapped: false };
  for (const digit of "0123456789") assert.deepEqual(act(digit, "keys", armed), { kind: "rate", value: Number(digit) });
  assert.deepEqual(act("t", "keys", armed), { kind: "rate", value: 10 });
  assert.deepEqual(act("T", "button", armed), { kind: "rate", value: 10 });
  assert.deepEqual(act("t"), { kind: "step", setting: "purpose", direction: 1 });
});

test("on VOC t is no rating; a digit off the scale still reaches the reducer, which asks", () => {
  const armed: KeyState = { armed: "voc", shortcuts: true, panel: "log", tapped: false };
  assert.deepEqual(act("t", "keys", armed), { kind: "step", setting: "purpose", direction: 1 });
  assert.deepEqual(act("0", "keys", armed), { kind: "rate", value: 0 });
});

test("digits 1 to 9 apply a preset while the presets show; an armed rating comes first; held, once; off with the single keys", () => {
  const showing: KeyState = { ...plain, panel: "mechanics" };
  for (const digit of "123456789") assert.deepEqual(act(digit, "keys", showing), { kind: "preset", index: Number(digit) - 1 });
  assert.equal(act("0", "keys", showing), null);
  assert.deepEqual(act("3", "keys", { ...showing, armed: "sud" }), { kind: "rate", value: 3 });
  assert.deepEqual(keyAction(press("3", { repeat: true }), "keys", showing), { action: null, prevent: true });
  assert.equal(act("3", "keys", { ...showing, shortcuts: false }), null);
  assert.equal(act("3", "words", showing), null);
});

test("while the opening shows, digits, t, = and - are its own; an armed rating comes first", () => {
  const opening: KeyState = { ...plain, panel: "opening" };
  for (const digit of "0123456789") assert.deepEqual(act(digit, "keys", opening), { kind: "opening_digit", value: Number(digit) });
  assert.deepEqual(act("t", "keys", opening), { kind: "opening_digit", value: 10 });
  assert.deepEqual(act("=", "button", opening), { kind: "as_before" });
  assert.deepEqual(act("-", "keys", opening), { kind: "toggle_pass" });
  assert.deepEqual(act("3", "keys", { ...opening, armed: "sud" }), { kind: "rate", value: 3 });
  assert.deepEqual(keyAction(press("1", { repeat: true }), "keys", opening), { action: null, prevent: true });
  assert.equal(act("1", "words", opening), null);
  assert.deepEqual(act("i", "keys", opening), { kind: "sight" });
});

test("while what was seen and tried shows, every digit keeps one of it", () => {
  const between: KeyState = { ...plain, panel: "between" };
  for (const digit of "0123456789") assert.deepEqual(act(digit, "keys", between), { kind: "between_digit", value: Number(digit) });
  assert.deepEqual(act("3", "keys", { ...between, armed: "sud" }), { kind: "rate", value: 3 });
});

test("a held digit rates once", () => {
  assert.equal(act("5", "keys", { armed: "sud", shortcuts: true, panel: "log", tapped: false }, { repeat: true }), null);
});

test("arrows: left and right change the rate, up and down the width, also while held", () => {
  const table: [string, string, number][] = [
    ["ArrowLeft", "rate", -1],
    ["ArrowRight", "rate", 1],
    ["ArrowDown", "width", -1],
    ["ArrowUp", "width", 1],
  ];
  for (const [key, setting, direction] of table)
    for (const repeat of [false, true])
      assert.deepEqual(keyAction(press(key, { repeat }), "keys", plain), { action: { kind: "step", setting, direction }, prevent: true });
});

test("every single key does what its label says", () => {
  const table: [string, Action][] = [
    ["e", { kind: "end" }],
    ["+", { kind: "extend" }],
    ["=", { kind: "extend" }],
    ["i", { kind: "sight" }],
    ["x", { kind: "cannot_see" }],
    ["s", { kind: "arm", scale: "sud" }],
    ["v", { kind: "arm", scale: "voc" }],
    ["b", { kind: "next_moment" }],
    ["w", { kind: "to_words" }],
    ["j", { kind: "mark", change: "changing" }],
    ["k", { kind: "mark", change: "same" }],
    ["l", { kind: "mark", change: "settled" }],
    ["f", { kind: "lower", shown: "opening" }],
    ["-", { kind: "lower", shown: "between" }],
    ["t", { kind: "step", setting: "purpose", direction: 1 }],
    ["m", { kind: "lower", shown: "card" }],
    ["g", { kind: "lower", shown: "target" }],
    ["c", { kind: "lower", shown: "join" }],
    ["?", { kind: "lower", shown: "keys" }],
    ["o", { kind: "lower", shown: "mechanics" }],
    ["a", { kind: "lower", shown: "log" }],
    ["r", { kind: "toggle_private" }],
    ["h", { kind: "toggle_preview" }],
    ["u", { kind: "toggle_open" }],
    ["z", { kind: "undo_setting" }],
    ["d", { kind: "step", setting: "dot", direction: 1 }],
    ["p", { kind: "step", setting: "path", direction: 1 }],
    ["n", { kind: "step", setting: "channels", direction: 1 }],
    [",", { kind: "step", setting: "length", direction: -1 }],
    [".", { kind: "step", setting: "length", direction: 1 }],
  ];
  for (const [key, action] of table) assert.deepEqual(act(key), action, key);
});

test("Shift turns the round of dot, path and channels; Caps Lock does not", () => {
  for (const [key, setting] of [
    ["D", "dot"],
    ["P", "path"],
    ["N", "channels"],
  ] as const) {
    assert.deepEqual(act(key, "keys", plain, { shift: true }), { kind: "step", setting, direction: -1 });
    assert.deepEqual(act(key), { kind: "step", setting, direction: 1 });
  }
});

test("a held letter acts once, a held length key goes on", () => {
  assert.deepEqual(keyAction(press("e", { repeat: true }), "keys", plain), { action: null, prevent: true });
  assert.notEqual(act(".", "keys", plain, { repeat: true }), null);
});

test("with Control, Alt or Meta nothing but Escape is taken", () => {
  for (const key of ["s", " ", "ArrowLeft", "e", "+", "z"])
    assert.deepEqual(keyAction(press(key, { modified: true }), "keys", plain), { action: null, prevent: false });
});

test("with single keys off, characters and Space are left alone; arrows and Escape stay", () => {
  const off: KeyState = { armed: "sud", shortcuts: false, panel: "log", tapped: false };
  for (const key of [" ", "e", "5", "t", "+", "?", "x"]) assert.deepEqual(keyAction(press(key), "button", off), { action: null, prevent: false });
  assert.ok(!swallowsRelease(" ", "button", off));
  assert.deepEqual(act("ArrowLeft", "keys", off), { kind: "step", setting: "rate", direction: -1 });
});

test("Delete and Backspace say that it is too much, with the single keys off as well, once however long they are held, and never in a field", () => {
  for (const key of ["Delete", "Backspace"]) {
    for (const shortcuts of [true, false]) assert.deepEqual(act(key, "keys", { ...plain, shortcuts }), { kind: "too_much" });
    assert.deepEqual(act(key, "button"), { kind: "too_much" });
    assert.deepEqual(keyAction(press(key, { repeat: true }), "keys", plain), { action: null, prevent: true });
    for (const place of ["words", "field"] as const) assert.deepEqual(keyAction(press(key), place, plain), { action: null, prevent: false });
  }
});

test("while the phase or what steadies shows, every digit is its own", () => {
  for (const [panel, kind] of [
    ["phase", "phase_digit"],
    ["steady", "steady_digit"],
  ] as const) {
    for (const digit of "0123456789") assert.deepEqual(act(digit, "keys", { ...plain, panel }), { kind, value: Number(digit) });
    assert.deepEqual(act("3", "keys", { ...plain, panel, armed: "sud" }), { kind: "rate", value: 3 });
  }
});

test("Enter and Tab on a button are the browser's", () => {
  for (const key of ["Enter", "Tab"]) assert.deepEqual(keyAction(press(key), "button", plain), { action: null, prevent: false });
});

test("every key is on the key sheet, and every button's label is a key", () => {
  const read = (name: string): string => readFileSync(`../server/portal/src/live/${name}`, "utf8");
  const labels = (html: string): string[] => [...html.matchAll(/<kbd[^>]*>([^<]+)<\/kbd>/g)].map(([, key]) => key ?? "");
  const sheet = labels(read("desk_keys.html"));
  for (const key of LABELLED_KEYS) if (key !== "?") assert.ok(sheet.includes(key), `${key} is missing on the sheet`);
  const known = [...LABELLED_KEYS, "Enter"];
  for (const name of ["desk.html", "desk_mechanics.html", "desk_keys.html"])
    for (const key of labels(read(name))) assert.ok(known.includes(key), `${key} in ${name}`);
});
