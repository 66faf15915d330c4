// The house that the other tests stand on, and the scripts of deploy/ that keep a practice's records: on a real
// portal and a real Postgres, without a browser.

import assert from 'node:assert/strict';
import { execFile } from 'node:child_process';
import { appendFile, copyFile, mkdir, readdir, writeFile } from 'node:fs/promises';
import { after, before, test } from 'node:test';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { PROGRAMS, startHouse } from './support/harness.mjs';

const run = promisify(execFile);
const DEPLOY = fileURLToPath(new URL('../../deploy/', import.meta.url));
const alive = (house) => fetch(`${house.origin}/livez`).then((response) => response.status, () => 'nobody');

let house;
before(async () => { house = await startHouse({ env: { LEEWARD_LASTING: '1' } }); });
after(() => house?.stop());

test('the roles are bound by the policies, and Postgres tells no parameters', async () => {
  const roles = await house.rows(`SELECT rolname, rolsuper, rolbypassrls, rolcreaterole, rolcreatedb
    FROM pg_roles WHERE rolname LIKE 'leeward%' ORDER BY 1`);
  const bound = { rolsuper: false, rolbypassrls: false, rolcreaterole: false, rolcreatedb: false };
  assert.deepEqual(roles, ['leeward_app', 'leeward_owner', 'leeward_signin'].map((rolname) => ({ rolname, ...bound })));
  const settings = await house.rows(`SELECT name, setting FROM pg_settings WHERE name IN ('listen_addresses', 'fsync',
    'synchronous_commit', 'data_checksums', 'log_statement', 'log_parameter_max_length', 'log_parameter_max_length_on_error')`);
  assert.deepEqual(Object.fromEntries(settings.map(({ name, setting }) => [name, setting])), {
    listen_addresses: '', fsync: 'on', synchronous_commit: 'on', data_checksums: 'on',
    log_statement: 'none', log_parameter_max_length: '0', log_parameter_max_length_on_error: '0',
  });
});

test('the portal stops, is killed, and comes back at the same address', async () => {
  assert.equal(await alive(house), 200);
  await house.tell('portal-stop');
  assert.equal(await alive(house), 'nobody');
  await house.tell('portal-start');
  await house.tell('portal-kill');
  assert.equal(await alive(house), 'nobody');
  await house.tell('portal-start');
  assert.equal(await alive(house), 200);
});

test('the portal lives through a restart of the database', async () => {
  await house.tell('database-stop');
  assert.equal(await alive(house), 200);
  await house.tell('database-start');
  assert.equal((await fetch(`${house.origin}/readyz`)).status, 200);
});

test('a backup comes back whole, and only into an empty database, undamaged and with its key', async () => {
  const { databaseUrl, superuserUrl, ownerUrl, keyFile, folder, psql } = house.facts;
  const target = superuserUrl.replace('/leeward?', '/restored?');
  const backups = `${folder}/backups`;
  await mkdir(backups);
  await run(psql, ['-Xq', '-c', 'CREATE DATABASE restored OWNER leeward_owner', superuserUrl]);
  await run(psql, ['-Xq', '-c', "INSERT INTO access.member VALUES (gen_random_uuid(), 'Somebody', '{lead}', now())", superuserUrl]);

  await assert.rejects(backUp(backups, ownerUrl, keyFile), /row-level security/, 'a role that sees only some rows');
  assert.deepEqual(await readdir(backups), []);
  const dump = await backUp(backups, superuserUrl, keyFile);

  await writeFile(`${folder}/other-key`, `${'0'.repeat(64)}\n`);
  await assert.rejects(restore(dump, target, `${folder}/other-key`), /is not the key of this backup/);
  await copyFile(dump, `${backups}/damaged.dump`);
  await copyFile(dump.replace(/dump$/, 'sums'), `${backups}/damaged.sums`);
  await appendFile(`${backups}/damaged.dump`, 'x');
  await assert.rejects(restore(`${backups}/damaged.dump`, target, keyFile), /damaged or altered/);
  await assert.rejects(restore(dump, superuserUrl, keyFile), /holds \d+ tables already/);

  await restore(dump, target, keyFile);
  const restored = await contents(target);
  assert.ok(restored.some((line) => line.includes('Somebody')));
  assert.deepEqual(restored, await contents(superuserUrl));

  // Rights on a database are not in its dump, and the portal serves on nothing where others may make objects.
  const may = "SELECT has_database_privilege(rolname, current_database(), 'TEMPORARY') FROM pg_roles WHERE rolname IN ('leeward_app', 'leeward_signin')";
  assert.equal((await run(psql, ['-XAtq', '-c', may, target])).stdout, 'f\nf\n');
  const env = {
    ...process.env,
    LEEWARD_DATABASE_URL: databaseUrl.replace('/leeward?', '/restored?'),
    LEEWARD_KEY_FILE: keyFile,
    LEEWARD_ORIGIN: 'http://localhost:1',
  };
  await assert.rejects(run(`${PROGRAMS}/leeward`, ['demo', 'links'], { env }), /Has demo-seed seeded this database/, 'it is fit to be served');
  await run(psql, ['-Xq', '-c', 'GRANT TEMPORARY ON DATABASE restored TO PUBLIC', target]);
  await assert.rejects(run(`${PROGRAMS}/leeward`, ['demo', 'links'], { env }), /REVOKE TEMPORARY ON DATABASE restored FROM PUBLIC/);
});

test('steps are summed up by families, each against its budget, and one over its budget says so and fails nothing', async () => {
  const script = `ROOT=$1; . "$ROOT/deploy/lib/common.sh"; . "$ROOT/deploy/lib/steps.sh"
    budget quick 100; budget slow 0
    check quick "the one" true; check slow "the other" sleep 1; check quick "a third" true; finish`;
  const { stdout } = await run('bash', ['-c', script, 'steps', fileURLToPath(new URL('../../', import.meta.url))]);
  const budgets = stdout.slice(stdout.indexOf('=== Budgets'));
  assert.match(budgets, /^quick +\d+ s of +100 s$/m);
  assert.match(budgets, /^slow +[1-9]\d* s of +0 s, over by [1-9]\d* s$/m);
  assert.match(budgets, /^all +[1-9]\d* s of +100 s$/m);
  assert.match(budgets, /3 passed, 0 failed/);
});

async function backUp(folder, url, key) {
  const env = { ...process.env, LEEWARD_BACKUP_URL: url, LEEWARD_KEY_FILE: key };
  return (await run(`${DEPLOY}backup`, [folder], { env })).stdout.trim();
}

function restore(dump, url, key) {
  return run(`${DEPLOY}restore`, [dump], { env: { ...process.env, LEEWARD_RESTORE_URL: url, LEEWARD_KEY_FILE: key } });
}

/** A database as SQL, less the two lines in which recent versions of pg_dump write a random word. */
async function contents(url) {
  const { stdout } = await run('pg_dump', ['-d', url], { maxBuffer: 64 * 1024 * 1024 });
  return stdout.split('\n').filter((line) => !/^\\(un)?restrict /.test(line));
}
