/** What is found around one place, at a fraction of the cost of a whole review: for the moment after a keystroke. */
import type { Profile } from '../profiles/profile.ts';
import { excerpt } from '../score/excerpt.ts';
import { barAt } from '../score/place.ts';
import type { Score } from '../score/score.ts';
import type { Tone } from '../score/texture.ts';
import type { Ticks } from '../score/time.ts';
import { reviewScore } from './review.ts';
import type { NearFindings } from './with-near.ts';

/** Bars read on each side of the one that is looked at, so that its chords have their surroundings. */
const BARS_AROUND = 2;

/**
 * Reviews the bar at a moment with its neighbours. What is found in that bar and the ones beside it is mostly what a
 * whole review finds there; a rule that looks at the whole piece may differ, so a whole review should follow. Pure.
 */
export function reviewNear(score: Score, profile: Profile, at: Ticks): NearFindings {
  if (score.bars.length === 0) return { from: 0, until: 0, findings: [] };
  const middle = barAt(score, at).index;
  const end = score.bars.length - 1;
  const { score: part, shift } = excerpt(
    score,
    Math.max(0, middle - BARS_AROUND),
    Math.min(end, middle + BARS_AROUND),
  );
  const from = score.bars[Math.max(0, middle - 1)]!.at;
  const last = score.bars[Math.min(end, middle + 1)]!;
  const until = last.at + last.duration;
  const moved = new Map<Tone, Tone>();
  const whole = (tone: Tone): Tone => {
    const known = moved.get(tone);
    if (known !== undefined) return known;
    const at = tone.at + shift;
    const there: Tone = {
      ...tone,
      id: `${tone.voice}@${at}`,
      at,
      until: tone.until + shift,
      notes: tone.notes.map((note) => ({ ...note, at: note.at + shift })),
    };
    moved.set(tone, there);
    return there;
  };
  const findings = reviewScore(part, profile)
    .findings.filter((f) => f.from + shift >= from && f.from + shift < until)
    .map((f) => ({
      ...f,
      id: moveId(f.id, shift),
      ...(f.because === undefined ? {} : { because: moveId(f.because, shift) }),
      from: f.from + shift,
      until: f.until + shift,
      tones: f.tones.map(whole),
    }));
  return { from, until, findings };
}

function moveId(id: string, shift: Ticks): string {
  return id.replace(/@(\d+)/, (_, ticks) => `@${Number(ticks) + shift}`);
}
