/**
 * Proves that an exercise can be solved: answers are put together by plain rules of voice-leading, and counted where
 * the whole review has neither fault nor query against them. No answer leaves this file.
 */
import type { Profile } from '../profiles/profile.ts';
import { reviewScore } from '../review/review.ts';
import { buildScore, type DraftBar } from '../score/build.ts';
import { byVoice, type Score, VOICES } from '../score/score.ts';
import { CROTCHET } from '../score/time.ts';
import type { Aim } from './aims.ts';
import { CHORDS, type ChordName, mayFollow } from './chords.ts';
import type { Chance } from './random.ts';
import { pitchOf } from './scale.ts';
import type { PracticeTune } from './tune.ts';
import { mayMove, type Voicing, voicingsOf } from './voicings.ts';

export const ENOUGH_ANSWERS = 20;
/** Answers tried for one exercise. */
const MOST_TRIED = 240;

export interface Proof {
  /** The first chord, which is given. */
  readonly opening: Voicing;
  /** Answers with neither fault nor query, all different. */
  readonly answers: number;
  readonly tried: number;
}

/** Undefined where no way leads from the first note to the last. */
export function prove(tune: PracticeTune, aim: Aim, profile: Profile, by: Chance): Proof | undefined {
  const ways = waysToTheEnd(tune, aim);
  const openings = ways?.[0]?.filter(isPlain);
  if (ways === undefined || openings === undefined || openings.length === 0) return undefined;
  const opening = by.pick(openings);
  const seen = new Set<string>();
  let answers = 0;
  let tried = 0;
  // Where few of the first are good, more won't be: the search is given up early.
  while (tried < MOST_TRIED && answers < ENOUGH_ANSWERS && answers >= tried / 40 - 1) {
    tried++;
    const answer = throughTheWays(ways, opening, by);
    const name = answer.map(({ parts }) => parts.map(({ place }) => place)).join();
    if (seen.has(name)) continue;
    seen.add(name);
    if (isClean(scoreOf(tune, answer), profile)) answers++;
  }
  return { opening, answers, tried };
}

/** A full chord with its root doubled, four notes apart: how pieces begin. */
function isPlain({ parts }: Voicing): boolean {
  const apart = new Set(parts.map(({ place }) => place)).size === 4;
  const members = parts.map(({ member }) => member).sort();
  return apart && members.join('') === '0012';
}

/** Ways of setting each note from which the end can be reached. */
function waysToTheEnd(tune: PracticeTune, aim: Aim): Voicing[][] | undefined {
  const { notes, key } = tune;
  const ends: readonly (readonly ChordName[])[] = aim.endsWith ?? [['V', 'V7'], ['I']];
  const ways: Voicing[][] = [];
  for (let i = notes.length - 1; i >= 0; i--) {
    const last = i === notes.length - 1;
    const chords = i === 0 ? (['I'] as const) : (ends[i - (notes.length - ends.length)] ?? CHORDS);
    const next = ways[0];
    const here = chords
      .filter((chord) => aim.id === 'six-four' || chord !== 'I64')
      .flatMap((chord) => voicingsOf(key, chord, notes[i]!, last))
      .filter((way) => next === undefined || next.some((after) => leadsTo(way, after, tune)));
    if (here.length === 0) return undefined;
    ways.unshift(here);
  }
  return ways;
}

function leadsTo(way: Voicing, after: Voicing, { key }: PracticeTune): boolean {
  return mayFollow(way.chord, after.chord, key.mode) && mayMove(way, after);
}

/** One way through, by chance; smooth voices are likelier. */
function throughTheWays(ways: readonly Voicing[][], opening: Voicing, by: Chance): Voicing[] {
  const answer = [opening];
  for (const next of ways.slice(1)) {
    const before = answer.at(-1)!;
    const open = next.filter((way) => mayFollowHere(before, way));
    const [first, ...others] = Array.from({ length: 3 }, () => by.pick(open));
    answer.push(
      others.reduce((best, way) => (effort(before, way) < effort(before, best) ? way : best), first!),
    );
  }
  return answer;
}

/** The mode was asked about when the ways were found; which chord may follow is all that is left to ask. */
function mayFollowHere(before: Voicing, after: Voicing): boolean {
  return mayFollow(before.chord, after.chord, 'major') && mayMove(before, after);
}

function effort(from: Voicing, to: Voicing): number {
  return to.parts.reduce((sum, part, voice) => sum + Math.abs(part.height - from.parts[voice]!.height), 0);
}

function isClean(score: Score, profile: Profile): boolean {
  return reviewScore(score, profile).findings.every(({ severity }) => severity === 'remark');
}

/** The tune with chords under its first notes, as many as there are; the rest is to be written. */
export function scoreOf(tune: PracticeTune, chords: readonly Voicing[], title = ''): Score {
  const { key, beats, bars, notes, lastBeats } = tune;
  const drafts = Array.from({ length: bars }, (_, bar): DraftBar => {
    const first = bar * beats;
    const here = notes.slice(first, first + beats);
    return {
      metre: { beats, unit: 4 },
      key,
      voices: byVoice((voice) => ({
        closed: true,
        events: here.map((note, i) => {
          const index = first + i;
          const last = index === notes.length - 1;
          const part = chords[index]?.parts[VOICES.indexOf(voice)];
          const pitch = voice === 'S' ? pitchOf(key, note) : part?.pitch;
          const duration = (last ? lastBeats : 1) * CROTCHET;
          return pitch === undefined
            ? { kind: 'gap' as const, duration }
            : { kind: 'note' as const, duration, pitch, fermata: last };
        }),
      })),
    };
  });
  return buildScore({ title, tempo: 66, bars: drafts });
}
