// Tests that are the steps of one story.

import { test } from 'node:test';

/**
 * A `test` for the steps of one story, each of which stands on the one before: once one has failed those after it are skipped and say
 * so, since what they would find is no news of theirs.
 */
export function story() {
  let failed;
  return (name, act) => test(name, async (t) => {
    if (failed !== undefined) return t.skip(`it stands on "${failed}"`);
    failed = name;
    await act(t);
    failed = undefined;
  });
}
