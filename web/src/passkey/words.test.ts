import assert from "node:assert/strict";
import { test } from "node:test";
import { Refused, inWords } from "./words";

// The names are those that create() and get() may throw: W3C Web Authentication Level 3, sections 5.1.3 and 5.1.4.
test("every error of a passkey has plain words without a code", () => {
  for (const name of [
    "NotAllowedError",
    "InvalidStateError",
    "ConstraintError",
    "NotSupportedError",
    "SecurityError",
    "AbortError",
    "TypeError",
    "UnknownError",
  ]) {
    const words = inWords(new DOMException("0x80090011 in module", name));
    assert.match(words, /^[A-Z][a-z].*\.$/);
    assert.doesNotMatch(words, /Error|0x|module/);
  }
});

test("only what the portal itself said is passed on", () => {
  assert.equal(inWords(new Refused("Wait a minute, then try again.")), "Wait a minute, then try again.");
  assert.doesNotMatch(inWords("secret"), /secret/);
  assert.doesNotMatch(inWords(new Error("secret")), /secret/);
});
