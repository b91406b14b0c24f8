/** What a review writes into a score that is handed back: numbered, coloured findings, numerals, keys and cadences. */
import { type LabelStyle, numeral, printKey } from '../harmony/words/labels.ts';
import { cadenceWords } from '../harmony/words/words.ts';
import type { NoteheadMark, ScoreAnnotations, Words } from '../musicxml/index.ts';
import type { Finding, Review } from '../review/review.ts';
import type { Severity } from '../rules/rule.ts';
import type { VoiceName } from '../score/score.ts';

const COLOURS: Readonly<Record<Severity, string>> = { fault: '#b3261e', query: '#9a5b00', remark: '#4a5a6a' };
const RANK: Readonly<Record<Severity, number>> = { fault: 0, query: 1, remark: 2 };

/** A finding to be written on the score, or a teacher's own remark in its stead. */
export type Marked = Pick<Finding, 'severity' | 'voices' | 'from' | 'tones'> & {
  /** What is printed behind the number. */
  readonly words: string;
};

/** The review's own findings, in its order. */
export function markedFindings(review: Review): Marked[] {
  return review.findings.map(({ severity, voices, from, tones, rule }) => ({
    severity,
    voices,
    from,
    tones,
    words: rule.name.toLowerCase(),
  }));
}

/** `marks` are numbered from 1 in the order given, as in the list that goes with the score. */
export function annotationsOf(
  review: Review,
  labels: LabelStyle = 'figures',
  marks: readonly Marked[] = markedFindings(review),
): ScoreAnnotations {
  const { analysis } = review;
  return {
    noteheads: noteheads(marks),
    words: [...keyWords(review), ...marks.map(findingWords), ...cadences(review)],
    labels: analysis.chords.flatMap(({ at, roman, key }) => {
      const text = numeral(roman, key, labels);
      return text === '' ? [] : [{ at, text }];
    }),
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
        if (known !== undefined && RANK[known.severity] <= RANK[severity]) continue;
        gravest.set(key, { severity, mark: { voice, at, colour: COLOURS[severity] } });
      }
    }
  }
  return [...gravest.values()].map(({ mark }) => mark);
}

function findingWords({ severity, voices, from, words }: Marked, index: number): Words {
  const voice: VoiceName = voices[0] ?? 'S';
  const upper = voice === 'S' || voice === 'A';
  return {
    at: from,
    voice,
    placement: upper ? 'above' : 'below',
    text: `${index + 1} ${words}`,
    colour: COLOURS[severity],
    bold: severity === 'fault',
  };
}

/** Each key where it begins. */
function keyWords(review: Review): Words[] {
  return review.analysis.keys.map(({ from, key }) => ({
    at: from,
    voice: 'S',
    placement: 'above',
    text: printKey(key),
  }));
}

function cadences(review: Review): Words[] {
  return review.analysis.cadences.map((cadence) => ({
    at: cadence.at,
    voice: 'B',
    placement: 'below',
    text: cadenceWords(cadence).name,
  }));
}
