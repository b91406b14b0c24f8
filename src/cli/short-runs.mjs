/**
 * A process that reviews one script, or a few dozen, spends a third of its time having its code optimised for a run of
 * hours. The V8 of Node 20 takes two flags against that; later ones have a quick compiler between, and other flags.
 */
import { setFlagsFromString } from 'node:v8';

const KNOWN = process.versions.v8.startsWith('11.');

/** For one script: a function is optimised when it has run several times as long as is usual. */
export function compileForOneRun() {
  if (KNOWN) setFlagsFromString('--interrupt-budget=500000');
}

/** For some dozens or hundreds: each function is compiled plainly at its first call besides. For all threads of the process. */
export function compileForShortRuns() {
  compileForOneRun();
  if (KNOWN) setFlagsFromString('--always-sparkplug');
}
