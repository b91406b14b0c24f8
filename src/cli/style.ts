/** `partwise style` and `partwise precedents`: how like the model a piece is, and how the model closed where the tune ends alike. */

import { analyse } from '../harmony/analyse.ts';
import type { Analysis } from '../harmony/analysis.ts';
import { openScore } from '../open/open.ts';
import { WIDTH, wrap } from '../report/wrap.ts';
import { barAt, printBar } from '../score/place.ts';
import { textureOf } from '../score/texture.ts';
import type { Close } from '../style/close.ts';
import { type PhraseEnd, phraseEnds } from '../style/close.ts';
import { closeInWords } from '../style/close-words.ts';
import { type CloseCount, precedentsFor, sameClose } from '../style/precedents.ts';
import { styleOf } from '../style/profile.ts';
import { adviceOn, CAUTION, placeInWords, tooShortInWords } from '../style/words.ts';
import { EXIT } from './exit.ts';
import { readInput } from './input.ts';
import { printFailure } from './paper.ts';

/** Ways of closing shown for one phrase, chords shown for one way, and places to look one up. */
const MOST = { ways: 5, chords: 3, places: 6 };

export async function styleCommand(file: string, options: { readonly json?: true }): Promise<number> {
  const analysis = await analysed(file);
  if (analysis === undefined) return EXIT.unreadable;
  const style = styleOf(analysis);
  if (options.json) {
    const { jsonStyle } = await import('../report/json.ts');
    process.stdout.write(`${JSON.stringify({ file, ...jsonStyle(analysis) })}\n`);
  } else process.stdout.write(`${styleLines(style).join('\n')}\n`);
  return EXIT.fine;
}

function styleLines(style: ReturnType<typeof styleOf>): string[] {
  if (style.kind === 'too short') return wrap(tooShortInWords(style), WIDTH);
  return [
    ...style.values.flatMap((value) => {
      const advice = adviceOn(value);
      return [
        ...wrap(`${value.measure.name}: ${placeInWords(value)}`, WIDTH),
        ...(advice === undefined ? [] : wrap(advice, WIDTH, '    ')),
      ];
    }),
    '',
    ...wrap(CAUTION, WIDTH),
  ];
}

export async function precedentsCommand(file: string, options: { readonly json?: true }): Promise<number> {
  const analysis = await analysed(file);
  if (analysis === undefined) return EXIT.unreadable;
  const ends = phraseEnds(analysis).map((end) => ({ end, found: precedentsFor(end.tune) }));
  if (options.json) {
    const lines = ends.map(({ end, found }) => ({
      bar: barOf(analysis, end),
      tune: end.tune,
      own: end.own ?? null,
      ...found,
    }));
    process.stdout.write(`${JSON.stringify({ file, phrases: lines })}\n`);
    return EXIT.fine;
  }
  if (ends.length === 0)
    process.stdout.write(
      `${wrap('No phrase of the tune comes to an end here: mark the ends with fermatas (! in the text notation).', WIDTH).join('\n')}\n`,
    );
  for (const { end, found } of ends) {
    const place = found.placed ? (end.tune.strong ? ', on a strong beat' : ', on a weak beat') : '';
    const lines = [
      `Phrase ending in ${printBar(barOf(analysis, end))}: the tune goes ${found.degrees.join('–')}${place}. ${found.total} closes of the model:`,
      ...found.closes.slice(0, MOST.ways).flatMap((way) => wayLines(way, end.own)),
      ...standing(end.own, found.closes),
    ];
    process.stdout.write(
      `${lines.flatMap((line) => wrap(line, WIDTH, line.startsWith('  ') ? '    ' : '')).join('\n')}\n\n`,
    );
  }
  return EXIT.fine;
}

function wayLines(way: CloseCount, own: Close | undefined): string[] {
  const yours = own !== undefined && sameClose(own, way) ? ' (yours)' : '';
  const chords = way.chords.slice(0, MOST.chords).map(({ text, count }) => `${text} ${count}`);
  const held = way.suspensions.slice(0, MOST.chords).map(({ text, count }) => `${text} ${count}`);
  const places = way.places.slice(0, MOST.places).map(({ chorale, bar }) => `${chorale} bar ${bar}`);
  return [
    `  ${way.count} × ${closeInWords(way)}${yours}: ${chords.join(', ')}${held.length > 0 ? `; suspended ${held.join(', ')}` : ''}. Look up ${places.join(', ')}.`,
  ];
}

function standing(own: Close | undefined, ways: readonly CloseCount[]): string[] {
  if (own === undefined) return ['  Yours is not written yet, or makes no cadence.'];
  const place = ways.findIndex((way) => sameClose(way, own));
  if (place < 0) return [`  Yours, ${closeInWords(own)}, is not among them.`];
  return [];
}

function barOf({ texture }: Analysis, { phrase }: PhraseEnd): string {
  return barAt(texture.score, phrase.until - 1).number;
}

async function analysed(file: string): Promise<Analysis | undefined> {
  const input = await readInput(file);
  const opened = input.ok ? openScore(input.bytes) : input;
  if (opened.ok) return analyse(textureOf(opened.score));
  process.stderr.write(printFailure(file, opened));
  return undefined;
}
