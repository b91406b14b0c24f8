/** How far the reading may be believed about itself: sure and unsure stretches beside the human reading. */
import type { Analysis, Chord, Key } from '../../src/harmony/analysis.ts';
import { sameKey } from '../../src/harmony/key.ts';
import { isSureOfKey, secondOf } from '../../src/harmony/questions/seconds.ts';
import { fifthsPlace } from '../../src/score/pitch.ts';
import { CROTCHET } from '../../src/score/time.ts';
import type { HumanLabel, Piece } from './harmony-corpus.ts';

/** Crotchets told with some likelihood, and of them those in the human key, first or second. */
interface Told {
  all: number;
  first: number;
  second: number;
}

const nothing = (): Told => ({ all: 0, first: 0, second: 0 });

/** From how likely on each row of the table counts. */
const ROWS = [0, 0.5, 0.6, 0.7, 0.8, 0.9, 0.95, 0.99] as const;

/** Prints how often what is told as sure and unsure is right, on chorales read with weights learnt from other tunes. */
export function printCalibration(pieces: readonly Piece[], analyses: ReadonlyMap<string, Analysis>): void {
  const rows = ROWS.map(nothing);
  const [clear, doubted, chords, sure] = [nothing(), nothing(), nothing(), nothing()];
  let stretches = 0;
  let doubtfulChords = 0;
  for (const { name, labels } of pieces) {
    const analysis = analyses.get(name)!;
    stretches += analysis.seconds.filter((second) => !inOneKey(analysis, second)).length;
    for (const chord of analysis.chords) {
      const second = secondOf(analysis, chord);
      const otherKey = second !== undefined && !sameKey(second.key, chord.key);
      if (second !== undefined && !otherKey) doubtfulChords++;
      for (const { human, length } of beside(labels, chord)) {
        const first = isKey(human, chord.key);
        const other = otherKey && isKey(human, second.key);
        count(rows[ROWS.findLastIndex((least) => chord.sure >= least)]!, length, first, other);
        if (isSureOfKey(chord)) count(sure, length, first, other);
        count(otherKey ? doubted : clear, length, first, other);
        if (second !== undefined && !otherKey) count(chords, length, isChord(human, chord), false);
      }
    }
  }
  const whole = clear.all + doubted.all;
  console.log('\nHow likely the key is said to be, and how often people read it so, per cent of the time');
  for (const [i, { all, first }] of rows.entries())
    console.log(
      `  from ${ROWS[i]!.toFixed(2)}   ${share(all, whole)} of the time, right in ${share(first, all)}`,
    );
  console.log(
    `  told without reserve: ${share(sure.all, whole)} of the time, right in ${share(sure.first, sure.all)}`,
  );
  console.log('\nSecond readings');
  console.log(
    `  keys in doubt: ${(stretches / pieces.length).toFixed(1)} stretches a chorale, ${share(doubted.all, whole)} of the time`,
  );
  console.log(
    `    the first is right in ${share(doubted.first, doubted.all)}, the second in ${share(doubted.second, doubted.all)}`,
  );
  console.log(`  where no second key is told: right in ${share(clear.first, clear.all)}`);
  console.log(
    `  the human key is among those told in ${share(clear.first + doubted.first + doubted.second, whole)}`,
  );
  console.log(
    `  chords in doubt: ${(doubtfulChords / pieces.length).toFixed(1)} a chorale; the first is right in ${share(chords.first, chords.all)}`,
  );
}

function inOneKey(analysis: Analysis, { key, chords }: Analysis['seconds'][number]): boolean {
  return sameKey(analysis.chords[chords[0]!.index]!.key, key);
}

function count(told: Told, length: number, first: boolean, second: boolean): void {
  told.all += length;
  if (first) told.first += length;
  else if (second) told.second += length;
}

/** The human labels that hold during a chord, each with the crotchets it shares with it. */
function beside(
  labels: readonly HumanLabel[],
  { at, until }: Chord,
): { human: HumanLabel; length: number }[] {
  return labels.flatMap((human) => {
    const length = Math.min(human.until, until / CROTCHET) - Math.max(human.from, at / CROTCHET);
    return length > 0 ? [{ human, length }] : [];
  });
}

function isKey({ tonic, mode }: HumanLabel, key: Key): boolean {
  return fifthsPlace(key.tonic) === tonic && (key.mode === 'minor') === (mode === 1);
}

/** Root, quality, seventh or not, and bass. */
function isChord({ root, bass, seventh, quality }: HumanLabel, chord: Chord): boolean {
  return (
    fifthsPlace(chord.root) === root &&
    chord.quality === quality &&
    (chord.roman.seventh !== undefined) === seventh &&
    fifthsPlace(chord.bass) === bass
  );
}

function share(part: number, whole: number): string {
  return whole === 0 ? 'none' : `${((100 * part) / whole).toFixed(1)} %`;
}
