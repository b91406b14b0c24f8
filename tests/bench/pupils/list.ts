/** The sections of `npm run bench:pupils`, in the order in which they are printed. */
import { FERMATAS_REMOVED } from './fermatas-removed.ts';
import type { Section } from './section.ts';
import { THINNED } from './thinned.ts';

export const SECTIONS: readonly Section[] = [FERMATAS_REMOVED, THINNED];
