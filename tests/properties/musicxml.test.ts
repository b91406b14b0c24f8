import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readMusicXml, writeMusicXml } from '../../src/musicxml/index.ts';
import { type Score, VOICES } from '../../src/score/score.ts';
import { damaged, damages, seedlings } from '../support/mutate.ts';
import { anyScore, music } from '../support/scores.ts';
import { isExpressible, survive } from '../support/survival.ts';

/** Fixed, so that a failure comes again; `npm run fuzz` takes other ones. */
const SEED = 20_240_229;

describe('damaged files', () => {
  it(`never make a door throw, and what is read is whole and comes back (seed ${SEED})`, () => {
    const seeds = seedlings();
    const fates = { refused: 0, reviewed: 0 };
    fc.assert(
      fc.property(damages(seeds), (damage) => {
        fates[survive(damaged(seeds, damage))]++;
      }),
      { seed: SEED, numRuns: process.env.WHOLE ? 2_500 : 800 },
    );
    // Both kinds must occur, or the mutations are too weak or too strong to show anything.
    expect(Math.min(fates.refused, fates.reviewed)).toBeGreaterThan(150);
  }, 120_000);
});

describe('any score', () => {
  it.each(['four staves', 'closed score'] as const)(
    `comes back from MusicXML as it was, on %s (seed ${SEED})`,
    (layout) => {
      fc.assert(
        fc.property(anyScore.filter(hasNotes).filter(isExpressible), (score) => {
          const reading = readMusicXml(new TextEncoder().encode(writeMusicXml(score, { layout })));
          if (!reading.ok) throw new Error(reading.message);
          expect(music(reading.score)).toEqual(music(score));
        }),
        { seed: SEED, numRuns: process.env.WHOLE ? 300 : 100 },
      );
    },
    60_000,
  );
});

/** A score without notes is refused: there is nothing in it to be read. */
function hasNotes(score: Score): boolean {
  return VOICES.some((voice) => score.voices[voice].some((event) => event.kind === 'note'));
}
