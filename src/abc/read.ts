/// <reference path="./abcjs.d.ts" />
/**
 * A tune in ABC, the text notation in which folk and hymn tunes are passed round (the standard of abcnotation.com, 2.1),
 * → Score. One voice is a tune; several are the voices of a setting, told apart as those of any file.
 */
import Parse from 'abcjs/src/parse/abc_parse.js';
import {
  type MusicXmlReading,
  type ReadOptions,
  readSource,
  type VoiceAssignment,
} from '../musicxml/index.ts';
import { Refused, refusalOf, refuse } from '../refusal/refusal.ts';
import type { ReaderRemark } from '../score/score.ts';
import { lastBegun } from '../score/search.ts';
import { ABC_LIMITS } from './limits.ts';
import { type ParsedVoice, type Reach, sourceOf } from './source.ts';
import { type VoiceText, voicesIn } from './voices.ts';

/** Reads the first tune of a text. Never throws. */
export function readAbc(text: string, options: ReadOptions = {}): MusicXmlReading {
  try {
    const { tune, others } = firstTune(text);
    const refused = notRead(tune);
    if (refused !== undefined) return refuse(refused);
    const remarks: ReaderRemark[] = others > 0 ? [{ message: moreTunes(others) }] : [];
    const voices = voicesIn(tune).map((voice) => parsed(voice, remarks));
    const source = sourceOf(voices);
    return readSource(
      { ...source, remarks: [...source.remarks, ...remarks] },
      forTune(source.parts.length, options),
    );
  } catch (error) {
    if (error instanceof Refused) return { ok: false, ...refusalOf(error) };
    return refuse(
      'This looks like a tune in ABC, but is not written as ABC should be. Look through its fields (X:, T:, M:, L:, K:), or export it as MusicXML.',
    );
  }
}

/** Of a tune by itself nobody needs to ask which voice it is. */
function forTune(parts: number, options: ReadOptions): ReadOptions {
  const voices: VoiceAssignment = { S: '1' };
  return parts === 1 && options.voices === undefined ? { ...options, voices } : options;
}

/** The text up to the second tune, and how many more there are. */
function firstTune(text: string): { readonly tune: string; readonly others: number } {
  const begins = [...text.matchAll(/^X:/gm)].map(({ index }) => index);
  return { tune: text.slice(0, begins[1] ?? text.length), others: Math.max(0, begins.length - 1) };
}

function moreTunes(others: number): string {
  return `The file holds ${others + 1} tunes; the first was read.`;
}

/** What of ABC is not read, in a sentence; undefined where all of it is. */
function notRead(tune: string): string | undefined {
  if (tune.length > ABC_LIMITS.text) {
    return `The tune has more than ${ABC_LIMITS.text / 1024} kB of text, too much for one exercise.`;
  }
  const music = tune.split('\n').filter((line) => !/^([A-Za-z+]:|%)/.test(line));
  if (music.some((line) => line.includes('&'))) {
    return 'The tune sets two voices on one line with &, which is not read here. Give each voice lines of its own, begun with V:.';
  }
  if (music.join('').split('{').length - 1 > ABC_LIMITS.graces) {
    return `The tune has more than ${ABC_LIMITS.graces} groups of grace notes, too many for one exercise.`;
  }
  if (/\b(transpose|middle|octave)=/.test(tune)) {
    return 'The tune is written at another pitch than it sounds at (transpose=, middle= or octave=), which is not read here. Write it at its own pitch, or export it as MusicXML.';
  }
  return undefined;
}

function parsed({ name, text }: VoiceText, remarks: ReaderRemark[]): ParsedVoice {
  const parser = new Parse();
  parser.parse(text, {});
  const ends: number[] = [];
  for (let at = text.indexOf('\n'); at >= 0; at = text.indexOf('\n', at + 1)) ends.push(at);
  for (const warning of (parser.getWarnings() ?? []).slice(0, 10)) {
    const remark = remarkFor(warning);
    if (remark !== undefined && !remarks.some(({ message }) => message === remark.message))
      remarks.push(remark);
  }
  return { name, tune: parser.getTune(), reach: reachIn(text), lineAt: (at) => lineAt(ends, at) };
}

/** The parser's warnings name a line and a column, and quote the file as a web page would; only the place is told. */
function remarkFor(warning: string): ReaderRemark | undefined {
  const [, line, column] = /^Music Line:(\d{1,6}):(\d{1,6}):/.exec(warning) ?? [];
  if (line === undefined) return undefined;
  return {
    message: `Something at column ${column} of line ${line} could not be read as ABC and was passed over; look whether the notes there are right.`,
    line: Number(line),
    column: Number(column),
  };
}

function reachIn(text: string): Reach {
  const said = /^(?:%%|I:)propagate-accidentals (not|octave|pitch)/m.exec(text)?.[1];
  return (said as Reach | undefined) ?? 'pitch';
}

/** From 1; `ends` are the places of the line ends, in order. */
function lineAt(ends: readonly number[], at: number): number {
  return lastBegun(ends, at - 1, (end) => end) + 2;
}
