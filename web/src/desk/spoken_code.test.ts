import assert from "node:assert/strict";
import { test } from "node:test";
import { codeIn, codeWords, whyGone } from "./spoken_code";

test("a code says that it works once and until when", () => {
  const code = codeIn("123456", "2026-03-03T09:10:00Z");
  assert.ok(code !== null);
  assert.equal(
    codeWords(code, (at) => new Date(at).toISOString().slice(11, 16)),
    "Say this code. It works once, until 09:10.",
  );
  assert.equal(codeIn("123456", null), null);
  assert.equal(codeIn("123456", "soon"), null);
  assert.equal(codeIn(null, "2026-03-03T09:10:00Z"), null);
});

test("a code that was used or has ended is of no use, and says what is", () => {
  const code = { digits: "123456", until: 1000 };
  assert.equal(whyGone(code, false, 999), null);
  assert.match(whyGone(code, false, 1000) ?? "", /has ended/);
  assert.match(whyGone(code, true, 0) ?? "", /was used/);
});
