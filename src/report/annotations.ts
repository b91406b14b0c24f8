/** What a review writes into a score that is handed back: numbered, coloured findings, numerals, keys and cadences. */
import { chordLabel, type LabelStyle, printKey } from '../harmony/words/labels.ts';
import { cadenceWords } from '../harmony/words/words.ts';
import type { NoteheadMark, ScoreAnnotations, Words } from '../musicxml/index.ts';
import type { Finding, Review } from '../review/review.ts';
import { type Severity, severityRank } from '../rules/rule.ts';
import { barAt } from '../score/place.ts';
import type { VoiceName } from '../score/score.ts';

const COLOURS: Readonly<Record<Severity, string>> = { fault: '#b3261e', query: '#9a5b00', remark: '#4a5a6a' };

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
    labels: analysis.chords.flatMap((chord) => {
      const text = chordLabel(chord, labels, barAt(review.score, chord.at).key.fifths);
      return text === '' ? [] : [{ at: chord.at, text }];
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
        if (known !== undefined && severityRank(known.severity) <= severityRank(severity)) continue;
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
