/** Where phrases end: at fermatas; without them, where the melody comes to rest on a long note or stops. */
import { VOICES } from '../../score/score.ts';
import type { Texture, Tone } from '../../score/texture.ts';
import { barLength, type Ticks } from '../../score/time.ts';
import type { Phrase } from '../analysis.ts';

type Ending = Pick<Phrase, 'until' | 'end'>;

/** The phrases of a texture, in order; together they cover everything that sounds. */
export function phrasesOf(texture: Texture): Phrase[] {
  const last = lastSound(texture);
  if (last === 0) return [];
  const marked = fermataEnds(texture);
  const inside = (marked.length > 0 ? marked : rhythmicEnds(texture)).filter((ending) => ending.until < last);
  const closing = marked.find((ending) => ending.until >= last);
  const ends: Ending[] = [...inside, closing ?? { until: last, end: finalEnd(texture, last) }];
  let from: Ticks = 0;
  return ends.map(({ until, end }, index) => {
    const phrase = { index, from, until, end };
    from = until;
    return phrase;
  });
}

function lastSound(texture: Texture): Ticks {
  return Math.max(0, ...VOICES.map((voice) => texture.tones[voice].at(-1)?.until ?? 0));
}

function finalEnd(texture: Texture, last: Ticks): Phrase['end'] {
  const bar = texture.score.bars.at(-1);
  return bar !== undefined && last > bar.at ? 'final bar' : 'unfinished';
}

/**
 * The end of the highest voice's note under each fermata. Fermatas of several voices over one chord are one ending,
 * though their notes may differ in length.
 */
function fermataEnds(texture: Texture): Ending[] {
  const ends: { at: Ticks; until: Ticks; end: 'fermata' }[] = [];
  for (const voice of VOICES) {
    for (const tone of texture.tones[voice]) {
      const note = tone.notes.find((n) => n.fermata);
      if (note === undefined) continue;
      const met = ends.some((other) => tone.at < other.until && other.at < tone.until);
      if (!met) ends.push({ at: note.at, until: tone.until, end: 'fermata' });
    }
  }
  return ends.sort((a, b) => a.until - b.until);
}

/** Shorter than this many bars is no phrase. */
const SHORTEST_PHRASE = 1.5;

/**
 * Without fermatas: the melody rests, or holds a note at least twice as long as most of its notes, after at least a
 * bar and a half. Where neither happens for more than six bars, four-bar groups are counted from the first bar.
 */
function rhythmicEnds(texture: Texture): Ending[] {
  const voice = VOICES.find((v) => texture.tones[v].length > 0)!;
  const tones = texture.tones[voice];
  const first = texture.score.bars[0]!;
  const bar = barLength(first.metre);
  const usual = commonestLength(tones);
  const ends: Ending[] = [];
  let from = tones[0]!.at;
  for (const [i, tone] of tones.entries()) {
    const next = tones[i + 1];
    const long = tone.until - tone.at >= 2 * usual;
    const stops = next === undefined || next.at > tone.until;
    if ((long || stops) && tone.until - from >= SHORTEST_PHRASE * bar) {
      ends.push({ until: tone.until, end: 'rhythm' });
      from = tone.until;
    } else if (tone.until - from >= 6 * bar) {
      const split = ends.at(-1)?.until ?? tones[0]!.at;
      const group = tones.findLast((t) => t.until <= split + 4 * bar && t.until > split);
      if (group === undefined) continue;
      ends.push({ until: group.until, end: 'rhythm' });
      from = group.until;
    }
  }
  return ends;
}

/** The length most of the melody's notes have; of two equally common, the longer. */
function commonestLength(tones: readonly Tone[]): Ticks {
  const counts = new Map<Ticks, number>();
  for (const tone of tones) counts.set(tone.until - tone.at, (counts.get(tone.until - tone.at) ?? 0) + 1);
  let best: Ticks = 0;
  let most = 0;
  for (const [length, count] of counts)
    if (count > most || (count === most && length > best)) [best, most] = [length, count];
  return best;
}
