// Builds every page's script and style sheet into dist/, one file each, and says what they weigh.
import { createHash } from "node:crypto";
import { cpSync, existsSync, mkdirSync, readFileSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";
import { bundleForBrowsers } from "./bundle.mjs";

const here = dirname(fileURLToPath(import.meta.url));
const scripts = ["stage", "stage_call", "join", "errand", "forms", "desk", "desk_call", "closing", "passkey", "records"];
const styles = ["records", "desk", "stage", "stage_call", "forms"];

/** What the client's page is made of: 40 kB at most, and 10 for picture and voice, everything included, for a slow phone on a slow line. */
const STAGE = [
  "web/dist/stage.js",
  "web/dist/stage_call.js",
  "web/dist/stage.css",
  "web/dist/stage_call.css",
  "web/dist/page.svg",
  "web/dist/stage.webmanifest",
  "server/portal/src/live/stage.html",
  "server/portal/src/words/client.rs",
  "server/portal/src/words/call.rs",
];
const STAGE_LIMIT_KB = 50;

const entries = [
  ...scripts.map((name) => ({ in: join(here, "src", name, "main.ts"), out: name })),
  ...styles.map((name) => ({ in: join(here, "styles", `${name}.css`), out: name })),
].filter((entry) => existsSync(entry.in));

const outdir = join(here, "dist");
rmSync(outdir, { recursive: true, force: true });
mkdirSync(outdir);
cpSync(join(here, "static"), outdir, { recursive: true });

// What a device puts on its home screen names its icon by the address under which the portal serves it: see platform/assets.rs.
const served = (name) =>
  `../${createHash("sha256")
    .update(readFileSync(join(outdir, name)))
    .digest("hex")
    .slice(0, 16)}/${name}`;
for (const name of readdirSync(outdir).filter((name) => name.endsWith(".webmanifest"))) {
  const manifest = JSON.parse(readFileSync(join(outdir, name), "utf8"));
  manifest.icons = manifest.icons.map((icon) => ({ ...icon, src: served(icon.src) }));
  writeFileSync(join(outdir, name), JSON.stringify(manifest));
}
await bundleForBrowsers({ entryPoints: entries, outdir });

const weight = (file) => gzipSync(readFileSync(file), { level: 9 }).length / 1000;
for (const entry of entries) {
  const name = `${entry.out}${entry.in.endsWith(".css") ? ".css" : ".js"}`;
  console.log(`${name.padEnd(12)} ${weight(join(outdir, name)).toFixed(1).padStart(6)} kB gzip`);
}

const parts = STAGE.map((file) => join(here, "..", file)).filter(existsSync);
const stage = parts.reduce((sum, file) => sum + weight(file), 0);
console.log(`client's page, everything included: ${stage.toFixed(1)} kB gzip of ${STAGE_LIMIT_KB}`);
if (stage > STAGE_LIMIT_KB) {
  console.error("The client's page is too heavy for a slow phone. Take something out.");
  process.exit(1);
}
