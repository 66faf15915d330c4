// The pages' TypeScript, bundled for Node as the web tests are.

import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';

import { bundleForNode, source } from '../../../web/bundle.mjs';

/** `module("live/clock")` resolves to the exports of web/src/live/clock.ts. Call `close` at the end. */
export function openWeb() {
  const outdir = mkdtempSync(join(tmpdir(), 'leeward-bench-'));
  const module = async (path) => {
    await bundleForNode([join(source, `${path}.ts`)], outdir);
    return import(pathToFileURL(join(outdir, 'src', `${path}.mjs`)));
  };
  return { module, close: () => rmSync(outdir, { recursive: true, force: true }) };
}
