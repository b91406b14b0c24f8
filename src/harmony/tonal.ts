/**
 * The only door to the tonal library. It answers wrong questions with empty values instead of errors, so every
 * question is checked before it is asked; what it says about a key is asked once and kept.
 */
import { Key as TonalKey } from 'tonal';
import { type NoteName, parseNoteName, printNoteName } from '../score/pitch.ts';
import type { Key } from './analysis.ts';

/** A key's notes and signature. Degrees are listed from the tonic, seven of them. */
export interface KeyFacts {
  /** Sharps positive, flats negative; beyond ±7 for keys that need double accidentals. */
  readonly signature: number;
  /** Major, or natural minor. */
  readonly scale: readonly NoteName[];
  /** Major, or harmonic minor: the seventh degree is the leading note. */
  readonly harmonic: readonly NoteName[];
  /** Major, or ascending melodic minor. */
  readonly melodic: readonly NoteName[];
}

const facts = new Map<string, KeyFacts>();

/**
 * Scale and signature of a key.
 *
 * @throws RangeError for a tonic altered more than singly: no such key is written.
 */
export function keyFacts(key: Key): KeyFacts {
  const name = printNoteName(key.tonic);
  const id = `${name} ${key.mode}`;
  const known = facts.get(id);
  if (known) return known;
  if (Math.abs(key.tonic.alteration) > 1) throw new RangeError(`${id} is no key that can be written.`);
  const fresh = key.mode === 'major' ? majorFacts(name) : minorFacts(name);
  facts.set(id, fresh);
  return fresh;
}

function majorFacts(tonic: string): KeyFacts {
  const key = TonalKey.majorKey(tonic);
  const scale = names(key.scale);
  return { signature: key.alteration, scale, harmonic: scale, melodic: scale };
}

function minorFacts(tonic: string): KeyFacts {
  const key = TonalKey.minorKey(tonic);
  return {
    signature: key.alteration,
    scale: names(key.natural.scale),
    harmonic: names(key.harmonic.scale),
    melodic: names(key.melodic.scale),
  };
}

function names(scale: readonly string[]): NoteName[] {
  return scale.map((text) => {
    const name = parseNoteName(text);
    if (name === undefined) throw new RangeError(`"${text}" is no note name of ours.`);
    return name;
  });
}
