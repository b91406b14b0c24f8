#!/usr/bin/env node
/** Starts the command line: from its bundle, or where none can be kept, by compiling the sources as they are loaded. */
import nodeModule from 'node:module';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { bundleOf } from './bundle.mjs';
import { compileForOneRun } from './short-runs.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
compileForOneRun();
const bundle = await bundleOf(root);
if (bundle !== undefined) {
  // From Node 22.1 on, what was compiled is kept beside the bundle; in workers too.
  nodeModule.enableCompileCache?.(`${bundle}/compiled`);
  await import(pathToFileURL(`${bundle}/main.js`).href);
} else {
  const { register } = await import('tsx/esm/api');
  register();
  await import('./main.ts');
}
