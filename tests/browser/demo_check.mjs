// Holds one whole session by the three links of ./deploy/demo, in real browser contexts, and prints what was recorded.
// Exit code 0: every step and every figure was as it must be.

import assert from 'node:assert/strict';
import { launch, openPage } from './support/chromium.mjs';
import { Desk } from './support/desk.mjs';
import { closeSession } from './support/practice.mjs';
import { table } from './support/record.mjs';
import { Stage } from './support/stage.mjs';

const LINKS = {
  desk: process.env.LEEWARD_DEMO_DESK,
  lead: process.env.LEEWARD_DEMO_LEAD,
  client: process.env.LEEWARD_DEMO_CLIENT,
  code: process.env.LEEWARD_DEMO_CODE,
};

/** Cycles of each set, the rating after it, and how it goes. */
const SETS = [
  { cycles: 6, sud: 6, words: 'further away', mark: 'changing' },
  { cycles: 6, sud: 5, words: 'same, but quieter', mark: 'same', stopped: true },
  { cycles: 8, sud: 3, words: 'warm hands', mark: 'settled' },
];
const CLOSING = {
  kind: 'incomplete', resource: 'slow breathing', effect: 'settled', sud: '3', state: 'calm', companion: 'nobody',
  next_contact: 'in a week, by video', client_words: 'Thank you for today.', note: 'Three sets, held by the check of the demo.',
};

async function signIn(page, link) {
  const response = await page.goto(link);
  assert.equal(response.status(), 200, link);
  await page.getByRole('button', { name: /^Sign in as/ }).click();
  await page.waitForURL((url) => !url.pathname.startsWith('/demo'));
}

async function join(stage, desk) {
  await stage.join({ link: LINKS.client, code: LINKS.code });
  await stage.skipCheck();
  await stage.until('Please wait');
  await desk.admit({ location: 'Room 4, Quay Street 2', callBack: '+44 20 7946 0000' });
  await stage.until('You are in');
  await desk.sight();
}

async function holdSet(desk, stage, { cycles, stopped, ...note }) {
  await desk.cycles(cycles);
  await desk.start();
  await desk.untilCycle(2);
  await desk.press('ArrowRight');
  await desk.untilCycle(3);
  if (stopped) {
    await stage.tapAnywhere();
    await desk.until('STOPPED BY CLIENT');
    await stage.ready();
  }
  await desk.until('READY', 30_000);
  await desk.untilText('showing', /^at rest after/);
  await desk.note(note);
}

async function close(desk, stage) {
  const list = await closeSession(desk.page, CLOSING);
  assert.deepEqual(list.troubles, []);
  await stage.until('The meeting has ended.');
  await desk.until('CLOSED');
  await desk.page.getByRole('link', { name: "Session's page" }).click();
}

function judge(sets) {
  assert.equal(sets.length, SETS.length);
  for (const [i, { cycles, sud, mark, stopped }] of SETS.entries()) {
    const row = sets[i];
    assert.equal(row['Shown ending'], stopped ? 'stopped by the client' : 'as planned', `set ${i + 1}`);
    assert.match(row['Ordered rate, Hz'], / to /, `set ${i + 1} had a change of its rate`);
    assert.equal(row['Rated SUD'], String(sud));
    assert.equal(row['Rated change'], mark);
    const shown = Number(row['Shown cycles']);
    assert.ok(stopped ? shown >= 2 && shown < cycles : shown === cycles, `set ${i + 1}: ${shown} of ${cycles} cycles`);
  }
}

function print(title, rows) {
  const heads = Object.keys(rows[0]);
  const widths = heads.map((head) => Math.max(head.length, ...rows.map((row) => row[head].length)));
  const line = (cells) => cells.map((cell, i) => cell.padEnd(widths[i])).join('  ').trimEnd();
  console.log(`\n${title}\n${line(heads)}\n${line(widths.map((width) => '-'.repeat(width)))}`);
  for (const row of rows) console.log(line(heads.map((head) => row[head])));
}

async function holdSession(browser) {
  const { origin } = new URL(LINKS.desk);
  const [deskPage, leadPage, clientPage] = [await openPage(browser, origin), await openPage(browser, origin), await openPage(browser, origin)];
  const [desk, stage] = [new Desk(deskPage), new Stage(clientPage)];
  await signIn(leadPage, LINKS.lead);
  await leadPage.goto('/practice/caseload');
  const clients = (await table(leadPage, 'By record number')).length;
  assert.ok(clients >= 60, `the lead sees ${clients} clients`);
  console.log(`The lead sees the counts of ${clients} clients.`);
  await signIn(deskPage, LINKS.desk);
  await desk.until('WAITING');
  await join(stage, desk);
  console.log('The client joined by link and code, and was admitted.');
  for (const [i, set] of SETS.entries()) {
    await holdSet(desk, stage, set);
    console.log(`Set ${i + 1} was held.`);
  }
  await close(desk, stage);
  const sets = await table(deskPage, 'Sets as ordered');
  print('Recorded: sets', sets);
  print('Recorded: ratings and marks', await table(deskPage, 'Ratings by time'));
  judge(sets);
  for (const page of [deskPage, leadPage, clientPage]) assert.deepEqual(page.troubles, [], page.url());
}

for (const [name, value] of Object.entries(LINKS)) assert.ok(value, `LEEWARD_DEMO_${name.toUpperCase()} is not set`);
const browser = await launch();
try {
  await holdSession(browser);
} finally {
  await browser.close();
}
