// Six sessions of one invented client, led by keys on both pages: without reprocessing; incomplete; stuck and helped; complete;
// re-evaluation that reopens; final. After each, the target's page, the session's page, the lead's list and the rows say the same.

import assert from 'node:assert/strict';
import { after, before } from 'node:test';
import { Desk } from './support/desk.mjs';
import { newClient, newTarget, startSession } from './support/practice.mjs';
import { table, written } from './support/record.mjs';
import { CLIENT, LOCATION, openScene, TARGET } from './support/scene.mjs';
import { story } from './support/story.mjs';

/** The desk beside a video call. */
const NARROW = { width: 455, height: 768 };

const test = story();
let scene, page, records, desk, stage, client, target, session;
before(async () => {
  scene = await openScene();
  page = await scene.firstMember('Runa Halvard', 'clinician,lead');
  client = await newClient(page, CLIENT);
  target = await newTarget(page, TARGET);
  records = await scene.windowBeside(page);
});
after(() => scene?.close());

/** Opens the next session and brings the client in, the opening done with `opened`, or by its first answers. */
async function begin(opened = () => desk.opening()) {
  await page.setViewportSize({ width: 1280, height: 800 });
  session = await startSession(page, client, target);
  await page.setViewportSize(NARROW);
  desk = new Desk(page);
  scene.desk = desk;
  await desk.until('WAITING');
  await scene.far?.close();
  scene.far = undefined;
  await scene.join(await scene.clientPage({ width: 390, height: 844 }));
  stage = scene.stage;
  await stage.skipCheck();
  await desk.admit({ location: LOCATION, opening: false });
  await opened();
  await desk.press('a');
}

/** Leads one short set, and writes what came of it. */
async function set({ mark, sud, voc, from } = {}) {
  await scene.settle();
  if (!(await desk.text('length')).startsWith('4 ')) await desk.cycles(4);
  await desk.start();
  await desk.untilOver();
  await scene.settle();
  const kept = await desk.saved();
  const keys = [];
  if (mark) keys.push({ changing: 'j', same: 'k', settled: 'l' }[mark]);
  if (sud !== undefined) keys.push('s', ...(from ?? []), String(sud));
  if (voc !== undefined) keys.push('v', String(voc));
  await desk.press(...keys);
  await desk.untilSaved(kept + [mark, sud, voc].filter((one) => one !== undefined).length);
}

/** Takes what the phase offers under these words, by its digit. */
async function phase(words) {
  await desk.press(';');
  const offer = page.locator('[data-part="phase-offers"] button', { hasText: words });
  await offer.waitFor();
  await desk.press(await offer.getAttribute('data-value'));
  await desk.press('a');
}

/** SUD 0 to a clear scan: what the standard end asks for. */
async function toItsEnd() {
  await set({ mark: 'settled', sud: 0, from: ['b'] });
  await desk.untilText('phase', /^Installation/);
  await phase('the belief still fits');
  await set({ voc: 7 });
  await desk.untilText('phase', /^Body scan/);
  await phase('scan: clear');
  await desk.untilText('phase', 'Closing');
}

async function close(kind) {
  await desk.close({ kind, used: 'the harbour', next: 'Thursday' });
  await desk.until('CLOSED');
  await stage.until('The meeting has ended.');
  assert.equal(await stage.page.locator('main button').count(), 0, 'nothing is left to press');
}

/** What every place says of the target and of the session that was closed last. */
async function agrees({ stands, closing, open, incomplete, complete, sessions }) {
  const rows = await written(
    () => scene.house.rows(`SELECT n.state, n.held, s.closing FROM target_course n, session s WHERE n.target_id = '${target}' AND s.id = '${session}'`),
    ([row]) => row.closing !== null,
  );
  const state = stands.split(',')[0];
  assert.deepEqual([rows[0].state, rows[0].closing], [state, closing.replaceAll(' ', '_')]);
  await records.goto(`/targets/${target}`);
  assert.equal(await records.locator('ul.flags li').first().innerText(), stands);
  await records.goto(`/sessions/${session}`);
  await records.locator('dt:text-is("Closed as")').first().waitFor();
  assert.equal(await records.locator('dt:text-is("Closed as") + dd').first().innerText(), closing);
  await records.goto('/practice/caseload');
  const [line] = await table(records, 'By record number');
  const counts = ['Targets open', 'Targets incomplete', 'Targets complete', 'Sessions begun'].map((name) => Number(line[name]));
  assert.deepEqual(counts, [open, incomplete, complete, sessions], 'the lead\'s list');
  assert.equal(line['Last closing'], closing);
  // Rebuilt from the record, nothing is different.
  const rebuilt = await scene.house.leeward('course');
  assert.match(rebuilt, / 0 different/, rebuilt);
}

test('first, without reprocessing: the opening turns the hour, and a calm place still works', async () => {
  await begin(async () => {
    await desk.opening();
    await desk.press('f');
    await page.locator('[data-matter="reprocessing"]').focus();
    await page.keyboard.press('Enter');
    await page.locator('[aria-current="step"] [data-matter="reprocessing"]').waitFor();
    await desk.press('3');
    await desk.untilText('phase', /^Preparation/);
  });
  await desk.sight();
  await desk.until('HOLD');
  await desk.press('t');
  await set();
  await phase('their own tapping');
  await close('No reprocessing');
  await agrees({ stands: 'planned', closing: 'no reprocessing', open: 1, incomplete: 0, complete: 0, sessions: 1 });
});

test('second, incomplete: one set to the next is one key, three with a SUD', async () => {
  await begin();
  await desk.sight();
  await desk.untilText('phase', /^Desensitisation/);
  await set({ mark: 'changing', sud: 6 });
  await set({ mark: 'changing' });
  await desk.until('READY');
  console.log('from the end of one set to the start of the next: 1 key (Space), 3 with a SUD (s, the number, Space)');
  await close('Incomplete');
  await agrees({ stands: 'incomplete', closing: 'incomplete', open: 1, incomplete: 1, complete: 0, sessions: 2 });
});

test('third, stuck and helped: twice the same, something was seen, and what is offered first is that', async () => {
  await begin();
  await desk.sight();
  await set({ mark: 'same' });
  await set({ mark: 'same' });
  await desk.untilText('messages', /The same in a row: mechanics/);
  await desk.press('-', '4');
  await desk.untilText('between-hint', /grounding, mechanics/);
  await desk.press('6', 'a');
  await desk.press('Delete', '1');
  await stage.until('Here and now');
  await desk.press('0', 'a');
  await scene.settle();
  await desk.untilText('messages', /It was too much here\. Not started/);
  await set({ mark: 'changing', sud: 4, from: ['b'] });
  await close('Incomplete');
  await agrees({ stands: 'incomplete', closing: 'incomplete', open: 1, incomplete: 1, complete: 0, sessions: 3 });
  await records.goto(`/sessions/${session}`);
  const done = await table(records, 'Found and done');
  assert.ok(done.some((row) => row.What === 'Too much'), JSON.stringify(done));
  const sets = await records.locator('table', { hasText: 'tried: grounding' }).count();
  assert.ok(sets > 0, 'what was tried stands with its set');
});

test('fourth, complete: distress gone, belief held, body clear', async () => {
  await begin();
  await desk.sight();
  await toItsEnd();
  await close('Complete');
  await agrees({ stands: 'complete, provisional', closing: 'complete', open: 0, incomplete: 0, complete: 1, sessions: 4 });
});

test('fifth, it rose again: looked at anew it is reopened, and nothing is overwritten', async () => {
  await begin(() => desk.opening({ sud: 3 }));
  await records.goto(`/targets/${target}`);
  assert.equal(await records.locator('ul.flags li').first().innerText(), 'complete, came up again');
  await records.getByLabel('Decide').selectOption('decided.reopened');
  await records.getByRole('button', { name: 'Decide so' }).click();
  // The address says "saved" for as long as the page takes to say it.
  await records.locator('ul.flags li', { hasText: /^reopened/ }).waitFor();
  await desk.sight();
  await set({ mark: 'changing', sud: 2 });
  await close('Incomplete');
  await agrees({ stands: 'incomplete', closing: 'incomplete', open: 1, incomplete: 1, complete: 0, sessions: 5 });
});

test('last, final: at its end again', async () => {
  await begin();
  await desk.sight();
  await toItsEnd();
  await close('Complete');
  await agrees({ stands: 'complete, provisional', closing: 'complete', open: 0, incomplete: 0, complete: 1, sessions: 6 });
});

test('no page had any trouble', () => scene.calm());
