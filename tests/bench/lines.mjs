// lines.mjs [--needs] TABLE [LINE...]   runs the lines of a table, or says what they need; support/lines.sh says how.

import { readdirSync } from 'node:fs';

import { openWeb } from './support/web.mjs';

const options = process.argv.slice(2);
const [table, ...asked] = options.filter((word) => word !== '--needs');
const folder = new URL(`lines/${table}/`, import.meta.url);
const known = readdirSync(folder).filter((file) => file.endsWith('.mjs')).map((file) => file.slice(0, -'.mjs'.length)).sort();

const unknown = asked.filter((name) => !known.includes(name));
if (unknown.length > 0) {
  console.error(`No line is called ${unknown.join(', ')}. The lines: ${known.join(', ')}.`);
  process.exit(2);
}

const lines = [];
for (const file of asked.length > 0 ? asked : known) lines.push((await import(new URL(`${file}.mjs`, folder))).default);

if (options.includes('--needs')) console.log([...new Set(lines.flatMap(({ needs = [] }) => needs))].join(' '));
else process.exitCode = (await runAll()) ? 0 : 1;

async function runAll() {
  const web = openWeb();
  let all = true;
  try {
    for (const { name, run } of lines) {
      for (const { verdict, text } of await resultsOf(run, { web: web.module })) {
        all &&= verdict === 'PASS';
        console.log(`${verdict.padEnd(5)} ${name}: ${text}`);
      }
    }
  } finally {
    web.close();
  }
  return all;
}

/** What a line found; one that found nothing did not measure. */
async function resultsOf(run, context) {
  try {
    const results = [await run(context)].flat();
    return results.length > 0 ? results : [{ verdict: 'SHORT', text: 'nothing was measured' }];
  } catch (fault) {
    return [{ verdict: 'SHORT', text: `could not be measured: ${fault.stack}` }];
  }
}
