/** Chords and cadences laid out by bar, as rows of plain text. */
import type { Chord, SecondReading } from '../harmony/analysis.ts';
import { type LabelStyle, printKey } from '../harmony/words/labels.ts';
import { numeralStyleOf, secondWords } from '../harmony/words/seconds.ts';
import { cadenceWords } from '../harmony/words/words.ts';
import type { Review } from '../review/review.ts';
import { barAt, placeAt, placeIn, printBar, printBeat, printPlace } from '../score/place.ts';
import { withSigns } from './sentences.ts';

export interface BarRow {
  readonly bar: string;
  /** The key in which the bar's first chord stands, where it is new. */
  readonly keys: string;
  /** `1 I · 2 V65 · E minor: 3½ i`: each chord after its beat, a key that begins within the bar where it begins. */
  readonly chords: string;
}

/** One row for each bar in which a chord begins. `label` writes a chord. */
export function chordsByBar(review: Review, label: (chord: Chord) => string): BarRow[] {
  const rows: { bar: string; keys: string; chords: string[]; index: number }[] = [];
  let key = '';
  for (const chord of review.analysis.chords) {
    const bar = barAt(review.score, chord.at);
    let row = rows.at(-1);
    if (row?.index !== bar.index) {
      row = { bar: bar.number === '0' ? 'upbeat' : bar.number, keys: '', chords: [], index: bar.index };
      rows.push(row);
    }
    const here = printKey(chord.key);
    const begins = here !== key && row.chords.length > 0 ? `${here}: ` : '';
    if (here !== key && begins === '') row.keys = here;
    key = here;
    // No-break spaces keep a beat and its chord on one line.
    row.chords.push(
      `${begins}${printBeat(placeIn(bar, chord.at)).replaceAll(' ', '\u00a0')}\u00a0${label(chord)}`,
    );
  }
  return rows.map(({ bar, keys, chords }) => ({ bar, keys, chords: chords.join(' · ') }));
}

/** `bar 4, beat 3: perfect cadence in G major (also called perfect authentic)`, one for each cadence. */
export function cadencesByBar(review: Review): string[] {
  return review.analysis.cadences.map((cadence) => {
    const place = printPlace(placeIn(barAt(review.score, cadence.at), cadence.at));
    const { name, otherName } = cadenceWords(cadence);
    const other = name.startsWith(otherName) ? '' : ` (also called ${otherName})`;
    return `${place}: ${name} in ${withSigns(printKey(cadence.key))}${other}`;
  });
}

/** `also F major: ii6–V–I until bar 6`: how else a passage may be heard. */
export function secondInWords({ analysis, score }: Review, second: SecondReading, style: LabelStyle): string {
  const [first, last] = [second.chords[0]!, second.chords.at(-1)!].map(
    ({ index }) => analysis.chords[index]!,
  );
  const until = barAt(score, last!.at);
  const end = until === barAt(score, first!.at) ? '' : ` until ${printBar(until.number)}`;
  return withSigns(`${secondWords(analysis, second, numeralStyleOf(style))}${end}`);
}

/** `bar 4, beat 3: also F major: ii6–V–I until bar 6`, one for each second reading. */
export function secondsByBar(review: Review, style: LabelStyle): string[] {
  const { chords, seconds } = review.analysis;
  return seconds.map((second) => {
    const place = printPlace(placeAt(review.score, chords[second.chords[0]!.index]!.at));
    return `${place}: ${secondInWords(review, second, style)}`;
  });
}
