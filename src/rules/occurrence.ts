/** How rules make an occurrence out of the tones it is about. */
import type { Analysis } from '../harmony/analysis.ts';
import type { HeardStep } from '../harmony/by-ear/heard-steps.ts';
import type { HarmonyStep } from '../harmony/questions/progression.ts';
import { type Voicing, voicings } from '../harmony/questions/voicing.ts';
import { placeAt, printPlace } from '../score/place.ts';
import { VOICES, type VoiceName } from '../score/score.ts';
import { type Tone, toneIn } from '../score/texture.ts';
import type { Occurrence } from './rule.ts';
import { inOrder, voicesOf } from './wording.ts';

/** An occurrence about these tones: its voices and the order of its tones follow from them. */
export function about(tones: readonly Tone[], rest: Omit<Occurrence, 'voices' | 'tones'>): Occurrence {
  const ordered = inOrder(tones);
  return { ...rest, voices: voicesOf(ordered), tones: ordered };
}

/** The tones these voices sing when a chord begins. */
export function openingTones(voicing: Voicing, voices: readonly VoiceName[] = VOICES): Tone[] {
  const slice = voicing.slices[0];
  return slice === undefined ? [] : voices.flatMap((voice) => toneIn(slice, voice) ?? []);
}

/** Soprano and bass at the beginning of both chords of a step. */
export function outerTones(analysis: Analysis, { from, to }: HarmonyStep): Tone[] {
  const known = voicings(analysis);
  return [from, to].flatMap(({ chord }) => openingTones(known[chord.index]!, ['S', 'B']));
}

/** A remark about soprano and bass of a step that is heard, whatever the reading makes of it. `say` is told its place. */
export function heardRemark(
  { texture }: Analysis,
  { from, to }: HeardStep,
  say: (where: string) => string,
): Occurrence {
  const tones = [from, to].flatMap(({ slices }) =>
    (['S', 'B'] as const).flatMap((voice) => toneIn(slices[0]!, voice) ?? []),
  );
  const message = say(printPlace(placeAt(texture.score, from.at)));
  return about(tones, { severity: 'remark', from: from.at, until: to.until, message });
}

/**
 * What was found, and of what a second witness says only that which touches nothing found: no place is named twice.
 * In order of time.
 */
export function besides(found: readonly Occurrence[], more: readonly Occurrence[]): Occurrence[] {
  const touches = (a: Occurrence, b: Occurrence) =>
    a.from < b.until && b.from < a.until && a.voices.some((voice) => b.voices.includes(voice));
  const kept = found.slice();
  for (const occurrence of more) if (!kept.some((known) => touches(known, occurrence))) kept.push(occurrence);
  return kept.sort((a, b) => a.from - b.from);
}

/** The first of the occurrences that begin at the same moment: a step read in two keys is one step. */
export function oncePerPlace(occurrences: readonly Occurrence[]): Occurrence[] {
  return occurrences.filter((occurrence, i) => occurrences[i - 1]?.from !== occurrence.from);
}
