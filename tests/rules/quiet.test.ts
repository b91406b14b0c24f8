/**
 * A guard for the bench's second half: on a fixed set of open chorales the rules stay about as quiet as they are. The
 * figures themselves, for all the chorales, come from `npm run bench:rules`.
 */
import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { openScore } from '../../src/open/open.ts';
import { CHORALE } from '../../src/profiles/profile.ts';
import { reviewScore } from '../../src/review/review.ts';
import { endOf } from '../../src/score/score.ts';
import { crotchets } from '../../src/score/time.ts';

const FOLDER = fileURLToPath(new URL('../../../shared/corpus/chorales/', import.meta.url));
const SET = ['001', '007', '020', '028', '036', '044', '052', '060', '074', '084', '099', '110'].concat([
  '123',
  '135',
  '148',
  '158',
  '174',
  '187',
  '210',
  '234',
  '250',
  '267',
  '296',
  '330',
  '351',
  '371',
]);
const there = SET.filter((number) => existsSync(`${FOLDER}${number}.mxl`));
/** Per hundred beats (crotchets): what the whole set of rules may say here, with a small margin. */
const MOST = { fault: 1.25, query: 3.2 } as const;

describe.skipIf(there.length === 0)('on the open chorales (skipped without ../shared/corpus)', () => {
  it('speaks of few faults and queries, and of hardly any consecutives', () => {
    const counts = { fault: 0, query: 0, remark: 0 };
    let beats = 0;
    let consecutives = 0;
    for (const number of there) {
      const opened = openScore(readFileSync(`${FOLDER}${number}.mxl`));
      expect(opened.ok, number).toBe(true);
      if (!opened.ok) continue;
      beats += crotchets(endOf(opened.score));
      for (const { severity, rule } of reviewScore(opened.score, CHORALE).findings) {
        counts[severity]++;
        if (severity === 'fault' && rule.family === 'consecutives') consecutives++;
      }
    }
    expect((100 * counts.fault) / beats).toBeLessThanOrEqual(MOST.fault);
    expect((100 * counts.query) / beats).toBeLessThanOrEqual(MOST.query);
    // Dahn (2016) counts 46 of every kind in about 410 chorales: one in nine.
    expect(consecutives).toBeLessThanOrEqual(Math.ceil(there.length / 9) + 4);
  });
});
