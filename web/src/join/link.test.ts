import assert from "node:assert/strict";
import { test } from "node:test";
import { answerTo, digitsOf, linkIn, readKept } from "./link";

test("a link's token is 32 bytes in base64url, RFC 4648 section 5, without padding", () => {
  const token = Buffer.alloc(32, 0xfb).toString("base64url");
  assert.equal(token.length, 43);
  assert.equal(linkIn(`#${token}`), token);
  for (const broken of ["", "#", `#${token.slice(1)}`, `#${token}x`, `#${token.slice(0, 42)}=`, `#${token.slice(0, 42)}%20`]) {
    assert.equal(linkIn(broken), undefined, broken);
  }
});

test("the code may be typed in groups", () => {
  assert.equal(digitsOf("123456"), "123456");
  assert.equal(digitsOf(" 123 456 "), "123456");
  assert.equal(digitsOf("123-456"), "123456");
  for (const wrong of ["", "12345", "1234567", "12345a", "１２３４５６"]) assert.equal(digitsOf(wrong), undefined, wrong);
});

test("answers in words", () => {
  assert.deepEqual([200, 204, 400, 403, 404, 409, 429, 503].map(answerTo), [
    "in",
    "in",
    "join_wrong",
    "join_wrong",
    "join_wrong",
    "join_elsewhere",
    "join_slow",
    "join_offline",
  ]);
});

test("what a tab keeps over a reload is read whole or not at all", () => {
  const link = Buffer.alloc(32, 0x5a).toString("base64url");
  assert.deepEqual(readKept(JSON.stringify({ link, once: "k" })), { link, once: "k" });
  for (const odd of [null, "", "null", "{", "[]", JSON.stringify({ link }), JSON.stringify({ link: "short", once: "k" }), JSON.stringify({ link, once: "" })]) {
    assert.equal(readKept(odd), undefined, String(odd));
  }
});
