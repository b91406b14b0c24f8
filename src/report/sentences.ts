/** The words around a finding: voices and counts. */
import { listed } from '../english/words.ts';
import type { Severity } from '../rules/rule.ts';
import { VOICE_WORDS, type VoiceName } from '../score/score.ts';
import type { Metre } from '../score/time.ts';

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

/**
 * The tempo by the beat that is counted: `crotchet = 72` in 4/4, `minim = 36` in 3/2, `dotted crotchet = 48` in 6/8.
 * Takes crotchets a minute; gives beats a minute to one decimal.
 */
export function printTempo(crotchets: number, { beats, unit }: Metre): string {
  const compound = beats > 3 && beats % 3 === 0;
  const perMinute = (crotchets * unit) / 4 / (compound ? 3 : 1);
  const larger = BEAT_WORDS[unit / 2];
  // Three units are a dotted note of twice the unit; no note is twice a semibreve here.
  if (compound && larger === undefined) return `crotchet = ${crotchets}`;
  const beat = compound ? `dotted ${larger}` : (BEAT_WORDS[unit] ?? 'crotchet');
  return `${beat} = ${Math.round(perMinute * 10) / 10}`;
}
