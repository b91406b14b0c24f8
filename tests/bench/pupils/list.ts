/** The sections of `npm run bench:pupils`, in the order in which they are printed. */
import { ANSWERED } from './answered.ts';
import { CASES } from './cases.ts';
import { FERMATAS_REMOVED } from './fermatas-removed.ts';
import { HYMNS } from './hymns.ts';
import { IMITATORS } from './imitators.ts';
import { PLAIN } from './plain.ts';
import { SCRIPTS } from './scripts.ts';
import type { Section } from './section.ts';
import { SWEEP } from './sweep.ts';
import { THINNED } from './thinned.ts';
import { WHOLE } from './whole.ts';

export const SECTIONS: readonly Section[] = [
  FERMATAS_REMOVED,
  HYMNS,
  THINNED,
  PLAIN,
  ANSWERED,
  SWEEP,
  CASES,
  SCRIPTS,
  WHOLE,
  IMITATORS,
];
