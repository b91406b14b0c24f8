/** The given notes, untouched or not: each departure of a script from its brief, bar by bar. */

import { capitalised, listed } from '../english/words.ts';
import { printKeySignature } from '../notation/index.ts';
import { withSigns } from '../report/sentences.ts';
import { intervalName } from '../score/interval.ts';
import { fifthsPlace, type Pitch } from '../score/pitch.ts';
import { printBar } from '../score/place.ts';
import { type Score, VOICE_WORDS, VOICES, type VoiceName } from '../score/score.ts';
import { crotchets, printMetre } from '../score/time.ts';
import { type Alignment, alignBars, transpositionBetween } from './align.ts';
import { type NotedBar, notedBars, type PitchCode, semitonesOf, stepsOf, transposed } from './bar-notes.ts';
import { type BarWithNotes, type Departure, voiceDepartures } from './departures.ts';

export type { Departure, DepartureKind } from './departures.ts';

export interface ComparedBar {
  /** Printed numbers; one is absent where a bar is missing or added. */
  readonly given?: string;
  readonly script?: string;
  readonly departures: readonly Departure[];
}

export interface GivenComparison {
  /** The voices in which the brief gives notes. */
  readonly voices: readonly VoiceName[];
  /** Where the whole stands in another key or octave: the notes are then compared as transposed. */
  readonly transposition?: {
    /** Staff steps and semitones from the brief to the script, downwards negative. */
    readonly steps: number;
    readonly semitones: number;
    readonly message: string;
  };
  /** What differs for the whole, in sentences: metre, key signature. */
  readonly general: readonly string[];
  /** Every bar of both, in order, with what differs in it. */
  readonly bars: readonly ComparedBar[];
  /** All departures in order: empty where the given notes are untouched. */
  readonly departures: readonly Departure[];
  /** All of it in a sentence or two. */
  readonly summary: string;
}

/**
 * Compares a script with the notes that its brief gives. What the brief leaves open (gaps) is never looked at.
 * Notes are compared by what sounds: a minim and two tied crotchets are the same.
 *
 * @param given the brief's score: the given notes, everything else left unwritten
 * @param voices to look at some of the voices only; else all in which the brief has notes
 */
export function compareWithGiven(
  given: Score,
  script: Score,
  voices: readonly VoiceName[] = VOICES,
): GivenComparison {
  const asked = notedBars(given);
  const written = notedBars(script);
  const compared = voices.filter((voice) => asked.some((bar) => bar.notes[voice].length > 0));
  const by = transpositionBetween(asked, written, compared);
  const alignment = alignBars(asked, written, compared, by);
  const bars = alignment.bars.map(({ a, b }): ComparedBar => {
    const [from, to] = [a === undefined ? undefined : asked[a], b === undefined ? undefined : written[b]];
    return {
      ...(from === undefined ? {} : { given: from.number }),
      ...(to === undefined ? {} : { script: to.number }),
      departures: departuresIn(withNotes(given, from), withNotes(script, to), compared, by),
    };
  });
  const departures = bars.flatMap((bar) => bar.departures);
  const message = transpositionMessage(given, script, by);
  return {
    voices: compared,
    ...(by === 0 ? {} : { transposition: { steps: stepsOf(by), semitones: semitonesOf(by), message } }),
    general: [...metreMessages(given, script, alignment), ...keyMessages(given, script, by)],
    bars,
    departures,
    summary: summary(compared, departures, by === 0 ? '' : ` ${message}`),
  };
}

function withNotes(score: Score, noted: NotedBar | undefined): BarWithNotes | undefined {
  return noted === undefined ? undefined : { bar: score.bars[noted.index]!, noted };
}

function departuresIn(
  asked: BarWithNotes | undefined,
  script: BarWithNotes | undefined,
  voices: readonly VoiceName[],
  by: PitchCode,
): Departure[] {
  if (script === undefined) {
    const number = asked?.noted.number ?? '';
    return [
      {
        kind: 'missing bar',
        bar: number,
        message: `${capitalised(printBar(number))} of the brief is missing here.`,
      },
    ];
  }
  const { bar } = script;
  if (asked === undefined)
    return [
      {
        kind: 'added bar',
        bar: bar.number,
        at: crotchets(bar.at),
        message: `${capitalised(printBar(bar.number))} is not in the brief.`,
      },
    ];
  return voices.flatMap((voice) => voiceDepartures(asked, script, voice, by));
}

function metreMessages(given: Score, script: Score, alignment: Alignment): string[] {
  for (const { a, b } of alignment.bars) {
    if (a === undefined || b === undefined) continue;
    const [asked, bar] = [given.bars[a]!, script.bars[b]!];
    if (printMetre(asked.metre) !== printMetre(bar.metre))
      return [
        `From ${printBar(bar.number)} on the metre is ${printMetre(bar.metre)}; the brief has ${printMetre(asked.metre)}.`,
      ];
  }
  return [];
}

/** How many more sharps a key has that stands this interval away. */
function signsBetween(by: PitchCode): number {
  const c: Pitch = { step: 'C', alteration: 0, octave: 4 };
  return fifthsPlace(transposed(c, by));
}

function keyMessages(given: Score, script: Score, by: PitchCode): string[] {
  const asked = given.bars[0]?.key;
  const key = script.bars[0]?.key;
  if (asked === undefined || key === undefined) return [];
  const expected = { ...asked, fifths: asked.fifths + signsBetween(by) };
  const otherMode = asked.mode !== undefined && key.mode !== undefined && asked.mode !== key.mode;
  if (expected.fifths === key.fifths && !otherMode) return [];
  return [
    `The key signature is that of ${withSigns(printKeySignature(key))}; ${by === 0 ? 'the brief has' : 'the brief, transposed, would have'} ${withSigns(printKeySignature(expected))}.`,
  ];
}

function transpositionMessage(given: Score, script: Score, by: PitchCode): string {
  const steps = Math.abs(stepsOf(by));
  const octave = steps % 7 === 0 && semitonesOf(by) % 12 === 0;
  const [key, asked] = [script.bars[0]?.key, given.bars[0]?.key];
  const keys =
    octave || key === undefined || asked === undefined
      ? ''
      : withSigns(` (${printKeySignature(key)} for ${printKeySignature(asked)})`);
  return `The whole stands ${intervalWords(by)} ${by > 0 ? 'higher' : 'lower'} than the brief${keys}; its notes are compared as transposed.`;
}

function intervalWords(by: PitchCode): string {
  const name = intervalName({ steps: stepsOf(by), semitones: semitonesOf(by) });
  return `${/^[aeiou]/.test(name) && !name.startsWith('uni') ? 'an' : 'a'} ${name}`;
}

function summary(
  voices: readonly VoiceName[],
  departures: readonly Departure[],
  transposition: string,
): string {
  if (voices.length === 0) return 'The brief gives no notes.';
  const what = `given ${listed(voices.map((voice) => VOICE_WORDS[voice]))}`;
  const unwritten = departures.filter(({ kind }) => kind === 'not written');
  const changed = departures.filter(({ kind }) => kind !== 'not written');
  const bars = [...new Set(changed.map(({ bar }) => bar))];
  const places = `${changed.length === 1 ? '1 place' : `${changed.length} places`} (bar${bars.length === 1 ? '' : 's'} ${listed(bars)})`;
  const first =
    changed.length === 0
      ? `The ${what} ${voices.length === 1 ? 'is' : 'are'} as in the brief${unwritten.length === 0 ? '' : ' as far as written'}.`
      : `The ${what} ${voices.length === 1 ? 'differs' : 'differ'} from the brief in ${places}.`;
  const missing = [...new Set(unwritten.map(({ bar }) => bar))];
  const rest =
    missing.length === 0 ? '' : ` Not written yet: bar${missing.length === 1 ? '' : 's'} ${listed(missing)}.`;
  return `${first}${rest}${transposition}`;
}
