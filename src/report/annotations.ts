/** What a review writes into a score that is handed back: numbered, coloured findings, numerals, keys and cadences. */
import { capitalised, listed } from '../english/words.ts';
import { chordLabel, type LabelStyle, printKey } from '../harmony/words/labels.ts';
import { cadenceWords } from '../harmony/words/words.ts';
import type { Label, NoteheadMark, NumberMark, ScoreAnnotations } from '../musicxml/index.ts';
import { isUnwritten, marksOf } from '../review/marks.ts';
import type { Finding, Review } from '../review/review.ts';
import { type Severity, severityRank } from '../rules/rule.ts';
import { barAt, placeAt, printPlace } from '../score/place.ts';
import type { Score } from '../score/score.ts';

const COLOURS: Readonly<Record<Severity, string>> = { fault: '#B3261E', query: '#9A5B00', remark: '#4A5A6A' };

/** A finding to be written on the score, or a teacher's own remark in its stead. */
export type Marked = Pick<Finding, 'severity' | 'voices' | 'from' | 'tones'> & {
  /** What the list over the score says of it, after its number and place. */
  readonly sentence: string;
  /** Where it has one of its own; else they are numbered as they come. */
  readonly number?: number;
};

/** The review's own marks, in its order, numbered as everywhere; what follows from one is told with it. */
function markedFindings(review: Review): Marked[] {
  const marks = marksOf(review.findings);
  const told = marks.flatMap(({ number, slips }) =>
    slips.map(({ finding: { severity, voices, from, tones, rule, message }, follows }) => {
      const names = [...new Set(follows.map((each) => each.rule.name.toLowerCase()))];
      const more = names.length === 0 ? '' : ` From it: ${listed(names)}.`;
      const said = `${severity}, ${rule.name.toLowerCase()}. ${message}${more}`;
      return { number, severity, voices, from, tones, sentence: said };
    }),
  );
  // A file can't set them apart as a page does: what is still to be written comes last, and counts on.
  const unwritten = review.findings
    .filter(isUnwritten)
    .map(({ severity, voices, from, tones, message }, index) => ({
      number: marks.length + index + 1,
      severity,
      voices,
      from,
      tones,
      sentence: `${severity}. ${message}`,
    }));
  return [...told, ...unwritten];
}

/** `marks` are numbered as in the list that goes with the score. */
export function annotationsOf(
  review: Review,
  labels: LabelStyle = 'figures',
  marks: readonly Marked[] = markedFindings(review),
): ScoreAnnotations {
  const { analysis, score } = review;
  const numerals = analysis.chords.flatMap((chord): Label[] => {
    const text = chordLabel(chord, labels, barAt(score, chord.at).key.fifths);
    return text === '' ? [] : [{ at: chord.at, text }];
  });
  return {
    noteheads: noteheads(marks),
    numbers: marks.map(numberOf),
    rows: [numerals, keysAndCadences(review)],
    list: marks.map((mark, index) => sentenceOf(score, mark, index)),
  };
}

/** Each note once, in the colour of the gravest finding it has a part in. */
function noteheads(marks: readonly Marked[]): NoteheadMark[] {
  const gravest = new Map<string, { severity: Severity; mark: NoteheadMark }>();
  for (const { severity, tones } of marks) {
    for (const { voice, notes } of tones) {
      for (const { at } of notes) {
        const key = `${voice}@${at}`;
        const known = gravest.get(key);
        if (known !== undefined && severityRank(known.severity) <= severityRank(severity)) continue;
        gravest.set(key, { severity, mark: { voice, at, colour: COLOURS[severity] } });
      }
    }
  }
  return [...gravest.values()].map(({ mark }) => mark);
}

function numberOf({ severity, voices, from, number }: Marked, index: number): NumberMark {
  return {
    at: from,
    voice: voices[0] ?? 'S',
    text: String(number ?? index + 1),
    colour: COLOURS[severity],
    bold: severity === 'fault',
  };
}

function sentenceOf(score: Score, { from, sentence, number }: Marked, index: number): string {
  return `${number ?? index + 1}  ${capitalised(printPlace(placeAt(score, from)))}: ${sentence}`;
}

/** Each key where it begins, each cadence where it arrives, in one row. */
function keysAndCadences({ analysis }: Review): Label[] {
  const keys = analysis.keys.map(({ from, key }): Label => ({ at: from, text: `${printKey(key)}:` }));
  const cadences = analysis.cadences.map(
    (cadence): Label => ({ at: cadence.at, text: cadenceWords(cadence).name }),
  );
  // Where both fall on one chord the close comes before the key that begins with it.
  return [...cadences, ...keys].sort((a, b) => a.at - b.at);
}
