/** The closes of the open chorales on which our reading and the human one agree, for the table and for the bench. */
import { fifthsPlace } from '../../src/score/pitch.ts';
import { barAt } from '../../src/score/place.ts';
import { CROTCHET } from '../../src/score/time.ts';
import { phraseEnds } from '../../src/style/close.ts';
import type { Precedent } from '../../src/style/precedents.ts';
import type { HumanLabel } from './harmony-corpus.ts';
import type { StylePiece } from './style-corpus.ts';

export interface TakenClose {
  readonly tune: number;
  readonly close: Precedent;
}

export function closesOf(pieces: readonly StylePiece[]): TakenClose[] {
  return pieces.flatMap((piece) =>
    phraseEnds(piece.analysis).flatMap(({ phrase, tune, own }) => {
      const cadence = phrase.cadence === undefined ? undefined : piece.analysis.cadences[phrase.cadence];
      if (own === undefined || cadence === undefined) return [];
      const agreed = [cadence.approach, cadence.goal].every((index) => {
        const chord = piece.analysis.chords[index]!;
        const human = labelAt(piece.labels, chord.at / CROTCHET);
        return human !== undefined && human.root === fifthsPlace(chord.root);
      });
      const human = labelAt(piece.labels, cadence.at / CROTCHET);
      const sameKey =
        human?.tonic === fifthsPlace(cadence.key.tonic) &&
        human.mode === (cadence.key.mode === 'major' ? 0 : 1);
      const bar = barAt(piece.analysis.texture.score, phrase.until - 1).number;
      const close = { ...tune, ...own, chorale: String(Number(piece.name)), bar };
      return agreed && sameKey ? [{ tune: piece.tune, close }] : [];
    }),
  );
}

function labelAt(labels: readonly HumanLabel[], at: number): HumanLabel | undefined {
  return labels.find(({ from, until }) => from <= at && at < until);
}
