// A set under way, and what came of it.

import assert from 'node:assert/strict';
import { fresh, motionOf, sampled, stillFor, underWay, watchDot } from './motion.mjs';
import { written } from './record.mjs';

/** A client who has checked the device is in the meeting, with sets long enough for whatever is done meanwhile. @returns the tab, see `launchTab` */
export async function inTheMeeting(scene) {
  const tab = await scene.clientTab();
  await watchDot(tab.page);
  await scene.join(tab.page);
  await scene.stage.check();
  await scene.admit();
  await scene.desk.cycles(60);
  return tab;
}

/** The next set, under way. */
export async function run(scene) {
  const { page } = scene.stage;
  await scene.settle();
  await fresh(page);
  await scene.desk.start();
  await underWay(page);
}

/** What the record says ended the last set, once the page has told it. */
export async function lastEnding(scene, expected) {
  const query = `SELECT ending FROM set_evidence JOIN stimulus_set s ON s.id = set_id WHERE s.session_id = '${scene.session}' AND kind = 'rested'
    AND s.number = (SELECT max(number) FROM stimulus_set WHERE session_id = '${scene.session}')`;
  assert.deepEqual(await written(() => scene.house.rows(query), (rows) => rows.length > 0), [{ ending: expected }]);
}

/** Nothing moves for two seconds, and the desk is not running. */
export async function staysAtRest(scene) {
  const { page } = scene.stage;
  await fresh(page);
  await stillFor(page, 2000);
  assert.equal(motionOf((await sampled(page)).samples), undefined);
  assert.ok(!['RUNNING', 'STARTING', 'EASING'].includes(await scene.desk.word()));
}
