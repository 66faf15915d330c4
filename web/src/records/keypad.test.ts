import assert from "node:assert/strict";
import { test } from "node:test";
import { keyed } from "./keypad";

const FOUR = ["0", "1", "2", "3", "-"];
const TENS = ["0", "10", "20", "30", "40", "50", "60", "70", "80", "90", "100", "-"];

test("a digit is its answer where the form has that", () => {
  assert.deepEqual(
    ["0", "3", "4", "-", "t", "a", "Enter"].map((key) => keyed(key, FOUR)),
    ["0", "3", null, "-", null, null, null],
  );
});

test("where answers go in tens a digit is its ten, and t is all of it", () => {
  assert.deepEqual(
    ["0", "1", "9", "t", "-"].map((key) => keyed(key, TENS)),
    ["0", "10", "90", "100", "-"],
  );
});
