/** Weak scripts as an average pupil writes them, from `../shared/pupils/scripts.json`: how much is said of each. */
import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import * as z from 'zod';
import { readNotation } from '../../../src/notation/index.ts';
import { CHORALE } from '../../../src/profiles/profile.ts';
import { reviewScore } from '../../../src/review/review.ts';
import type { Section } from './section.ts';

const FILE = fileURLToPath(new URL('../../../../shared/pupils/scripts.json', import.meta.url));
const scriptsSchema = z.array(z.object({ id: z.string(), text: z.string() }));

export const SCRIPTS: Section = {
  title: 'Weak scripts: what is said of each',
  rows: () => {
    if (!existsSync(FILE)) return [];
    return scriptsSchema.parse(JSON.parse(readFileSync(FILE, 'utf8'))).map(({ id, text }) => {
      const { score } = readNotation(text);
      if (score === undefined) throw new Error(`${id} cannot be read.`);
      const { findings, analysis } = reviewScore(score, CHORALE);
      const count = (severity: string) => findings.filter((f) => f.severity === severity).length;
      return {
        material: id,
        figure: `${count('fault')} faults, ${count('query')} queries, ${count('remark')} remarks; ${analysis.cadences.length} cadences at ${analysis.phrases.length} phrase ends`,
        target: '',
      };
    });
  },
};
