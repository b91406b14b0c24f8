/** How like the model a script is, as the desk keeps it, and what a class has in common in that. */
import * as z from 'zod';
import { counted, listed } from '../english/words.ts';
import type { Analysis } from '../harmony/analysis.ts';
import { styleOf } from '../style/profile.ts';
import { adviceOn, placeInWords } from '../style/words.ts';

/** Measures by id; empty where the script is too short to tell. */
export const scriptStyleSchema = z.record(
  z.string(),
  z.object({
    name: z.string(),
    /** `12 % of beats; in nine chorales of ten it is between 9 and 75.` */
    sentence: z.string(),
    outside: z.enum(['low', 'high']).optional(),
    /** What to listen for or try, where the value lies outside. */
    advice: z.string().optional(),
  }),
);
export type ScriptStyle = z.infer<typeof scriptStyleSchema>;

export function scriptStyle(analysis: Analysis): ScriptStyle {
  const style = styleOf(analysis);
  if (style.kind !== 'told') return {};
  return Object.fromEntries(
    style.values.map((value) => {
      const { measure, outside } = value;
      const advice = adviceOn(value);
      const kept = { name: measure.name, sentence: placeInWords(value) };
      return [
        measure.id,
        {
          ...kept,
          ...(outside === undefined ? {} : { outside }),
          ...(advice === undefined ? {} : { advice }),
        },
      ];
    }),
  );
}

/** `11 of 13 counts lie where nine of the model's chorales in ten do. Low: movement below the tune. …` */
export function styleEvidence(style: ScriptStyle): { readonly value: number; readonly sentence: string } {
  const values = Object.values(style);
  if (values.length === 0)
    return { value: 0, sentence: 'Too short to be held against the model’s chorales.' };
  const named = (side: 'low' | 'high') => {
    const names = values.filter(({ outside }) => outside === side).map(({ name }) => name.toLowerCase());
    return names.length === 0 ? '' : ` ${side === 'low' ? 'Low' : 'High'}: ${listed(names)}.`;
  };
  const outside = values.filter((value) => value.outside !== undefined).length;
  return {
    value: outside,
    sentence: `${values.length - outside} of ${counted(values.length, 'count')} of style lie where nine of the model’s chorales in ten do.${named('low')}${named('high')}`,
  };
}

/** What a sheet has room for: the first measures that lie outside, each with its figure and what to try. */
export function styleAdvice(style: ScriptStyle, most = 2): string[] {
  return Object.values(style)
    .filter(({ advice }) => advice !== undefined)
    .slice(0, most)
    .map(({ name, sentence, advice }) => `${name}: ${sentence} ${advice}`);
}

/** How many scripts of a class lie outside on each side, by measure. */
export type StyleTally = Readonly<
  Record<
    string,
    { readonly name: string; readonly told: number; readonly low: number; readonly high: number }
  >
>;

export function styleTally(style: ScriptStyle): StyleTally {
  return Object.fromEntries(
    Object.entries(style).map(([id, { name, outside }]) => [
      id,
      { name, told: 1, low: outside === 'low' ? 1 : 0, high: outside === 'high' ? 1 : 0 },
    ]),
  );
}

export function joinedStyle(a: StyleTally, b: StyleTally): StyleTally {
  const both: Record<string, StyleTally[string]> = { ...a };
  for (const [id, more] of Object.entries(b)) {
    const known = Object.hasOwn(both, id) ? both[id]! : { name: more.name, told: 0, low: 0, high: 0 };
    both[id] = {
      name: more.name,
      told: known.told + more.told,
      low: known.low + more.low,
      high: known.high + more.high,
    };
  }
  return both;
}

/** Sentences for what at least two scripts, and a third of those long enough to tell, have in common; the commonest first. */
export function classStyle(tally: StyleTally): string[] {
  return Object.values(tally)
    .flatMap(({ name, told, low, high }) => [
      { name, told, side: 'less', scripts: low },
      { name, told, side: 'more', scripts: high },
    ])
    .filter(({ told, scripts }) => scripts >= 2 && scripts * 3 >= told)
    .sort((a, b) => b.scripts - a.scripts)
    .map(
      ({ name, told, side, scripts }) =>
        `${name}: ${side} than is usual in the model’s chorales, in ${scripts} of the ${counted(told, 'script')} long enough to compare.`,
    );
}
