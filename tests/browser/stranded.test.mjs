// Nobody ends up where nobody can help them, as the people do it who have to: a clinician leaves, a passkey is lost, a role changes.

import assert from 'node:assert/strict';
import { after, before } from 'node:test';
import { Desk } from './support/desk.mjs';
import { accessible, openScene } from './support/scene.mjs';
import { enrol, invite } from './support/practice.mjs';
import { Stage } from './support/stage.mjs';
import { story } from './support/story.mjs';

const test = story();
let scene, administrator, lead, next, desk, stage;
before(async () => {
  scene = await openScene();
  administrator = await scene.firstMember('Tove Lindqvist', 'administrator');
  lead = await memberBy('Jon Eide', 'Lead');
  next = await memberBy('Marit Sund', 'Clinician');
});
after(() => scene?.close());

/** Invites somebody, who enrols on a device of their own. */
async function memberBy(name, role) {
  const link = await invite(administrator, name, [role]);
  const page = await scene.memberPage();
  await enrol(page, link);
  return page;
}

const row = (page, name) => page.getByRole('row').filter({ hasText: name });

test('a device that is not the client\'s is removed, and the session goes on with a new code', async () => {
  desk = await scene.openDesk();
  stage = new Stage(await scene.clientPage());
  const minted = await desk.mint();
  await stage.join(minted);
  await desk.until('AT THE DOOR');
  assert.equal(await desk.text('join-code'), '', 'a code that was used is not left to be said');
  await desk.untilText('join-status', /The code was used/);
  await desk.click('Remove this device');
  await desk.until('WAITING');
  await desk.untilText('join-status', 'Removed. To come back, the client needs a new code.');
  await stage.page.getByRole('heading', { name: /not open|has ended/ }).waitFor();
  const renewed = await desk.page.locator('[data-part="join-status"]').innerText();
  await desk.click('New code');
  await desk.untilText('join-status', /^Say this code\. It works once, until /);
  assert.notEqual(renewed, await desk.text('join-status'));
});

test('reloading the join page loses nothing', async () => {
  const page = await scene.clientPage();
  await page.goto(await desk.page.locator('#join-link').inputValue());
  await page.getByLabel('Six numbers').fill('12');
  assert.equal(new URL(page.url()).hash, '');
  await page.reload();
  const code = await desk.text('join-code');
  await page.getByLabel('Six numbers').fill(code);
  await page.getByRole('button', { name: 'Join' }).click();
  await page.waitForURL('**/stage');
  stage = new Stage(page);
  await stage.skipCheck();
  await scene.admit();
  await desk.until('READY');
});

test('before a membership ends, those whom nobody else treats are handed over, while the desk is open', async () => {
  await administrator.goto('/members');
  await row(administrator, 'Runa Halvard').getByRole('link', { name: /^End membership/ }).click();
  await administrator.getByText('1 client has no other clinician:').waitFor();
  await accessible(administrator, 'the end of a membership');
  await administrator.getByRole('button', { name: 'End membership' }).click();
  await administrator.getByText(/./).first().waitFor();
  assert.equal(await administrator.locator('#leaves-error').count(), 1, 'nothing ends before this is answered');
  await administrator.getByRole('link', { name: 'Hand them over' }).click();
  await accessible(administrator, 'handing over');
  await administrator.getByLabel('Clinician for record 1').selectOption({ label: 'Marit Sund' });
  await administrator.getByRole('button', { name: 'Hand over record 1' }).click();
  await administrator.getByText('Record 1 is with Marit Sund now.').waitFor();
  await desk.untilText('messages', /^This desk is closed: the client was handed over/);
  await accessible(desk.page, 'a desk whose client was handed over');
  scene.excuse(desk.page, /WebSocket|40[134]/);
  await next.goto('/clients');
  await next.getByText(/Tove Lindqvist handed record 1 over to you from Runa Halvard\./).waitFor();
  await accessible(next, 'news');
  await next.getByRole('button', { name: 'I have read this' }).click();
  assert.equal(await next.getByText('handed record 1').count(), 0);
  await next.goto(`/sessions/${scene.session}/desk`);
  const taken = new Desk(next);
  await taken.sight();
  await taken.until('READY');
  await administrator.goto('/members');
  await row(administrator, 'Runa Halvard').getByRole('link', { name: /^End membership/ }).click();
  await administrator.getByRole('button', { name: 'End membership' }).click();
  await administrator.getByRole('heading', { name: 'Left the practice' }).waitFor();
  assert.equal((await desk.page.goto('/clients')).status(), 401, 'signed out');
});

test('a role that changes bites at once, at an open desk too', async () => {
  const taken = new Desk(next);
  await administrator.goto('/members');
  await row(administrator, 'Marit Sund').getByRole('link', { name: /^Roles/ }).click();
  await accessible(administrator, 'roles');
  await administrator.getByLabel('Clinician: treats clients').uncheck();
  await administrator.getByLabel('Lead: reviews the caseload, without clinical text').check();
  await administrator.getByRole('button', { name: 'Change roles' }).click();
  await administrator.getByText('1 client has no other clinician:').waitFor();
  await accessible(administrator, 'roles whose clients would be alone');
  await administrator.getByLabel(/^It cannot wait/).check();
  await administrator.getByRole('button', { name: 'Change roles' }).click();
  await administrator.waitForURL('**/members');
  await taken.untilText('messages', /^This desk is closed: .* or you are no clinician here any more/);
  scene.excuse(next, /WebSocket|40[134]/);
  await next.goto('/practice/caseload');
  await next.getByText(/Tove Lindqvist changed your roles\./).waitFor();
  assert.equal((await next.goto('/clients')).status(), 403);
  await lead.goto('/handover');
  await lead.getByText('1 client has no clinician.').waitFor();
});

test('a lost passkey is replaced by two, and the old ones are gone', async () => {
  const old = next.device;
  await administrator.goto('/members');
  await row(administrator, 'Marit Sund').getByRole('link', { name: /^Lost passkey/ }).click();
  await accessible(administrator, 'asking for a new passkey');
  await administrator.getByRole('button', { name: 'Ask for a new passkey' }).click();
  await administrator.getByText('you asked: somebody else has to agree').waitFor();
  assert.equal(await administrator.getByRole('button', { name: /^Agree/ }).count(), 0);
  await lead.goto('/practice/caseload');
  await lead.getByText(/says that Marit Sund has lost their passkeys/).waitFor();
  await lead.goto('/replacements');
  await accessible(lead, 'agreeing');
  await lead.getByRole('button', { name: /^Agree/ }).click();
  const link = await lead.getByLabel('Link').inputValue();
  const found = await scene.memberPage();
  await enrol(found, link, 'the new phone');
  await found.goto('/practice/caseload');
  assert.equal((await next.goto('/practice/caseload')).status(), 401, 'earlier sign-ins are over');
  await next.goto('/signin');
  await next.getByRole('button', { name: 'Sign in with a passkey' }).click();
  await next.getByText(/did not sign you in/).waitFor();
  assert.equal((await old.credentials()).length, 1, 'the device still has it: it opens nothing');
  await administrator.goto('/members');
  await administrator.getByText('the passkeys of Marit Sund were replaced by a new one').waitFor();
});
