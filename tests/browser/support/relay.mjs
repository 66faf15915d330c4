// A real relay on this machine: coturn, with the settings that the practice is given, but for what only a machine of its own has.

import { spawn } from 'node:child_process';
import { createSocket } from 'node:dgram';
import { once } from 'node:events';
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const SETTINGS = new URL('../../../deploy/coturn/turnserver.conf', import.meta.url);
const SECRET = 'only-for-the-tests-of-this-machine';
/** So long may it take to come up, ms. */
const PATIENCE = 15_000;

/**
 * Starts it on a free port of `address`, which is this machine's; `open`: it passes on to everywhere, as no practice's may. @returns `{url, secret, env, stop()}`; `env`: what a portal that is to use it has in its environment.
 */
export async function startRelay(address = '127.0.0.1', { open = false } = {}) {
  const [folder, port] = [await mkdtemp(join(tmpdir(), 'leeward-relay-')), await freeUdpPort(address)];
  const file = join(folder, 'turnserver.conf');
  await writeFile(file, await settings(folder, address, port, open));
  const child = spawn(process.env.LEEWARD_TURNSERVER ?? 'turnserver', ['-c', file], { stdio: ['ignore', 'pipe', 'pipe'] });
  let said = '';
  child.stdout.on('data', (words) => { said += words; });
  child.stderr.on('data', (words) => { said += words; });
  const ended = once(child, 'exit');
  const url = `turn:${address}:${port}?transport=udp`;
  const stop = async () => {
    if (child.exitCode !== null) return;
    child.kill('SIGTERM');
    await ended;
    await rm(folder, { recursive: true, force: true });
  };
  if (!await answers(address, port)) {
    await stop();
    throw new Error(`the relay did not come up:\n${said}`);
  }
  return { url, secret: SECRET, env: { LEEWARD_RELAY_URL: url, LEEWARD_RELAY_SECRET: SECRET }, stop };
}

/** The practice's settings: without its certificate, and allowed to reach itself, which is at an address of this machine. */
async function settings(folder, address, port, open) {
  const given = await readFile(SETTINGS, 'utf8');
  const kept = given.split('\n').filter((line) => !(open && line.startsWith('denied-peer-ip')) && !/^(cert|pkey|realm|static-auth-secret|listening-port|tls-listening-port|syslog|allowed-peer-ip)/.test(line));
  return [
    ...kept, 'realm=relay.test', `static-auth-secret=${SECRET}`, `listening-port=${port}`, `listening-ip=${address}`, `relay-ip=${address}`, `allowed-peer-ip=${address}`,
    'allow-loopback-peers', 'no-tls', 'no-dtls', 'log-file=stdout', `pidfile=${join(folder, 'pid')}`, `userdb=${join(folder, 'users')}`, '',
  ].join('\n');
}

async function freeUdpPort(address) {
  const socket = createSocket('udp4');
  socket.bind(0, address);
  await once(socket, 'listening');
  const { port } = socket.address();
  socket.close();
  return port;
}

/** Whether a relay answers there: a STUN request for its own address (RFC 8489, section 5; type Binding, magic cookie, a transaction). */
async function answers(address, port) {
  const request = Buffer.concat([Buffer.from([0, 1, 0, 0, 0x21, 0x12, 0xa4, 0x42]), Buffer.from('leewardtest1')]);
  const socket = createSocket('udp4');
  const until = Date.now() + PATIENCE;
  let came = false;
  socket.on('message', () => { came = true; });
  while (!came && Date.now() < until) {
    socket.send(request, port, address);
    await new Promise((later) => setTimeout(later, 100));
  }
  socket.close();
  return came;
}
