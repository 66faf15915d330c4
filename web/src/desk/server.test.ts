import assert from "node:assert/strict";
import { test } from "node:test";
import { failureWords, problemOf } from "./server";

test("no answer, a server in trouble and a flood are tried again; a refusal is the clinician's", () => {
  assert.equal(problemOf({ status: 0, body: null }).kind, "offline");
  for (const status of [500, 502, 503, 408, 429]) assert.equal(problemOf({ status, body: null }).kind, "server", String(status));
  assert.equal(problemOf({ status: 401, body: null }).kind, "signed_out");
  for (const status of [400, 403, 404, 409, 413, 422]) assert.equal(problemOf({ status, body: null }).kind, "refused", String(status));
});

test("a refusal keeps the server's words when it has any", () => {
  assert.deepEqual(problemOf({ status: 422, body: { errors: { words: "Remove the control character." } } }), {
    kind: "refused",
    words: "Remove the control character.",
  });
  assert.match(failureWords({ status: 404, body: null }), /not open to you/);
});

test("every failure says what happened and what to do", () => {
  for (const status of [0, 401, 500, 422]) assert.ok(failureWords({ status, body: null }).length > 20);
});
