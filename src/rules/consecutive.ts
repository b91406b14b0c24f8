/** What the rules about consecutives share: which of them they take up, how they weigh them, how they say it. */
import { capitalised, withArticle } from '../english/words.ts';
import type { Analysis, Ornament } from '../harmony/analysis.ts';
import { type Consecutive, consecutivesIn, isLaidOn } from '../harmony/questions/consecutives.ts';
import { ornamentWords } from '../harmony/words/words.ts';
import { isInnerPair, isOuterPair } from '../score/motion.ts';
import { printPitch } from '../score/pitch.ts';
import { VOICE_WORDS } from '../score/score.ts';
import { type Tone, writtenPitch } from '../score/texture.ts';
import { choice, type Occurrence, type ParameterValues, SEVERITIES, type Severity } from './rule.ts';
import { inOrder } from './wording.ts';

const WEIGHTS = [...SEVERITIES, 'ignore'] as const;
type Weight = (typeof WEIGHTS)[number];

/** The parameters that every rule about parallels has: how seriously to take those that are not from chord to chord. */
export const PARALLEL_PARAMETERS = {
  acrossPhrases: choice('query', WEIGHTS, 'How seriously to take consecutives that fall across a fermata.'),
  withOrnaments: choice(
    'query',
    WEIGHTS,
    'How seriously to take consecutives that an anticipation or an échappée makes.',
  ),
  decorated: choice('query', WEIGHTS, 'How seriously to take consecutives that ornaments merely postpone.'),
  heldBack: choice('remark', WEIGHTS, 'How seriously to take consecutives that a suspension holds back.'),
  onBeats: choice(
    'query',
    WEIGHTS,
    'How seriously to take consecutives between the outer voices on successive beats, with chord notes between.',
  ),
} as const;

type ParallelValues = ParameterValues<typeof PARALLEL_PARAMETERS>;

/** Occurrences of parallel motion in one interval. */
export function parallels(
  analysis: Analysis,
  interval: Consecutive['interval'],
  values: ParallelValues,
): Occurrence[] {
  return consecutivesIn(analysis).flatMap((consecutive) => {
    if (consecutive.interval !== interval || consecutive.motion !== 'similar') return [];
    const severity = weigh(consecutive, values);
    return severity === 'ignore' ? [] : [occurrence(consecutive, severity)];
  });
}

/** Octaves are heard through any ornament, so nothing but the end of a phrase makes them lighter. */
export const OCTAVE_PARAMETERS = {
  ...PARALLEL_PARAMETERS,
  withOrnaments: { ...PARALLEL_PARAMETERS.withOrnaments, value: 'fault' },
  decorated: { ...PARALLEL_PARAMETERS.decorated, value: 'fault' },
  heldBack: { ...PARALLEL_PARAMETERS.heldBack, value: 'query' },
} as const;

/** The parameters that both rules about contrary motion have. */
export const CONTRARY_PARAMETERS = {
  acrossPhrases: PARALLEL_PARAMETERS.acrossPhrases,
  withInnerVoice: choice(
    'query',
    WEIGHTS,
    'How seriously to take consecutives by contrary motion of which one voice at least is alto or tenor.',
  ),
  decorated: choice(
    'remark',
    WEIGHTS,
    'How seriously to take consecutives by contrary motion with other notes between.',
  ),
} as const;

type ContraryValues = ParameterValues<typeof CONTRARY_PARAMETERS>;

/** Occurrences of contrary motion in one interval. */
export function contraries(
  analysis: Analysis,
  interval: Consecutive['interval'],
  values: ContraryValues,
): Occurrence[] {
  return consecutivesIn(analysis).flatMap((consecutive) => {
    if (consecutive.interval !== interval || consecutive.motion !== 'contrary') return [];
    const severity = weighContrary(consecutive, values);
    return severity === 'ignore' ? [] : [occurrence(consecutive, severity)];
  });
}

function weighContrary(consecutive: Consecutive, values: ContraryValues): Weight {
  if (consecutive.changeOfPosition) return 'remark';
  if (consecutive.acrossFermata) return lighter(values.acrossPhrases);
  if (consecutive.way !== 'direct' || consecutive.ornaments.length > 0) return values.decorated;
  if (isOuterPair(consecutive.pair)) return 'fault';
  // Without the bass the ear takes them for a change of position.
  return consecutive.pair[1] === 'B' ? values.withInnerVoice : lighter(values.withInnerVoice);
}

function weigh(consecutive: Consecutive, values: ParallelValues): Weight {
  if (consecutive.changeOfPosition) return 'remark';
  const { way, pair } = consecutive;
  if (consecutive.acrossFermata)
    return way === 'direct' ? values.acrossPhrases : lighter(values.acrossPhrases);
  // What the outer voices should not do, the inner ones may when other notes lie between.
  if (way === 'decorated') return isInnerPair(pair) ? lighter(values.decorated) : values.decorated;
  // A fifth may be held back; an octave is heard through the suspension.
  if (way === 'held back') return isInnerPair(pair) ? lighter(values.heldBack) : values.heldBack;
  const laidOn = consecutive.ornaments.filter(isLaidOn);
  if (way === 'on beats')
    return isOuterPair(pair) && laidOn.length === 0 ? values.onBeats : lighter(values.onBeats);
  return laidOn.some(isAfterbeat) ? values.withOrnaments : 'fault';
}

/** What is done with as the beat goes out leaves the line as it was; a passing or neighbour note is part of it. */
function isAfterbeat({ kind }: Ornament): boolean {
  return kind === 'anticipation' || kind === 'échappée';
}

/** One step down. */
function lighter(severity: Weight): Weight {
  return severity === 'fault' ? 'query' : severity === 'query' ? 'remark' : severity;
}

/** An occurrence in words: `Tenor and bass move in parallel fifths: G3–D3 to A3–E3.` */
function occurrence(consecutive: Consecutive, severity: Severity): Occurrence {
  const { pair, first, second } = consecutive;
  const hint = HINTS[consecutive.way];
  return {
    severity,
    voices: pair,
    from: consecutive.from,
    until: consecutive.until,
    tones: inOrder([...first, ...second]),
    message: `${whatHappened(consecutive)}: ${together(first)} to ${together(second)}${circumstances(consecutive)}.`,
    ...(hint === undefined ? {} : { hint }),
  };
}

function whatHappened({ pair, interval, motion, way }: Consecutive): string {
  const voices = capitalised(`${VOICE_WORDS[pair[0]]} and ${VOICE_WORDS[pair[1]]}`);
  const what = `${interval}s`;
  if (motion === 'contrary') return `${voices} move in ${what} by contrary motion`;
  if (way === 'on beats') return `${voices} make ${what} on successive beats`;
  return `${voices} move in parallel ${what}`;
}

function together(tones: readonly [Tone, Tone]): string {
  return `${printPitch(writtenPitch(tones[0]))}–${printPitch(writtenPitch(tones[1]))}`;
}

function circumstances(consecutive: Consecutive): string {
  if (consecutive.changeOfPosition)
    return ', while the outer voices keep their notes and the chord stays the same';
  if (consecutive.acrossFermata) return ', across the end of a phrase';
  if (consecutive.way === 'held back') return '; the suspension only holds them back';
  if (consecutive.way === 'decorated') return '; the notes between only decorate them';
  const ornament = consecutive.ornaments.find(isLaidOn);
  if (ornament === undefined) return '';
  const place = `the ${VOICE_WORDS[ornament.voice]}'s ${printPitch(writtenPitch(ornament.tone))}`;
  return `; ${place} is ${kindInWords(ornamentWords(ornament.kind))}`;
}

function kindInWords(words: string): string {
  if (words === 'changing notes') return 'one of two changing notes';
  return withArticle(words);
}

const HINTS: Partial<Record<Consecutive['way'], string>> = {
  decorated: 'Take away the notes that only decorate, and look at how the two plain lines move.',
  'held back':
    'Put the note of resolution in the place of the suspension, and look at how the two voices move.',
  'on beats': 'Look only at what these two voices sing on the beats: the notes between do not hide it.',
};
