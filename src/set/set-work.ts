/** Sets the work: from a piece and a choice of what is given to the exercise as pupils get it. Pure. */
import { type Brief, keeping } from '../brief/brief.ts';
import { listed } from '../english/words.ts';
import { analyse } from '../harmony/analyse.ts';
import type { Analysis } from '../harmony/analysis.ts';
import { figuredBass } from '../harmony/words/figured-bass.ts';
import { type Outcome, refuse } from '../refusal/refusal.ts';
import { barAt } from '../score/place.ts';
import {
  type Score,
  VOICE_WORDS,
  VOICES,
  type VoiceEvent,
  type VoiceName,
  type WrittenFigure,
} from '../score/score.ts';
import { textureOf } from '../score/texture.ts';
import type { Ticks } from '../score/time.ts';
import { barsNamed, type Choice } from './choice.ts';

/** What else a brief says; a task or title that is left out is made or taken from the piece. */
export interface Setting
  extends Pick<Brief, 'profile' | 'leastSeconds' | 'leastTogetherSeconds' | 'without'> {
  readonly title?: string;
  readonly task?: string;
}

interface Stretch {
  readonly from: Ticks;
  readonly until: Ticks;
}

/** The exercise with what is given in it and all else to be written; refused where the choice leaves nothing to do. */
export function setWork(score: Score, choice: Choice, setting: Setting): Outcome<{ readonly brief: Brief }> {
  const named = barsNamed(score.bars, choice.bars);
  if (!named.ok) return named;
  const lacking = whatIsLacking(score, choice);
  if (lacking !== undefined) return refuse(lacking);
  const analysis = analyse(textureOf(score));
  const whole = wholeStretches(score, analysis, choice, named.bars);
  const closes = choice.gives.includes('closes')
    ? analysis.phrases.map((phrase) => closeOf(analysis, phrase))
    : [];
  const given = keeping(score, (event, voice) => {
    // A tune's rests belong to it; in the other voices a rest is how many programs show an empty bar.
    if (voice === 'S' && (choice.gives.includes('tune') || choice.gives.includes('all')))
      return event.kind !== 'gap';
    if (event.kind !== 'note') return false;
    if (choice.gives.includes('all')) return true;
    if (voice === 'B' && (choice.gives.includes('bass') || touches(closes, event))) return true;
    return whole.some(({ from, until }) => from <= event.at && event.at < until);
  });
  const figures = choice.gives.includes('figures')
    ? figuresUnder(given, score, analysis)
    : choice.gives.includes('all')
      ? (score.figures ?? [])
      : [];
  if (choice.gives.includes('figures') && figures.length === 0)
    return refuse(
      'There are no figures to give: the file has none, and they can be worked out only under a bass that is given and where all four voices are written.',
    );
  const { figures: _old, title, ...music } = given;
  const set: Score = {
    ...music,
    title: setting.title === undefined || setting.title.trim() === '' ? title : setting.title.trim(),
    ...(figures.length === 0 ? {} : { figures }),
  };
  const { task: asked, title: _title, ...rest } = setting;
  const task = taskFor(set);
  if (task === undefined) return refuse('Everything is given, so nothing is left to write. Give less.');
  return {
    ok: true,
    brief: { ...rest, score: set, task: asked === undefined || asked.trim() === '' ? task : asked.trim() },
  };
}

/** Why the choice can't be had of this piece. */
function whatIsLacking(score: Score, { gives, opening, bars }: Choice): string | undefined {
  const has = (voice: VoiceName): boolean => score.voices[voice].some(({ kind }) => kind === 'note');
  if (score.bars.length === 0) return 'The piece has no bars.';
  if (gives.length === 0 && opening === 0 && bars.trim() === '')
    return 'Nothing is given. Give the tune, the bass, an opening or single bars.';
  if (gives.includes('tune') && !has('S'))
    return 'The tune can’t be given: no soprano is written in the piece.';
  const needsBass = gives.includes('bass')
    ? 'The bass'
    : gives.includes('closes')
      ? 'The closes’ bass notes'
      : undefined;
  if (needsBass !== undefined && !has('B'))
    return `${needsBass} can’t be given: no bass is written in the piece.`;
  if (gives.includes('all') && !VOICES.some(has))
    return 'Nothing is written in the piece, so nothing can be given.';
  if (opening > 0 && !VOICES.every(has))
    return 'Opening chords can’t be given: not all four voices are written in the piece.';
  return undefined;
}

/** Stretches that are given in all voices: the opening chords and single bars. */
function wholeStretches(
  score: Score,
  { chords }: Analysis,
  { opening }: Choice,
  named: ReadonlySet<number>,
): Stretch[] {
  const last = chords[Math.min(opening, chords.length) - 1];
  return [
    ...(last === undefined ? [] : [{ from: 0, until: last.until }]),
    ...score.bars.flatMap(({ index, at, duration }) =>
      named.has(index) ? [{ from: at, until: at + duration }] : [],
    ),
  ];
}

/** From the chord before a phrase's last one to its end; the last one alone where no cadence is made. */
function closeOf({ cadences, chords }: Analysis, phrase: Analysis['phrases'][number]): Stretch {
  const cadence = phrase.cadence === undefined ? undefined : cadences[phrase.cadence];
  const approach = cadence === undefined ? undefined : chords[cadence.approach];
  return { from: approach?.at ?? phrase.goal, until: phrase.until };
}

function touches(stretches: readonly Stretch[], { at, duration }: VoiceEvent): boolean {
  return stretches.some(({ from, until }) => at < until && from < at + duration);
}

/** The piece's own figures where the bass is given; where it has none, those of its harmony. */
function figuresUnder(given: Score, score: Score, { chords, texture }: Analysis): WrittenFigure[] {
  const inBass = ({ at }: { readonly at: Ticks }): boolean =>
    given.voices.B.some((event) => event.kind === 'note' && event.at <= at && at < event.at + event.duration);
  if (score.figures !== undefined) return score.figures.filter(inBass);
  if (texture.tones.A.length === 0 || texture.tones.T.length === 0) return [];
  return chords.filter(inBass).flatMap((chord) => {
    const figures = figuredBass(chord, barAt(score, chord.at).key.fifths);
    return figures.length === 0 ? [] : [{ at: chord.at, figures }];
  });
}

/** `add alto and tenor, and complete the bass`; undefined where nothing is left to write. */
export function taskFor(score: Score): string | undefined {
  const open = VOICES.filter((voice) => score.voices[voice].some(({ kind }) => kind === 'gap'));
  const empty = open.filter((voice) => score.voices[voice].every(({ kind }) => kind !== 'note'));
  const begun = open.filter((voice) => !empty.includes(voice));
  if (open.length === 0) return undefined;
  const words = (voices: readonly VoiceName[]): string => listed(voices.map((voice) => VOICE_WORDS[voice]));
  return [
    ...(empty.length === 0 ? [] : [`add ${words(empty)}`]),
    ...(begun.length === 0 ? [] : [`complete the ${words(begun)}`]),
  ].join(', and ');
}
