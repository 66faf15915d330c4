import assert from "node:assert/strict";
import { test } from "node:test";
import { joined } from "./suggestion";

test("what was typed stays, and the words come after it once", () => {
  assert.equal(joined("", "calm place"), "calm place");
  assert.equal(joined("  ", "calm place"), "calm place");
  assert.equal(joined("slow breathing", "calm place"), "slow breathing, calm place");
  assert.equal(joined("slow breathing, calm place", "calm place"), "slow breathing, calm place");
});
