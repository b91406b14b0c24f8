/** Every rule, in the order in which they are listed to people: by family. Adding a rule touches its file and this list. */
import type { Rule } from './rule.ts';

export const RULES: readonly Rule[] = [];
