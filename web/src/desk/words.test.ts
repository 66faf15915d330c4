import assert from "node:assert/strict";
import { test } from "node:test";
import { clockMinute, clockTime, writeTimesWith } from "./words";

test("times are written by the practice's clock: midnight and noon are 12", () => {
  const at = (hour: number): Date => new Date(2030, 0, 2, hour, 7, 31);
  const written = (): string[] => [0, 9, 12, 14].map((hour) => clockTime(at(hour).toISOString()));
  assert.deepEqual(written(), ["00:07:31", "09:07:31", "12:07:31", "14:07:31"]);
  writeTimesWith(12);
  try {
    assert.deepEqual(written(), ["12:07:31 am", "9:07:31 am", "12:07:31 pm", "2:07:31 pm"]);
    assert.equal(clockMinute(at(14)), "2:07 pm");
  } finally {
    writeTimesWith(24);
  }
});
