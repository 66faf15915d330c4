import assert from "node:assert/strict";
import { test } from "node:test";
import { Later } from "./later";

test("it is fetched once, and after a failure from an address that the browser has not given up", async () => {
  const asked: string[] = [];
  let there = false;
  const later = new Later<{ one: number }>("/x.js", (address) => {
    asked.push(address);
    return there ? Promise.resolve({ one: 1 }) : Promise.reject(new Error("not there"));
  });
  assert.equal(await later.fetched(), null);
  there = true;
  assert.deepEqual([await later.fetched(), await later.fetched()], [{ one: 1 }, { one: 1 }]);
  assert.deepEqual(asked, ["/x.js", "/x.js?1"]);
});
