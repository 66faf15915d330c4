// Bundles TypeScript for Node: for the tests of these pages and for tests/bench.
import { build } from "esbuild";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const here = dirname(fileURLToPath(import.meta.url));

/** Where the pages' TypeScript lies. */
export const source = join(here, "src");

/** Writes each of `files` (absolute paths of *.ts under web/) into `outdir` as *.mjs, at its path below web/. */
export const bundleForNode = (files, outdir) =>
  build({
    entryPoints: files,
    outdir,
    outbase: here,
    outExtension: { ".js": ".mjs" },
    bundle: true,
    format: "esm",
    platform: "node",
    target: "node18",
    sourcemap: "inline",
    logLevel: "warning",
  });
