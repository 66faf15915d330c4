// Says what stands twice in the sources: jscpd, with .jscpd.json.

import { createRequire } from "node:module";

// Node takes apart what a process leaves that comes to its own end; Debian's own 18 takes two minutes for what this one leaves.
process.on("beforeExit", (code) => process.exit(code));
process.argv.push("--config", ".jscpd.json");
// Being loaded it runs.
createRequire(import.meta.url)("jscpd");
