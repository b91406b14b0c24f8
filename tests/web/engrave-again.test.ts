/** What is planned again when a note is written: what is new about it, and nothing for the length of the piece. */
import { describe, expect, test } from 'vitest';
import { readNotation } from '../../src/notation/index.ts';
import { CHORALE } from '../../src/profiles/profile.ts';
import { reviewScore } from '../../src/review/review.ts';
import type { Step } from '../../src/score/pitch.ts';
import { type Score, VOICES } from '../../src/score/score.ts';
import { CROTCHET } from '../../src/score/time.ts';
import { write } from '../../src/writing/write.ts';
import { ALL_LAYERS, marksOf } from '../../web/engrave/input.ts';
import { createMarking } from '../../web/engrave/marking.ts';
import { type Planned, planScore } from '../../web/engrave/plan.ts';
import { arrangeSystems, type SystemPlan } from '../../web/engrave/systems.ts';
import { beginHistory, changed, type History, workFromScore } from '../../web/state/work.ts';
import { SCORES } from '../browser/engrave-harness/scores.ts';

/** Our own bars over and over, some of them with accidentals and ties. */
const long = (bars: number): Score => {
  const lines = [
    'S: G4 A4 B4 C5 | D5 C#5 D5*2! |',
    'A: D4 D4 D4*2_ | D4 E4 F#4*2 |',
    'T: B3 A3 G3 G3 | A3*4 |',
    'B: G3 F#3 G3 E3 | F3 A2 D3*2 |',
  ].join('\n');
  return readNotation(
    `key: G major\nmetre: 4/4\n\n${Array.from({ length: bars / 2 }, () => lines).join('\n\n')}\n`,
  ).score;
};

/** Writes a crotchet as the page does: what did not change is taken over from the score before. */
function written(
  history: History,
  bar: number,
  at: { beat: number; voice: (typeof VOICES)[number]; step: Step },
) {
  const { score } = history.now;
  const made = write(score, at.voice, score.bars[bar]!.at + at.beat * CROTCHET, CROTCHET, {
    kind: 'note',
    pitch: { step: at.step, alteration: at.beat % 2 === 0 ? 0 : 1, octave: at.voice === 'S' ? 5 : 3 },
  });
  if (made.kind === 'refused') throw new Error(made.said);
  return changed(history, workFromScore(made.score), 'stave', 0);
}

const arranged = (
  { bars }: Planned,
  marking: ReturnType<typeof createMarking>,
  before?: readonly SystemPlan[],
) =>
  arrangeSystems(
    bars,
    { width: 900, labels: marking.rooms, lyrics: 0, letters: marking.letters, settled: true },
    before,
  );

describe('a note written in a long piece', () => {
  test.each([16, 128])('has its own bar planned again, and at most the next: %i bars', (bars) => {
    let history = beginHistory(workFromScore(long(bars)));
    // The marks of the first bars will do.
    const marks = marksOf(reviewScore(long(8), CHORALE));
    const marking = createMarking({ marks, layers: ALL_LAYERS }, (text) => text.length * 7);
    let planned = planScore(history.now.score);
    let systems = arranged(planned, marking);
    for (const [beat, step] of (['E', 'F', 'G', 'A'] as const).entries()) {
      history = written(history, 5, { beat, voice: beat === 2 ? 'T' : 'S', step });
      const next = planScore(history.now.score, planned);
      const again = arranged(next, marking, systems);
      const fresh = next.bars.flatMap((bar, i) => (bar === planned.bars[i] ? [] : [i]));
      expect(fresh).toContain(5);
      expect(fresh.every((i) => i === 5 || i === 6)).toBe(true);
      expect(again.filter((system, i) => system !== systems[i]).length).toBeLessThanOrEqual(2);
      // The score's lists that nothing was changed in are the very lists of before.
      expect(history.now.score.bars).toBe(history.past.at(-1)!.score.bars);
      expect(history.now.score.voices.A).toBe(history.past.at(-1)!.score.voices.A);
      [planned, systems] = [next, again];
    }
  });

  test.each(Object.keys(SCORES))('is planned as if the whole were planned anew: %s', (name) => {
    let history = beginHistory(workFromScore(readNotation(SCORES[name]!).score));
    let planned = planScore(history.now.score);
    const marking = createMarking(
      {
        marks: marksOf(reviewScore(history.now.score, CHORALE)),
        layers: { ...ALL_LAYERS, figuredBass: true },
      },
      (text) => text.length * 7,
    );
    let systems = arranged(planned, marking);
    for (let i = 0; i < 12; i++) {
      const bar = (i * 5) % history.now.score.bars.length;
      const voice = VOICES[i % VOICES.length]!;
      history = written(history, bar, { beat: i % 2, voice, step: (['C', 'F', 'B'] as const)[i % 3]! });
      planned = planScore(history.now.score, planned);
      const before = systems;
      systems = arranged(planned, marking, before);
      expect(planned.bars).toEqual(planScore(history.now.score).bars);
      const anew = createMarking(
        { marks: marking.settings.marks, layers: marking.settings.layers },
        (text) => text.length * 7,
      );
      expect(systems).toEqual(arranged(planScore(history.now.score), anew, before));
    }
  });
});
