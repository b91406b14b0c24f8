/** From a review to its public JSON form (see `schema.ts`). Ticks become crotchets here. */
import type { Analysis, Cadence, Chord, KeyRegion } from '../harmony/analysis.ts';
import { sameKey } from '../harmony/key.ts';
import { homeKey } from '../harmony/questions/home-key.ts';
import { secondOf } from '../harmony/questions/seconds.ts';
import { numeral, printKey } from '../harmony/words/labels.ts';
import { cadenceWords } from '../harmony/words/words.ts';
import { type Refusal, refusalOf } from '../refusal/refusal.ts';
import { hintsFor } from '../review/hints.ts';
import type { Finding, Review } from '../review/review.ts';
import { printNoteName, printPitch } from '../score/pitch.ts';
import { barAt, type Place, placeIn } from '../score/place.ts';
import { endOf } from '../score/score.ts';
import { tempoMarks } from '../score/tempo.ts';
import { crotchets, type Ticks } from '../score/time.ts';
import { styleOf } from '../style/profile.ts';
import { tooShortInWords } from '../style/words.ts';
import type { JsonCadence, JsonChord, JsonFailure, JsonFinding, JsonReview } from './schema.ts';
import { summarise } from './summary.ts';

export type { JsonChord, JsonFailure, JsonFinding, JsonLine, JsonReview } from './schema.ts';

/** The public form of a review. `file` is what the person called the input; `-` for standard input. */
export function jsonReview(file: string, review: Review): JsonReview {
  const { score, analysis } = review;
  return {
    file,
    title: score.title,
    key: printKey(homeKey(review.analysis)),
    bars: score.bars.length,
    crotchets: crotchets(endOf(score)),
    tempos: tempoMarks(score).map(({ bar, tempo }) => ({
      from: crotchets(bar.at),
      bar: bar.number,
      crotchetsAMinute: tempo,
    })),
    chords: analysis.chords.map((chord) => jsonChord(review, chord)),
    keys: analysis.keys.map((region) => jsonKeyRegion(analysis, region)),
    // A note that no ornament explains is a matter for the dissonance rules, not an ornament.
    ornaments: analysis.ornaments
      .filter((ornament) => ornament.kind !== 'unclassified')
      .map((ornament) => ({
        voice: ornament.voice,
        at: crotchets(ornament.at),
        until: crotchets(ornament.until),
        pitch: printPitch(ornament.tone.pitch),
        kind: ornament.kind,
        ...(ornament.figures === undefined ? {} : { figures: ornament.figures }),
      })),
    phrases: analysis.phrases.map(({ from, until, end }) => ({
      from: crotchets(from),
      until: crotchets(until),
      end,
    })),
    cadences: analysis.cadences.map((cadence) => jsonCadence(review, cadence)),
    findings: jsonFindings(review),
    remarks: score.remarks.map(({ message, bar, about }) => ({
      message,
      ...(bar === undefined ? {} : { bar }),
      ...(about === undefined ? {} : { about }),
    })),
    ...jsonStyle(review.analysis),
    summary: summarise(review),
  };
}

/** The style of a piece, measure by measure, or why nothing is told of it. */
export function jsonStyle(analysis: Analysis): Pick<JsonReview, 'style' | 'styleNote'> {
  const style = styleOf(analysis);
  if (style.kind === 'too short') return { style: [], styleNote: tooShortInWords(style) };
  const rounded = (value: number) => Number(value.toFixed(3));
  return {
    style: style.values.map(({ measure, value, band, percentile, outside }) => ({
      measure: measure.id,
      name: measure.name,
      value: rounded(value),
      unit: measure.unit,
      low: band.low,
      middle: band.middle,
      high: band.high,
      percentile: Math.round(percentile),
      outside: outside ?? null,
    })),
  };
}

/** Findings of one rule that are given one by one; the rest are only counted (`summary.byRule`). */
const MOST_OF_A_RULE = 100;

/** The first hundred findings of each rule, in the review's order: enough to mend by, and an answer that is bounded. */
export function shownFindings({ findings }: Review): Finding[] {
  const met = new Map<string, number>();
  return findings.filter(({ rule }) => {
    const nth = (met.get(rule.id) ?? 0) + 1;
    met.set(rule.id, nth);
    return nth <= MOST_OF_A_RULE;
  });
}

/** The public form of a file that could not be read. */
export function jsonFailure(file: string, error: Refusal): JsonFailure {
  const { problems, ...first } = refusalOf(error);
  return {
    file,
    error: { ...first, ...(problems && problems.length > 1 ? { problems: problems.map(refusalOf) } : {}) },
  };
}

function jsonKeyRegion(analysis: Analysis, { from, until, key }: KeyRegion): JsonReview['keys'][number] {
  const seconds = analysis.seconds.filter(
    (second) => second.from < until && second.until > from && !sameKey(second.key, key),
  );
  return {
    from: crotchets(from),
    until: crotchets(until),
    key: printKey(key),
    ...(seconds.length === 0
      ? {}
      : {
          otherwise: seconds.map((second) => ({
            from: crotchets(second.from),
            until: crotchets(second.until),
            key: printKey(second.key),
            numerals: second.chords.map(({ roman }) => numeral(roman, second.key)),
          })),
        }),
  };
}

function jsonChord(review: Review, chord: Chord): JsonChord {
  const { roman } = chord;
  const second = secondOf(review.analysis, chord);
  return {
    at: crotchets(chord.at),
    until: crotchets(chord.until),
    ...jsonPlace(review, chord.at),
    key: printKey(chord.key),
    numeral: numeral(roman, chord.key),
    root: printNoteName(chord.root),
    bass: printNoteName(chord.bass),
    quality: chord.quality,
    seventh: roman.seventh !== undefined,
    ...(roman.applied === undefined
      ? {}
      : { applied: numeral({ ...roman.applied, inversion: 0 }, chord.key) }),
    sure: Number(chord.sure.toFixed(2)),
    ...(second === undefined
      ? {}
      : { otherwise: { key: printKey(second.key), numeral: numeral(second.roman, second.key) } }),
  };
}

function jsonCadence(review: Review, cadence: Cadence): JsonCadence {
  const { at, key, kind, tierce, full, inverted, phrygian } = cadence;
  const words = cadenceWords(cadence);
  return {
    at: crotchets(at),
    ...jsonPlace(review, at),
    key: printKey(key),
    kind,
    name: words.name,
    alsoCalled: words.otherName,
    tierce,
    full,
    inverted,
    phrygian,
  };
}

/** The findings in the review's order, numbered from 1. */
export function jsonFindings(review: Review): JsonFinding[] {
  const shown = shownFindings(review);
  const numbers = new Map(shown.map(({ id }, index) => [id, index + 1]));
  return shown.map((finding, index) => {
    const because = finding.because === undefined ? undefined : numbers.get(finding.because);
    return jsonFinding(review, finding, index + 1, because);
  });
}

function jsonFinding(
  review: Review,
  finding: Finding,
  number: number,
  because: number | undefined,
): JsonFinding {
  const { rule } = finding;
  const hints = hintsFor(review.analysis, finding);
  return {
    id: finding.id,
    number,
    ...(because === undefined ? {} : { because }),
    ...(finding.mark === undefined ? {} : { mark: finding.mark }),
    rule: rule.id,
    name: rule.name,
    family: rule.family,
    severity: finding.severity,
    voices: [...finding.voices],
    ...jsonPlace(review, finding.from),
    from: crotchets(finding.from),
    until: crotchets(finding.until),
    notes: finding.tones.map((tone) => ({
      voice: tone.voice,
      at: crotchets(tone.at),
      pitch: printPitch(tone.pitch),
    })),
    message: finding.message,
    why: rule.why,
    hint: hints[0],
    hints: [...hints],
  };
}

function jsonPlace(review: Review, at: Ticks): { bar: string; beat: number } {
  const place = placeIn(barAt(review.score, at), at);
  return { bar: place.bar.number, beat: decimalBeat(place) };
}

/** The beat as a number for JSON: 2½ is 2.5. */
function decimalBeat(place: Place): number {
  return place.beat + place.numerator / place.denominator;
}
