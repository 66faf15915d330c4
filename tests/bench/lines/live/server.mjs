// The portal with 10,000 idle sockets and 200 running rooms: what a socket costs in memory, how often idle ones are beaten
// to, and how late the running ones are beside a plain echo. The load is bench/sockets; here it is started and judged.

import { execFile, execFileSync } from 'node:child_process';
import { promisify } from 'node:util';

import { startHouse } from '../../../browser/support/harness.mjs';
import { atMost, slope } from '../../support/judge.mjs';

const run = promisify(execFile);

/** Sockets of both sorts, and what else a process has open. */
const FILES = 11_000;
const KIB_A_SOCKET = 16;
/** SLOW_BEAT_MS of leeward_core, s, and how far off the mean may be, as a share. */
const BEAT = { seconds: 5, within: 0.05 };
const TIMES_THE_ECHO = 2;
/** Showings of one room in a second, and the share of all of them that there must be: otherwise not all rooms ran. */
const SHOWINGS = { a_second: 4, share: 0.9 };
/** When more than this share of the windows contradict the whole, it was the machine that changed. */
const CONTRADICTED = 0.25;

export default {
  name: 'server',
  needs: ['portal'],
  run: async () => {
    const files = Number(execFileSync('bash', ['-c', 'ulimit -n'], { encoding: 'utf8' }).replace('unlimited', 'Infinity'));
    if (files < FILES) return { verdict: 'SKIP', text: `a process may open ${files} files here, and this takes ${FILES}` };
    const figures = await measured();
    return [...lossesOf(figures), memoryOf(figures), beatsOf(figures), relayOf(figures)];
  },
};

async function measured() {
  const house = await startHouse();
  try {
    const { origin, databaseUrl, ownerUrl, keyFile, portalPid } = house.facts;
    const env = {
      ...process.env,
      LEEWARD_ORIGIN: origin,
      LEEWARD_DATABASE_URL: databaseUrl,
      LEEWARD_OWNER_URL: ownerUrl,
      LEEWARD_KEY_FILE: keyFile,
      LEEWARD_PORTAL_PID: String(portalPid),
    };
    const { stdout } = await run(`${process.env.LEEWARD_PROGRAMS}/bench-sockets`, [], { env });
    return JSON.parse(stdout);
  } finally {
    await house.stop();
  }
}

/** Figures of a load that fell apart are none. */
function lossesOf({ lost, unanswered }) {
  if (lost === 0 && unanswered === 0) return [];
  return [{ verdict: 'SHORT', text: `the portal closed ${lost} sockets, and ${unanswered} messages never came back` }];
}

function memoryOf({ memory, made_s, opened_s }) {
  const [first, last] = [memory[0], memory.at(-1)];
  const perSocket = slope(memory.map(({ sockets, kib }) => [sockets, kib]));
  const { verdict, text } = atMost(perSocket, KIB_A_SOCKET, ' KiB', 'resident memory a socket, by slope,');
  const mib = (kib) => `${(kib / 1024).toFixed(0)} MiB`;
  return {
    verdict,
    text: `${text}; ${mib(first.kib)} at ${first.sockets} idle sockets, ${mib(last.kib)} at ${last.sockets} `
      + `(rows made in ${made_s.toFixed(0)} s, sockets opened in ${opened_s.toFixed(0)} s)`,
  };
}

function beatsOf({ idle_sockets, beats }) {
  const mean = (idle_sockets * beats.seconds) / beats.count;
  const good = Math.abs(mean / BEAT.seconds - 1) <= BEAT.within;
  return {
    verdict: good ? 'PASS' : 'SHORT',
    text: `idle sockets are beaten to once in ${mean.toFixed(2)} s, once in ${BEAT.seconds} s (${(mean / BEAT.seconds).toFixed(3)} of it); `
      + `${beats.count} beats on ${idle_sockets} sockets in ${beats.seconds.toFixed(0)} s, gaps of ${beats.gap_p1.toFixed(2)} s (p1) to ${beats.gap_p99.toFixed(2)} s (p99)`,
  };
}

/** Both tails are the machine's in the main (the echo's too is many times its median), so it is their ratio that must be steady. */
function relayOf({ running_rooms, beats, whole: { relay, echo }, windows }) {
  const due = Math.round(running_rooms * SHOWINGS.a_second * beats.seconds);
  const { verdict, text } = atMost(relay.p99 / echo.p99, TIMES_THE_ECHO, ' times', 'relay p99 over that of a plain echo');
  const ratios = windows.map((window) => window.relay.p99 / window.echo.p99);
  const against = ratios.filter((ratio) => (ratio <= TIMES_THE_ECHO) !== (verdict === 'PASS')).length;
  const times = ({ p50, p99 }) => `p50 ${p50.toFixed(2)} ms, p99 ${p99.toFixed(2)} ms`;
  return {
    verdict: relay.count < SHOWINGS.share * due ? 'SHORT' : against > CONTRADICTED * windows.length ? 'NOISY' : verdict,
    text: `${text}, ${Math.min(...ratios).toFixed(2)} to ${Math.max(...ratios).toFixed(2)} in windows of 5 s, ${against} of ${windows.length} against the whole; `
      + `relay of ${running_rooms} running rooms ${times(relay)}, echo ${times(echo)}, ${relay.count} of ${due} showings`,
  };
}
