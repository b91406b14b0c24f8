import { describe, expect, it } from 'vitest';
import { CHORALE } from '../../src/profiles/profile.ts';
import { hintsFor } from '../../src/review/hints.ts';
import { reviewScore } from '../../src/review/review.ts';
import { RULES } from '../../src/rules/list.ts';
import { printPitch } from '../../src/score/pitch.ts';
import { placeAt, printPlace } from '../../src/score/place.ts';
import { VOICE_WORDS, VOICES, type VoiceName } from '../../src/score/score.ts';
import { scoreOf } from '../support/rules.ts';

const EXAMPLES = RULES.flatMap((rule) =>
  rule.examples.wrong.map(({ text, figures }, index) => {
    const score = scoreOf(text);
    return [`${rule.id} ${index + 1}`, figures === undefined ? score : { ...score, figures }] as const;
  }),
);

const told = (score: ReturnType<typeof scoreOf>, given?: readonly VoiceName[]) => {
  const { findings, analysis } = reviewScore(score, CHORALE);
  return findings.map((finding) => ({ finding, analysis, hints: hintsFor(analysis, finding, given) }));
};

describe.each(EXAMPLES)('the hints about the wrong example of %s', (_name, score) => {
  const all = told(score);

  it('begin with the place and its voices', () => {
    for (const { finding, hints } of all) {
      const place = printPlace(placeAt(score, finding.from));
      expect(hints[0].toLowerCase()).toContain(place.toLowerCase());
      for (const voice of finding.voices) expect(hints[0]).toContain(VOICE_WORDS[voice]);
      expect(hints.every((hint) => /^["'“‘A-Z0-9].*[.!?][)”’]?$/s.test(hint))).toBe(true);
    }
  });

  it('name no pitch that is not written', () => {
    const written = new Set(
      VOICES.flatMap((voice) =>
        score.voices[voice].flatMap((event) => (event.kind === 'note' ? [printPitch(event.pitch)] : [])),
      ),
    );
    for (const { hints } of all)
      for (const [pitch] of hints.join(' ').matchAll(/\b[A-G](?:#{1,2}|b{1,2})?\d\b/g))
        expect(written).toContain(pitch);
  });

  it('never let a given voice move', () => {
    for (const given of [['S'], ['S', 'B'], ['S', 'A', 'T', 'B']] as const)
      for (const { hints } of told(score, given))
        for (const voice of given)
          expect(hints[1]).not.toContain(`Free to move here is the ${VOICE_WORDS[voice]}`);
  });
});

it('tell two places against one rule apart', () => {
  const twice = `key: C major
metre: 4/4
S: C5 B4 C5*2 | C5 D5 C5*2! |
A: G4 G4 A4*2 | A4 G4 E4*2! |
T: E4 D4 E4*2 | E4 D4 C4*2! |
B: C3 G3 A3*2 | A3 G3 C3*2! |`;
  const fifths = told(scoreOf(twice)).filter(({ finding }) => finding.rule.id === 'parallel-fifths');
  expect(fifths.length).toBeGreaterThan(1);
  expect(new Set(fifths.map(({ hints }) => hints[0])).size).toBe(fifths.length);
});
