// One throw-away Leeward for each test file: its own Postgres, its own key file, the real portal on a free port.

import { execFile, spawn } from 'node:child_process';
import { once } from 'node:events';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';

const run = promisify(execFile);
const HOUSE = fileURLToPath(new URL('./house', import.meta.url));
export const PROGRAMS = process.env.LEEWARD_PROGRAMS ?? fileURLToPath(new URL('../../../target/debug', import.meta.url));

/**
 * Starts a migrated database and the portal.
 *
 * @param {{demo?: boolean, env?: object}} [options] demo: with the invented practice, and `house.links()`; env: settings of the portal besides
 * @returns {Promise<House>} rejects with the scripts' own words when something does not start
 */
export async function startHouse({ demo = false, env = {} } = {}) {
  const child = spawn(HOUSE, demo ? [PROGRAMS, '--demo'] : [PROGRAMS], { stdio: ['pipe', 'pipe', 'pipe'], env: { ...process.env, ...env } });
  const house = new House(child);
  await house.opened();
  return house;
}

/** A running Leeward. Everything it started ends with `stop()`, and with the test's process. */
class House {
  #child;
  #lines;
  #said = '';
  /** What was stopped and not started again. */
  #down = new Set();

  constructor(child) {
    this.#child = child;
    this.#lines = createInterface({ input: child.stdout })[Symbol.asyncIterator]();
    child.stderr.on('data', (words) => { this.#said += words; });
    child.stdin.on('error', () => {}); // a house that has died is reported by #next, with its words
  }

  async opened() {
    /** `{origin, databaseUrl, ownerUrl, superuserUrl, psql, keyFile, folder, portalPid}`, as support/house prints it at first. */
    this.facts = JSON.parse(await this.#next());
    this.origin = this.facts.origin;
  }

  /** `portal-stop`, `portal-kill`, `portal-start`, `database-stop` or `database-start`; resolves when it is done. */
  async tell(command) {
    this.#child.stdin.write(`${command}\n`);
    const answer = await this.#next();
    if (answer !== 'done') throw new Error(`house answered "${answer}" to ${command}`);
    const [what, how] = command.split('-');
    if (how === 'start') this.#down.delete(what);
    else this.#down.add(what);
  }

  /** Starts what a test that failed has left stopped. */
  async mend() {
    for (const what of ['database', 'portal']) if (this.#down.has(what)) await this.tell(`${what}-start`);
  }

  async #next() {
    const { value, done } = await this.#lines.next();
    if (done) throw new Error(`the house ended early:\n${this.#said}`);
    return value;
  }

  /** Runs the portal's own command line, say `leeward('member', 'invite')`; resolves to what it prints. */
  async leeward(...args) {
    const { databaseUrl, ownerUrl, keyFile, origin } = this.facts;
    const env = {
      ...process.env,
      LEEWARD_DATABASE_URL: databaseUrl,
      LEEWARD_OWNER_URL: ownerUrl,
      LEEWARD_KEY_FILE: keyFile,
      LEEWARD_ORIGIN: origin,
    };
    return (await run(`${PROGRAMS}/leeward`, args, { env })).stdout.trim();
  }

  /** Opens one waiting session of the demo: `{desk, lead, client, code}`. */
  async links() {
    return readLinks(await this.leeward('demo', 'links'));
  }

  /** Asks the database, as its superuser, past every policy; resolves to rows of objects. */
  async rows(query) {
    const sql = `SELECT coalesce(json_agg(r), '[]') FROM (${query}) r`;
    const { stdout } = await run(this.facts.psql, ['-XAtq', '-v', 'ON_ERROR_STOP=1', '-d', this.facts.superuserUrl, '-c', sql],
      { maxBuffer: 64 * 1024 * 1024 });
    return JSON.parse(stdout);
  }

  /** Ends portal and database and removes their data; rejects when anything did not end well. */
  async stop() {
    if (this.#child.exitCode === null) {
      this.#child.stdin.end();
      await once(this.#child, 'exit');
    }
    if (this.#child.exitCode !== 0) throw new Error(`the house ended with ${this.#child.exitCode}:\n${this.#said}`);
  }
}

/** Reads the three lines of `leeward demo links`. */
export function readLinks(text) {
  const words = Object.fromEntries(text.split('\n').map((line) => line.split(/\s+/)).map(([who, ...rest]) => [who, rest]));
  const links = { desk: words.desk?.[0], lead: words.lead?.[0], client: words.client?.[0], code: words.client?.[2] };
  for (const [name, value] of Object.entries(links)) {
    if (!value) throw new Error(`leeward demo links gave no ${name}: ${text}`);
  }
  return links;
}
