import assert from "node:assert/strict";
import { test } from "node:test";
import { placeAt } from "./order";

test("a row goes before the first other row whose middle lies below it", () => {
  // Three others, 40 high each, with the drawn row out of their way.
  const middles = [20, 60, 100];
  assert.deepEqual(
    [-5, 19, 21, 59, 61, 99, 101, 500].map((y) => placeAt(y, middles)),
    [1, 1, 2, 2, 3, 3, 4, 4],
  );
});
