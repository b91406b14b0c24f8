#!/usr/bin/env node
/** Starts the command line: from its bundle, or where none can be kept, by compiling the sources as they are loaded. */
import { fileURLToPath, pathToFileURL } from 'node:url';
import { bundleOf } from './bundle.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const bundle = await bundleOf(root);
if (bundle !== undefined) await import(pathToFileURL(`${bundle}/main.js`).href);
else {
  const { register } = await import('tsx/esm/api');
  register();
  await import('./main.ts');
}
