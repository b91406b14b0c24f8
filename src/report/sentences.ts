/** The words around a finding: voices and counts. */
import type { Severity } from '../rules/rule.ts';
import { VOICE_WORDS, type VoiceName } from '../score/score.ts';

/** `tenor`, `tenor and bass`, `soprano, alto and bass`; `all voices` for four. */
export function printVoices(voices: readonly VoiceName[]): string {
  if (voices.length === 4) return 'all voices';
  return list(voices.map((voice) => VOICE_WORDS[voice]));
}

/** `a`, `a and b`, `a, b and c`. */
export function list(items: readonly string[]): string {
  if (items.length <= 1) return items[0] ?? '';
  return `${items.slice(0, -1).join(', ')} and ${items.at(-1)}`;
}

const PLURALS: Readonly<Record<Severity, string>> = { fault: 'faults', query: 'queries', remark: 'remarks' };

/** `1 fault`, `3 queries`, `no remarks`. */
export function count(number: number, severity: Severity): string {
  return `${number === 0 ? 'no' : number} ${number === 1 ? severity : PLURALS[severity]}`;
}

/** `1 bar`, `8 bars`. */
export function counted(number: number, noun: string): string {
  return `${number} ${noun}${number === 1 ? '' : 's'}`;
}
