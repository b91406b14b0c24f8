/** The words around a finding: voices and counts. */
import { listed } from '../english/words.ts';
import type { Severity } from '../rules/rule.ts';
import { VOICE_WORDS, type VoiceName } from '../score/score.ts';

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
