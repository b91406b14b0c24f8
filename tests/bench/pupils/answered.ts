/**
 * Questions of chords told on half-finished chorales which the voice taken out answers: the same rule says nothing
 * about that place of the whole chorale.
 */
import { CHORALE } from '../../../src/profiles/profile.ts';
import { reviewScore } from '../../../src/review/review.ts';
import { endOf, type VoiceName } from '../../../src/score/score.ts';
import { crotchets } from '../../../src/score/time.ts';
import type { Bench, Row, Section } from './section.ts';
import { withoutVoices } from './thin.ts';

/**
 * What members a chord has, in which position and how often, and what its tendency notes do; whole or not, a voice more
 * can change it.
 */
const ASKED: readonly string[] = [
  'missing-third',
  'missing-root',
  'incomplete-last-chord',
  'diminished-root-position',
  'doubled-third',
  'doubled-leading-note',
  'doubled-seventh',
  'doubled-diminished-root',
  'stray-six-four',
  'unresolved-seventh',
  'unresolved-leading-note',
  'minor-scale-degrees',
  'missing-predominant',
  'unexplained-dissonance',
];
const MISSING: readonly (readonly VoiceName[])[] = [['T'], ['A'], ['A', 'T']];

export const ANSWERED: Section = {
  title: 'Half-finished work: questions told per 100 beats that the missing voices answer',
  rows: ({ pieces }) => (pieces.length === 0 ? [] : MISSING.map((voices) => told(pieces, voices))),
};

function told(pieces: Bench['pieces'], voices: readonly VoiceName[]): Row {
  const byRule = new Map<string, number>();
  let [beats, count] = [0, 0];
  for (const { texture } of pieces) {
    const { score } = texture;
    const whole = reviewScore(score, CHORALE).findings;
    beats += crotchets(endOf(score));
    for (const { rule, from, until } of reviewScore(withoutVoices(score, voices), CHORALE).findings) {
      const stays = whole.some((other) => other.rule === rule && other.from < until && other.until > from);
      if (stays || !ASKED.includes(rule.id)) continue;
      count++;
      byRule.set(rule.id, (byRule.get(rule.id) ?? 0) + 1);
    }
  }
  const which = [...byRule].map(([id, times]) => `${id} ${times}`).join(', ');
  return {
    material: `without ${voices.join(' and ')}`,
    figure: `${((100 * count) / beats).toFixed(2)}${which === '' ? '' : ` (${which})`}`,
    target: 'none',
  };
}
