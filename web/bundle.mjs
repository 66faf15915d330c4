// Bundles scripts and styles: for the pages, and for Node, where the tests of the pages and tests/bench run them.
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

/** As the pages are served; `options`: of esbuild, besides. */
export const bundleForBrowsers = (options) =>
  build({
    bundle: true,
    minify: true,
    format: "esm",
    target: ["es2021", "safari15.4", "firefox102", "chrome102"],
    legalComments: "none",
    charset: "utf8",
    logLevel: "warning",
    ...options,
  });

/** What a page is served of one entry, a path below web/; `without`: as it were with nothing but `instead` in place of the scripts whose path fits. */
export async function served(entry, without = undefined) {
  const left = {
    name: "left out",
    setup: (made) => {
      made.onResolve({ filter: without.module }, ({ path }) => ({ path, namespace: "left" }));
      made.onLoad({ filter: /.*/, namespace: "left" }, () => ({ contents: without.instead, loader: "js" }));
    },
  };
  const { outputFiles } = await bundleForBrowsers({ entryPoints: [join(here, entry)], write: false, outdir: "served", plugins: without ? [left] : [] });
  return outputFiles[0].text;
}
