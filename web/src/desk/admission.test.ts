import assert from "node:assert/strict";
import { test } from "node:test";
import { admissionBody, checkAdmission, firstError, readFieldErrors, readText, type Admission } from "./admission";

const full: Admission = { location: " 4 Quay Lane, flat 2 ", confirmed: true, callBack: " 555 0100 ", alone: true };

test("a complete form passes and is sent trimmed", () => {
  assert.deepEqual(checkAdmission(full), {});
  assert.deepEqual(admissionBody(full, "device"), { location: "4 Quay Lane, flat 2", call_back: "555 0100", private: true, seat: "device" });
});

test("the location must be confirmed actively: a text filled in from last time is not enough", () => {
  assert.deepEqual(Object.keys(checkAdmission({ ...full, confirmed: false })), ["confirmed"]);
});

test("each missing part is named beside its field", () => {
  assert.deepEqual(Object.keys(checkAdmission({ location: " ", confirmed: false, callBack: "call me", alone: false })), [
    "location",
    "confirmed",
    "call_back",
    "private",
  ]);
});

test("length is counted in characters, not in UTF-16 units", () => {
  assert.deepEqual(checkAdmission({ ...full, location: "\u{1F3E0}".repeat(300) }), {});
  assert.match(checkAdmission({ ...full, location: "a".repeat(301) }).location ?? "", /300/);
  assert.match(checkAdmission({ ...full, callBack: "1".repeat(41) }).call_back ?? "", /40/);
});

test("the server's errors are read field by field; anything else is ignored", () => {
  assert.deepEqual(readFieldErrors({ errors: { location: "Too long.", call_back: 3, other: "x" } }), { location: "Too long." });
  for (const body of [null, "no", 3, {}, { errors: "no" }, { errors: null }]) assert.deepEqual(readFieldErrors(body), {});
  assert.equal(firstError({ errors: { words: "Too long." } }), "Too long.");
  assert.equal(firstError({ errors: {} }), null);
  assert.equal(firstError("no"), null);
});

test("a text field of an answer", () => {
  assert.equal(readText({ code: "123456" }, "code"), "123456");
  assert.equal(readText({ code: 1 }, "code"), null);
  assert.equal(readText(null, "code"), null);
});
