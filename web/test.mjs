// Bundles every *.test.ts into a temporary folder and runs them with Node's own test runner.
// Arguments narrow it down: `npm test -- clock` runs the files whose path contains "clock".
import { spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join, relative } from "node:path";
import { fileURLToPath } from "node:url";
import { bundleForNode, source } from "./bundle.mjs";

const here = dirname(fileURLToPath(import.meta.url));

const filesUnder = (folder) =>
  readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    return entry.isDirectory() ? filesUnder(path) : [path];
  });

const wanted = process.argv.slice(2);
const tests = [...filesUnder(source), ...filesUnder(join(here, "styles"))]
  .filter((file) => file.endsWith(".test.ts"))
  .filter((file) => wanted.length === 0 || wanted.some((part) => relative(here, file).includes(part)));
if (tests.length === 0) {
  console.error(`No test file matches ${wanted.join(", ")}.`);
  process.exit(1);
}

const outdir = mkdtempSync(join(tmpdir(), "leeward-web-test-"));
try {
  await bundleForNode(tests, outdir);
  const built = filesUnder(outdir).filter((file) => file.endsWith(".test.mjs"));
  // Tests read the style sheets and the reference vectors by paths from web/.
  const run = spawnSync(process.execPath, ["--enable-source-maps", "--test", ...built], { cwd: here, stdio: "inherit" });
  process.exitCode = run.status ?? 1;
} finally {
  rmSync(outdir, { recursive: true, force: true });
}
