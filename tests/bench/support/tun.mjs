// Emulated links that the kernel's own TCP runs over, each into a network namespace of its own: see tests/bench/tun.

import { spawn, spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';

const INSIDE = fileURLToPath(new URL('./inside', import.meta.url));

/** Why no such link can be made here, with what to do about it; `undefined` when it can be tried. */
export function whyNoTun() {
  if (process.getuid() !== 0) return 'it is not run as root, which network namespaces and TUN devices need';
  if (!existsSync('/dev/net/tun')) return 'there is no /dev/net/tun: load the kernel module tun, or let the container have the device';
  for (const [program, from] of [['ip', 'iproute2'], ['unshare', 'util-linux'], ['nsenter', 'util-linux']]) {
    if (spawnSync(program, ['--help']).error) return `the program ${program} is missing: install ${from}`;
  }
  return undefined;
}

/**
 * A link to the portal at `origin`, at first without delay or loss.
 *
 * @returns {Promise<Tun>} rejects with a `NoTun` when this machine does not let it be made
 */
export async function openTun(origin, seed) {
  const tun = new Tun();
  await tun.open(origin, seed).catch(async (fault) => { await tun.close(); throw fault; });
  return tun;
}

/** No link can be made here, for a reason that is not the link's. */
export class NoTun extends Error {}

class Tun {
  #child;
  #lines;
  #said = '';

  async open(origin, seed) {
    this.#child = spawn(join(process.env.LEEWARD_PROGRAMS, 'bench-tun'), [new URL(origin).port, String(seed)], { stdio: ['pipe', 'pipe', 'pipe'] });
    this.#child.stderr.on('data', (words) => { this.#said += words; });
    this.#child.stdin.on('error', () => {}); // a link that broke is reported by #next, with its words
    this.#lines = createInterface({ input: this.#child.stdout })[Symbol.asyncIterator]();
    /** Options of `launch` for a browser at the link's other end. */
    this.browser = { executable: INSIDE, env: { LEEWARD_NAMESPACE: `/proc/${await this.#next()}/ns/net` } };
  }

  /** Makes it one of `LINKS` of link.mjs. What is under way arrives as it would have. */
  async set({ mid, jitter, loss }) {
    this.#child.stdin.write(`${mid} ${jitter} ${loss}\n`);
    await this.#next();
  }

  /** The end in there gets another address: what was connected is not told. */
  async move() {
    this.#child.stdin.write('move\n');
    await this.#next();
  }

  async #next() {
    const { value, done } = await this.#lines.next();
    if (!done) return value;
    const code = await this.#ended();
    throw code === 2 && !this.browser ? new NoTun(this.#said.trim()) : new Error(`the link ended with ${code}: ${this.#said.trim()}`);
  }

  async #ended() {
    const { exitCode, signalCode } = this.#child;
    if (exitCode !== null || signalCode !== null) return exitCode ?? signalCode;
    return new Promise((resolve) => { this.#child.once('exit', (code, signal) => resolve(code ?? signal)); });
  }

  /** Takes it down. Close what goes by it first. */
  async close() {
    this.#child.stdin.end();
    await this.#ended();
  }
}
