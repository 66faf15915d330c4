// Says what stands twice in the sources: jscpd, with .jscpd.json.

import { createRequire } from "node:module";

const require = createRequire(import.meta.url);
const { MemoryStore } = require("@jscpd/core");

// What is not kept is refused only once somebody listens. The store's own refuses at once, a hundred thousand times, and Node 18 takes two
// minutes at the end to find that each refusal had a listener after all (Array.prototype.shift on what it had noted).
MemoryStore.prototype.get = function (key) {
  const kept = this.values[this._namespace];
  return Promise.resolve().then(() => {
    if (key in kept) return kept[key];
    throw new RangeError("not kept");
  });
};

process.argv.push("--config", ".jscpd.json");
// Being loaded it runs.
require("jscpd");
