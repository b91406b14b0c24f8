/** How a pupil changed from one draft to the next: mended, still there, new. Matched by the music, not by bar numbers. */
import { listed } from '../english/words.ts';
import { parsePitch } from '../score/pitch.ts';
import { barAt } from '../score/place.ts';
import { type Score, VOICES } from '../score/score.ts';
import { CROTCHET, type Ticks } from '../score/time.ts';
import { alignBars, transpositionBetween } from './align.ts';
import { likeBars, type NotedBar, notedBars, type PitchCode, pitchCode } from './bar-notes.ts';
import type { ScriptFinding } from './finding.ts';

export interface Draft<F extends ScriptFinding = ScriptFinding> {
  readonly score: Score;
  /** As judged or as found, whichever is to be compared. */
  readonly findings: readonly F[];
}

export interface StillThere<F extends ScriptFinding = ScriptFinding> {
  readonly before: F;
  readonly after: F;
  /** The same notes in the same voices at the same place of the bar: what was decided about it still holds. */
  readonly unchanged: boolean;
}

export interface DraftComparison<F extends ScriptFinding = ScriptFinding> {
  /** In the earlier draft's own places. */
  readonly mended: readonly F[];
  readonly stillThere: readonly StillThere<F>[];
  /** In the later draft's own places. */
  readonly fresh: readonly F[];
  /** For each bar of the later draft, by index, the bar of the earlier one it comes from; absent where it is new. */
  readonly barsFrom: readonly (number | undefined)[];
  /** `3 mended, 1 still there, 2 new.` */
  readonly summary: string;
}

/**
 * Compares two drafts. Bars answer to each other by their music, also where bars were put in, left out or moved, or the
 * whole was transposed; within such bars a finding is the same when the rule is, and enough of voices, notes,
 * place in the bar and harmony.
 */
export function compareDrafts<F extends ScriptFinding>(
  before: Draft<F>,
  after: Draft<F>,
): DraftComparison<F> {
  const [a, b] = [notedBars(before.score), notedBars(after.score)];
  const by = transpositionBetween(a, b, VOICES);
  const barsFrom = barsOfOrigin(a, b, by);
  const pairs = likelyPairs(before, after, barsFrom, by);
  const matchedBefore = new Set<F>();
  const matchedAfter = new Map<F, StillThere<F>>();
  for (const { old, now, unchanged } of pairs) {
    if (matchedBefore.has(old) || matchedAfter.has(now)) continue;
    matchedBefore.add(old);
    matchedAfter.set(now, { before: old, after: now, unchanged });
  }
  const mended = before.findings.filter((finding) => !matchedBefore.has(finding));
  const fresh = after.findings.filter((finding) => !matchedAfter.has(finding));
  const stillThere = after.findings.flatMap((finding) => matchedAfter.get(finding) ?? []);
  return {
    mended,
    stillThere,
    fresh,
    barsFrom,
    summary: summary(mended.length, stillThere.length, fresh.length),
  };
}

function summary(mended: number, still: number, fresh: number): string {
  if (mended + still + fresh === 0) return 'Nothing was found in either draft.';
  const parts = [`${mended} mended`, `${still} still there`, `${fresh} new`];
  return `${listed(parts.map((part) => part.replace(/^0 /, 'none ')))}.`.replace(/^n/, 'N');
}

/** From this likeness on two bars are surely one, wherever they stand; below it a bar may have come from elsewhere. */
const SURELY = 0.8;

/** For each later bar the earlier one it comes from. */
function barsOfOrigin(a: readonly NotedBar[], b: readonly NotedBar[], by: PitchCode): (number | undefined)[] {
  const origins = new Array<number | undefined>(b.length).fill(undefined);
  const settled = new Set<number>();
  const doubtful: number[] = [];
  for (const step of alignBars(a, b, VOICES, by).bars) {
    if (step.b === undefined) continue;
    origins[step.b] = step.a;
    if (step.a === undefined || step.likeness < SURELY) doubtful.push(step.b);
    else settled.add(step.a);
  }
  for (const j of doubtful) {
    const found = a
      .filter((bar) => !settled.has(bar.index))
      .map((bar) => ({ index: bar.index, like: likeBars(bar, b[j]!, VOICES, by) ?? 0 }))
      .reduce((best, next) => (next.like > best.like ? next : best), { index: -1, like: 0 });
    if (found.like < SURELY) continue;
    origins[j] = found.index;
    settled.add(found.index);
  }
  return origins;
}

interface Pairing<F> {
  readonly old: F;
  readonly now: F;
  readonly likeness: number;
  readonly unchanged: boolean;
}

/** How alike two findings of one rule must be to be one; see {@link pairing} for what counts. */
const ENOUGH = 2.5;

/** All findings that could be one, the likeliest first. */
function likelyPairs<F extends ScriptFinding>(
  before: Draft<F>,
  after: Draft<F>,
  barsFrom: readonly (number | undefined)[],
  by: PitchCode,
): Pairing<F>[] {
  const places = new Map<string, { old: F; at: Place }[]>();
  for (const old of before.findings) {
    const at = placeOf(before.score, old);
    const key = `${old.rule} ${at.bar}`;
    places.set(key, [...(places.get(key) ?? []), { old, at }]);
  }
  return after.findings
    .flatMap((now) => {
      const at = placeOf(after.score, now);
      const from = barsFrom[at.bar];
      const olds = from === undefined ? [] : (places.get(`${now.rule} ${from}`) ?? []);
      return olds.flatMap(({ old, at: then }) => pairing(old, now, then.into === at.into, by));
    })
    .sort((p, q) => q.likeness - p.likeness);
}

interface Place {
  /** Index of the bar. */
  readonly bar: number;
  readonly into: Ticks;
}

function placeOf(score: Score, finding: ScriptFinding): Place {
  const at = Math.round(finding.from * CROTCHET);
  const bar = barAt(score, at);
  return { bar: bar.index, into: at - bar.at + bar.offset };
}

/** Place in the bar and notes tell most; voices and harmony less. Without a voice in common it is another finding. */
function pairing<F extends ScriptFinding>(old: F, now: F, samePlace: boolean, by: PitchCode): Pairing<F>[] {
  const sameVoices = old.voices.join() === now.voices.join();
  const shareVoice =
    sameVoices || old.voices.length === 0 || old.voices.some((voice) => now.voices.includes(voice));
  if (!shareVoice) return [];
  const notes = sharedNotes(old, now, by);
  const likeness =
    (samePlace ? 2 : 0.5) + (sameVoices ? 1 : 0) + 2 * notes + (old.context === now.context ? 1 : 0);
  return likeness < ENOUGH
    ? []
    : [
        {
          old,
          now,
          likeness,
          unchanged: samePlace && sameVoices && notes === 1 && old.context === now.context,
        },
      ];
}

/** The share of notes that are the same in the same voice, 0 to 1; 1 where neither finding has notes. */
function sharedNotes(old: ScriptFinding, now: ScriptFinding, by: PitchCode): number {
  const most = Math.max(old.notes.length, now.notes.length);
  if (most === 0) return 1;
  const left = now.notes.map((note) => `${note.voice} ${codeOf(note.pitch)}`);
  let common = 0;
  for (const note of old.notes) {
    const found = left.indexOf(`${note.voice} ${codeOf(note.pitch) + by}`);
    if (found < 0) continue;
    left.splice(found, 1);
    common++;
  }
  return common / most;
}

function codeOf(text: string): PitchCode {
  const pitch = parsePitch(text);
  return pitch === undefined ? Number.NaN : pitchCode(pitch);
}
