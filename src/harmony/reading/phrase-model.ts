/**
 * What speaks for and against a phrase's ending with a note of the melody, and for a phrase of a length: features by
 * name, which `phrase-weights.ts` weighs and `phrases.ts` puts together over the whole melody.
 */
import { intervalBetween } from '../../score/interval.ts';
import { fifthsPlace } from '../../score/pitch.ts';
import { metricalStrength } from '../../score/place.ts';
import { VOICES, type VoiceName } from '../../score/score.ts';
import { lastBegun } from '../../score/search.ts';
import { type Slice, type Texture, type Tone, toneIn } from '../../score/texture.ts';
import { barLength, beatLength, type Ticks } from '../../score/time.ts';
import { rootAsSpelt } from '../questions/spelling.ts';

/** The melody as the search for endings sees it. */
export interface Melody {
  readonly texture: Texture;
  readonly voice: VoiceName;
  readonly tones: readonly Tone[];
  /** The slice in which each tone begins, and the one in which it ends. */
  readonly first: readonly Slice[];
  readonly last: readonly Slice[];
  /** The commonest length of its notes, the longer of two. */
  readonly usual: Ticks;
  /** How many notes last at least as long as each of them, as a share of all. */
  readonly asLong: readonly number[];
  /** About how many syllables are sung before each tone, shorter notes than usual counting less. */
  readonly syllables: readonly number[];
  /** How many places have the rhythm of the opening, and how many that of the close: a share told roughly. */
  readonly openings: string;
  readonly closings: string;
  readonly bar: Ticks;
  readonly beat: Ticks;
}

/** The highest voice that sings; undefined for a silent score. */
export function melodyOf(texture: Texture): Melody | undefined {
  const voice = VOICES.find((v) => texture.tones[v].length > 0);
  if (voice === undefined) return undefined;
  const tones = texture.tones[voice];
  const { metre } = texture.score.bars[0]!;
  const first: Slice[] = [];
  const last: Slice[] = [];
  let s = 0;
  for (const tone of tones) {
    while (texture.slices[s]!.at < tone.at) s++;
    first.push(texture.slices[s]!);
    let e = s;
    while (e + 1 < texture.slices.length && texture.slices[e + 1]!.at < tone.until) e++;
    last.push(texture.slices[e]!);
  }
  const usual = commonestLength(tones);
  return {
    texture,
    voice,
    tones,
    first,
    last,
    usual,
    asLong: sharesAsLong(tones),
    syllables: syllablesBefore(tones, usual),
    openings: placesAlike(tones, (i) => likeFirst({ tones }, i)),
    closings: placesAlike(tones, (i) => likeLast({ tones }, i)),
    bar: barLength(metre),
    beat: beatLength(metre),
  };
}

function commonestLength(tones: readonly Tone[]): Ticks {
  const counts = new Map<Ticks, number>();
  for (const tone of tones) counts.set(tone.until - tone.at, (counts.get(tone.until - tone.at) ?? 0) + 1);
  let best: Ticks = 0;
  let most = 0;
  for (const [length, count] of counts)
    if (count > most || (count === most && length > best)) [best, most] = [length, count];
  return best;
}

function sharesAsLong(tones: readonly Tone[]): number[] {
  const lengths = tones.map(({ at, until }) => until - at).sort((a, b) => a - b);
  const shorter = (length: Ticks) => lastBegun(lengths, length - 1, (other) => other) + 1;
  return tones.map(({ at, until }) => 1 - shorter(until - at) / tones.length);
}

function syllablesBefore(tones: readonly Tone[], usual: Ticks): number[] {
  const before = [0];
  for (const { at, until } of tones) before.push(before.at(-1)! + Math.min(1, (until - at) / usual));
  return before;
}

/** A ratio told roughly. */
function ratio(a: Ticks, b: Ticks): string {
  const r = a / b;
  if (r < 1) return r <= 0.5 ? 'half' : 'less';
  if (r === 1) return 'same';
  if (r < 2) return 'more';
  return r < 3 ? 'twice' : r < 4 ? 'thrice' : 'four times';
}

/** A share told roughly. */
function share(part: number): string {
  return part <= 0.15 ? 'few' : part <= 0.3 ? 'some' : part <= 0.5 ? 'many' : 'most';
}

function way(from: Tone | undefined, to: Tone | undefined): string {
  if (from === undefined || to === undefined) return 'none';
  const { steps, semitones } = intervalBetween(from.pitch, to.pitch);
  if (semitones === 0) return 'repeated';
  const size =
    Math.abs(steps) === 1 ? 'step' : Math.abs(steps) === 3 || Math.abs(steps) === 4 ? 'fifth' : 'leap';
  return `${size} ${semitones > 0 ? 'up' : 'down'}`;
}

/** Calls with each feature of a phrase's ending with tone `i`, which is not the last. */
export function endFeatures(melody: Melody, i: number, add: (name: string) => void): void {
  const { tones, texture, usual, beat } = melody;
  const tone = tones[i]!;
  const next = tones[i + 1]!;
  const length = tone.until - tone.at;
  add('end');
  const long = ratio(length, usual);
  add(`length to usual ${long}`);
  add(`length to beat ${ratio(length, beat)}`);
  add(`as long ${share(melody.asLong[i]!)} ${long}`);
  add(`length to next ${ratio(length, next.until - next.at)} ${long}`);
  const before = tones[i - 1];
  if (before !== undefined) add(`length to last ${ratio(length, before.until - before.at)} ${long}`);
  if (next.at > tone.until) add('rest after');
  const { bar } = melody.first[i]!;
  const start = metricalStrength(bar, tone.at);
  const after = melody.first[i + 1]!;
  add(`begins ${start} next ${metricalStrength(after.bar, next.at)} ${long}`);
  const degree = fifthsPlace(tone.pitch) - bar.key.fifths;
  const told = degree < -1 || degree > 5 ? 'other' : String(degree);
  add(`degree ${told} ${way(before, tone)}`);
  add(`leaves ${way(tone, next)}`);
  openings(melody, i, add);
  closings(melody, i, add);
  harmony(melody, i, add);
  signs(texture, tone, next, add);
}

/** Where in its bar a tone begins. */
function into({ first }: Melody, i: number): Ticks {
  return first[i]!.at - first[i]!.bar.at + first[i]!.bar.offset;
}

/** Whether the next phrase would begin as the melody does: at the same place of the bar, with the same rhythm. */
function openings(melody: Melody, i: number, add: (name: string) => void): void {
  const { tones, beat } = melody;
  const next = tones[i + 1]!;
  add(`begins ${into(melody, i + 1) === into(melody, 0) ? 'where' : 'not where'} the first begins`);
  add(`next on ${into(melody, i + 1) % beat === 0 ? 'a beat' : 'no beat'}`);
  add(`begins with the first rhythm ${likeFirst(melody, i + 1)}`);
  if (likeFirst(melody, i + 1) === MOST_ALIKE) add(`begins with the first rhythm as ${melody.openings} do`);
  let same = 0;
  while (
    same < 6 &&
    i + 1 + same < tones.length &&
    tones[same]!.pitch.step === tones[i + 1 + same]!.pitch.step &&
    tones[same]!.pitch.octave === tones[i + 1 + same]!.pitch.octave
  )
    same++;
  if (same > 2) add(`begins with the first notes ${same}`);
  if (next.until - next.at < tones[i]!.until - tones[i]!.at) add('goes on faster');
}

/** Whether the phrase would close as the melody does: at the same place of the bar, with the same rhythm. */
function closings(melody: Melody, i: number, add: (name: string) => void): void {
  const end = melody.tones.length - 1;
  const apart = into(melody, i) - into(melody, end);
  add(
    `last note ${apart === 0 ? 'where' : (2 * apart) % melody.bar === 0 ? 'half a bar from where' : 'not where'} the last begins`,
  );
  add(`closes with the last rhythm ${likeLast(melody, i)}`);
  if (likeLast(melody, i) === MOST_ALIKE) add(`closes with the last rhythm as ${melody.closings} do`);
}

/** More notes of the same lengths than this say no more. */
const MOST_ALIKE = 6;

/** How many notes from a tone on are as long as the melody's first. */
function likeFirst({ tones }: { readonly tones: readonly Tone[] }, i: number): number {
  let alike = 0;
  while (
    alike < MOST_ALIKE &&
    i + alike < tones.length &&
    tones[alike]!.until - tones[alike]!.at === tones[i + alike]!.until - tones[i + alike]!.at
  )
    alike++;
  return alike;
}

/** How many notes before a tone are as long as those before the melody's last. */
function likeLast({ tones }: { readonly tones: readonly Tone[] }, i: number): number {
  const end = tones.length - 1;
  let alike = 0;
  while (alike < MOST_ALIKE && i - alike >= 1) {
    const [a, b] = [tones[i - alike - 1]!, tones[end - alike - 1]!];
    if (a.until - a.at !== b.until - b.at) break;
    alike++;
  }
  return alike;
}

/** Whether many places are as much alike as can be told: then it says little. */
function placesAlike(tones: readonly Tone[], alike: (i: number) => number): string {
  const count = tones.filter((_, i) => alike(i) === MOST_ALIKE).length;
  return share(count / tones.length);
}

/** What the other voices do: how they come to rest, on what, and whether they begin again together. */
function harmony(melody: Melody, i: number, add: (name: string) => void): void {
  const { texture, tones, voice } = melody;
  const tone = tones[i]!;
  const next = tones[i + 1]!;
  const [first, last, after] = [melody.first[i]!, melody.last[i]!, melody.first[i + 1]!];
  const others = VOICES.filter((v) => v !== voice && toneIn(last, v) !== undefined);
  if (others.length === 0) {
    add('alone');
    return;
  }
  const before = texture.slices[first.index - 1];
  const low = VOICES.findLast((v) => others.includes(v))!;
  const bass = toneIn(last, low)!;
  const earlier = before && toneIn(before, low);
  add(`bass ${way(earlier, bass)}`);
  let moves = 0;
  for (let s = first.index + 1; s <= last.index; s++) moves++;
  const few = others.length === 1 ? 'one other' : 'others';
  add(`${few} move ${Math.min(moves, 3)} ${ratio(tone.until - tone.at, melody.usual)}`);
  let held = 0;
  let fresh = 0;
  for (const v of others) {
    const there = toneIn(after, v);
    if (there === undefined) continue;
    if (there.at < next.at) held++;
    else fresh++;
  }
  add(`${few} held over ${held}`);
  add(`${few} begin ${fresh}`);
  const names = VOICES.flatMap((v) => toneIn(last, v)?.pitch ?? []);
  const root = rootAsSpelt(names);
  const count = new Set(names.map(fifthsPlace)).size;
  const over =
    root === undefined ? 'none' : fifthsPlace(root) === fifthsPlace(bass.pitch) ? 'root' : 'inverted';
  if (others.length > 1) add(`rests on ${over} ${count}`);
  const degree = fifthsPlace(bass.pitch) - first.bar.key.fifths;
  add(`bass degree ${degree < -1 || degree > 5 ? 'other' : degree}`);
}

/** What is printed: double bars and repeats; the verse's stops. */
function signs(texture: Texture, tone: Tone, next: Tone, add: (name: string) => void): void {
  const { bars } = texture.score;
  const bar = bars.find(({ at, duration }) => tone.until > at && tone.until <= at + duration);
  const following = bar && bars[bar.index + 1];
  if (bar?.repeatEnd && tone.until === bar.at + bar.duration) add('repeat');
  if (following?.repeatStart && next.at === following.at) add('repeat');
  const words = tone.notes[0]!.lyrics?.[0]?.trim();
  const onward = next.notes[0]!.lyrics?.[0]?.trim();
  if (words === undefined || words === '') {
    // A verse whose note has no syllable goes on with the one before.
    if (onward !== undefined) add('verse silent');
    return;
  }
  const stop = /[.!?]["'’”»]*$/.test(words)
    ? 'full stop'
    : /[,;:–—]["'’”»]*$/.test(words)
      ? 'stop'
      : 'no stop';
  add(`verse ${stop}`);
  if (/-$/.test(words)) add('verse inside a word');
  if (onward !== undefined && /^["'‘“«]*\p{Lu}/u.test(onward)) add('verse capital');
}

/** Calls with each feature of a phrase from tone `from` to tone `to`, whatever the others are. */
export function spanFeatures(melody: Melody, from: number, to: number, add: (name: string) => void): void {
  const { bar, beat, tones, syllables } = melody;
  const length = tones[to]!.until - startOf(melody, from);
  const bars = length / bar;
  const told =
    bars < 1
      ? 'under 1'
      : bars > 8
        ? 'over 8'
        : bars > 4.5
          ? `over ${Math.floor(bars)}`
          : String(Math.round(bars * 2) / 2);
  add(`bars ${told}`);
  add(
    length % bar === 0
      ? 'whole bars'
      : (2 * length) % bar === 0
        ? 'half bars'
        : length % beat === 0
          ? 'beats'
          : 'uneven',
  );
  const sung = Math.round(syllables[to + 1]! - syllables[from]!);
  add(`syllables ${sung > 16 ? 'over 16' : sung > 12 ? 'over 12' : sung}`);
}

/** A phrase begins where the one before it ended, rests and all. */
function startOf({ tones }: Melody, from: number): Ticks {
  return from === 0 ? tones[0]!.at : tones[from - 1]!.until;
}

/** Calls with each feature of a phrase of a length, where most phrases are as long as `usual`. */
export function lengthFeatures(length: Ticks, usual: Ticks, add: (name: string) => void): void {
  add(
    usual === length
      ? 'as long as usual'
      : usual === 2 * length || 2 * usual === length
        ? 'half or twice as long'
        : 'other length',
  );
}
