// Load beside what is measured.

import { spawn } from 'node:child_process';
import { availableParallelism } from 'node:os';

/** Does `act` while a process on each core never rests. */
export async function besideBusyCores(act) {
  const busy = Array.from({ length: availableParallelism() }, () => spawn(process.execPath, ['-e', 'for (;;);']));
  try {
    return await act();
  } finally {
    for (const one of busy) one.kill();
  }
}
