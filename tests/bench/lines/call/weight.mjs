// What picture and voice add to the client's page: its scripts, style and words, packed, against the same page built without them.

import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { served } from '../../../../web/bundle.mjs';
import { atMost } from '../../support/judge.mjs';

export default { name: 'weight of the call', run };

const AT_MOST = 10;
const ROOT = new URL('../../../../', import.meta.url);
const weight = (text) => gzipSync(text, { level: 9 }).length / 1000;

async function run() {
  const script = await served('src/stage_call/main.ts');
  const page = await served('src/stage/main.ts');
  const pageWithout = await served('src/stage/main.ts', { module: /call_later$/, instead: 'export class CallLater { get asks() { return false; } ask() { return []; } hear() {} end() {} }' });
  const style = await served('styles/stage_call.css');
  const words = readFileSync(fileURLToPath(new URL('server/portal/src/words/call.rs', ROOT)), 'utf8');
  const parts = { 'its own script': weight(script), "in the page's": weight(page) - weight(pageWithout), style: weight(style), words: weight(words) };
  const all = Object.values(parts).reduce((sum, part) => sum + part);
  return atMost(all, AT_MOST, ' kB', `${Object.entries(parts).map(([name, kb]) => `${name} ${kb.toFixed(2)}`).join(', ')}, together:`);
}
