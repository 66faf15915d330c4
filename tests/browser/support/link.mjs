// A network link for one browser, to be slowed, silenced or cut while the other party's stays whole.
//
// The browser resolves the portal's host and port to this relay, so pages keep their true origin.

import { connect, createServer } from 'node:net';

/**
 * Relays to the portal at `origin`. Launch the browser with `launch({ flags: link.flags })`.
 *
 * @returns {Promise<Link>}
 */
export async function openLink(origin) {
  const link = new Link(origin);
  await link.listen();
  return link;
}

class Link {
  #origin;
  #server = createServer((near) => { this.#relay(near); });
  #pairs = new Set();
  #silent = false;
  #refusing = false;
  #delay = () => 0;

  constructor(origin) {
    this.#origin = new URL(origin);
  }

  async listen() {
    await new Promise((resolve, reject) => {
      this.#server.once('error', reject);
      this.#server.listen(0, '127.0.0.1', resolve);
    });
    const { hostname, port } = this.#origin;
    /** Chromium's flags for going by this link. */
    this.flags = [`--host-resolver-rules=MAP ${hostname}:${port} 127.0.0.1:${this.#server.address().port}`];
  }

  /** Nothing passes any more, and neither side is told: a train in a tunnel. */
  silence() { this.#silent = true; }

  /** Both sides see their connections end, and no new one comes about. */
  cut() {
    this.#refusing = true;
    for (const pair of this.#pairs) pair.forEach((socket) => socket.resetAndDestroy());
  }

  /** New connections come about again; what was swallowed in silence stays lost, so silenced ones are reset. */
  restore() {
    if (this.#silent) for (const pair of this.#pairs) pair.forEach((socket) => socket.resetAndDestroy());
    this.#silent = false;
    this.#refusing = false;
  }

  /** Each piece takes `delay()` milliseconds each way; pieces never overtake one another, as in TCP. */
  setDelay(delay) { this.#delay = typeof delay === 'function' ? delay : () => delay; }

  /** Ends the relay and all that goes by it. */
  async close() {
    this.cut();
    await new Promise((resolve) => { this.#server.close(resolve); });
  }

  #relay(near) {
    if (this.#refusing) {
      near.resetAndDestroy();
      return;
    }
    const far = connect({ port: Number(this.#origin.port), host: '127.0.0.1', noDelay: true });
    near.setNoDelay(true);
    const pair = [near, far];
    this.#pairs.add(pair);
    this.#forward(near, far);
    this.#forward(far, near);
    // One end alone may stay open: it is still there to be cut.
    for (const socket of pair) socket.on('close', () => { if (pair.every((one) => one.closed)) this.#pairs.delete(pair); });
  }

  #forward(from, to) {
    let due = 0;
    const waiting = [];
    const later = (act) => {
      due = Math.max(due, performance.now() + this.#delay());
      const piece = () => { if (!this.#silent && !to.destroyed) act(); };
      waiting.push(piece);
      // Timers of nearly the same moment may fire in any order, so each lets go what came before its own.
      setTimeout(() => { while (waiting.includes(piece)) waiting.shift()(); }, due - performance.now());
    };
    from.on('data', (bytes) => { later(() => to.write(bytes)); });
    from.on('end', () => { later(() => to.end()); });
    from.on('error', () => { to.destroy(); });
  }
}
