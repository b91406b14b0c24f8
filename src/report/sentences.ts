/** The words around a finding: voices and counts. */
import { listed } from '../english/words.ts';
import type { Severity } from '../rules/rule.ts';
import { VOICE_WORDS, type VoiceName } from '../score/score.ts';
import { isCompound, type Metre } from '../score/time.ts';

/** `tenor`, `tenor and bass`, `soprano, alto and bass`; `all voices` for four. */
export function printVoices(voices: readonly VoiceName[]): string {
  if (voices.length === 4) return 'all voices';
  return listed(voices.map((voice) => VOICE_WORDS[voice]));
}

const PLURALS: Readonly<Record<Severity, string>> = { fault: 'faults', query: 'queries', remark: 'remarks' };

/** `1 fault`, `3 queries`, `no remarks`. */
export function count(number: number, severity: Severity): string {
  return `${number === 0 ? 'no' : number} ${number === 1 ? severity : PLURALS[severity]}`;
}

/** `E♭4` for `Eb4`, `F♯ minor` for `F# minor`: the signs as musicians write them, in any text for people. */
export function withSigns(text: string): string {
  return text.replace(
    /\b([A-G])(#{1,2}|b{1,2})(?![A-Za-z])/g,
    (_, step: string, signs: string) => step + signs.replaceAll('#', '♯').replaceAll('b', '♭'),
  );
}

const BEAT_WORDS: Readonly<Record<number, string>> = {
  1: 'semibreve',
  2: 'minim',
  4: 'crotchet',
  8: 'quaver',
  16: 'semiquaver',
  32: 'demisemiquaver',
};

/** The beat that is counted: a minim in 3/2, a dotted crotchet in 6/8; how it is called, and how many crotchets it lasts. */
export function countedBeat(metre: Metre): { readonly name: string; readonly crotchets: number } {
  const { unit } = metre;
  const compound = isCompound(metre);
  const name = compound ? BEAT_WORDS[unit / 2] : BEAT_WORDS[unit];
  // Three units are a dotted note of twice the unit; no note is twice a semibreve here.
  if (name === undefined) return { name: 'crotchet', crotchets: 1 };
  return compound ? { name: `dotted ${name}`, crotchets: 12 / unit } : { name, crotchets: 4 / unit };
}

/** Beats a minute to one decimal, of so many crotchets a minute. */
export function beatsAMinute(crotchets: number, metre: Metre): number {
  return Math.round((10 * crotchets) / countedBeat(metre).crotchets) / 10;
}

/** The tempo by the beat that is counted: `crotchet = 72` in 4/4, `minim = 36` in 3/2. Takes crotchets a minute. */
export function printTempo(crotchets: number, metre: Metre): string {
  return `${countedBeat(metre).name} = ${beatsAMinute(crotchets, metre)}`;
}
