/** The network's parameters as text, both ways: one character each, and a line for each block that begins with its scale. */
import { BLOCKS, PARAMETERS } from './network.ts';

/** Characters that need no escape in a template: a parameter is one of so many steps. */
const STEPS = Array.from({ length: 94 }, (_, i) => String.fromCharCode(33 + i))
  .filter((sign) => !['\\', '`', '$'].includes(sign))
  .join('');
const MIDDLE = (STEPS.length - 1) / 2;

/** By code of a character: its step, counted from the middle. */
const STEP_OF = new Int8Array(128);
for (let i = 0; i < STEPS.length; i++) STEP_OF[STEPS.charCodeAt(i)] = i - MIDDLE;

/** Prints parameters, each rounded to a step of its block. */
export function printParameters(parameters: Float64Array): string {
  return BLOCKS.map(({ from, size }) => {
    const block = parameters.subarray(from, from + size);
    const scale = block.reduce((most, value) => Math.max(most, Math.abs(value)), 0) / MIDDLE;
    const signs = Array.from(block, (value) => STEPS[Math.round(scale === 0 ? 0 : value / scale) + MIDDLE]!);
    return `${scale.toPrecision(5)} ${signs.join('')}`;
  }).join('\n');
}

/** @throws RangeError where the text was written for another network. */
export function parseParameters(text: string): Float64Array {
  const lines = text.trim().split('\n');
  const parameters = new Float64Array(PARAMETERS);
  for (const [b, { from, size }] of BLOCKS.entries()) {
    const [scale = '', signs = ''] = (lines[b] ?? '').split(' ');
    if (signs.length !== size)
      throw new RangeError(`Block ${b} has ${signs.length} parameters, not ${size}.`);
    const step = Number(scale);
    for (let i = 0; i < size; i++) parameters[from + i] = STEP_OF[signs.charCodeAt(i)]! * step;
  }
  return parameters;
}
