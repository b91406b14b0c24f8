import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { strToU8, unzipSync, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import {
  markMusicXml,
  readMusicXml,
  type ScoreAnnotations,
  writeMusicXml,
} from '../../src/musicxml/index.ts';
import { readNotation } from '../../src/notation/index.ts';
import { CHORALE } from '../../src/profiles/profile.ts';
import { annotationsOf } from '../../src/report/annotations.ts';
import { reviewScore } from '../../src/review/review.ts';
import { CROTCHET } from '../../src/score/time.ts';
import { lostOrForeign } from '../support/marked.ts';
import { CHORALES, haveChorales, haveSchema, SHARED, SUITE } from '../support/musicxml.ts';
import { sampled } from '../support/sampled.ts';
import { schemaFaults } from '../support/schema.ts';

const EXERCISES = new URL('../../fixtures/exercises/', import.meta.url).pathname;

interface Marked {
  readonly name: string;
  readonly before: Uint8Array;
  readonly after: Uint8Array;
}

/** The file reviewed and marked, or undefined where it can't be read. */
function marked(name: string, before: Uint8Array): Marked | undefined {
  const read = readMusicXml(before);
  if (!read.ok) return undefined;
  const after = markMusicXml(before, annotationsOf(reviewScore(read.score, CHORALE)));
  return { name, before, after };
}

/** The score inside, decoded as Latin-1: a byte a sign, whatever the encoding, so that nothing is hidden by decoding. */
function byteText(bytes: Uint8Array): string {
  const file = bytes[0] === 0x50 && bytes[1] === 0x4b ? scoreIn(bytes) : bytes;
  return Buffer.from(file).toString('latin1').replaceAll('\0', '');
}

function scoreIn(bytes: Uint8Array): Uint8Array {
  const entries = Object.entries(unzipSync(bytes)).filter(
    ([name]) => /\.(musicxml|xml)$/i.test(name) && !/container\.xml$/i.test(name),
  );
  return entries[0]![1];
}

function text(bytes: Uint8Array): string {
  return Buffer.from(bytes[0] === 0x50 && bytes[1] === 0x4b ? scoreIn(bytes) : bytes).toString('utf8');
}

function again({ name, before, after }: Marked): void {
  const reading = readMusicXml(after);
  const original = readMusicXml(before);
  if (!reading.ok || !original.ok) throw new Error(`${name}: ${reading.ok || reading.message}`);
  expect(reading.marked, name).toBe(true);
  expect({ ...reading.score, remarks: [] }, name).toEqual({ ...original.score, remarks: [] });
  expect(lostOrForeign(byteText(before), byteText(after)), name).toEqual([]);
  const twice = markMusicXml(after, annotationsOf(reviewScore(reading.score, CHORALE)));
  expect(Buffer.compare(twice, after), name).toBe(0);
}

const filesIn = (folder: string) =>
  existsSync(folder)
    ? readdirSync(folder)
        .filter((file) => /\.(xml|musicxml|mxl|txt)$/i.test(file))
        .map((file) => folder + file)
    : [];

const SOURCES = [
  ['our exercises', filesIn(EXERCISES).filter((file) => file.endsWith('.musicxml'))],
  ['the suite', filesIn(SUITE)],
  ['the dialects', sampled(filesIn(`${SHARED}dialects/`), 3)],
  ['rich scripts', filesIn(`${SHARED}own/`)],
  // Each takes half a second.
  ['chorales', haveChorales ? sampled(filesIn(CHORALES), 20) : []],
] as const;

describe('marks put into the pupil’s own file (open data skipped where ../shared is absent)', () => {
  it.each(SOURCES.filter(([, files]) => files.length > 0))(
    'keep every token, the score and the bytes: %s',
    (name, files) => {
      const all = files.flatMap((file) => marked(basename(file), readFileSync(file)) ?? []);
      if (name !== 'the suite') expect(all.length).toBeGreaterThan(2);
      for (const one of all) again(one);
    },
    120_000,
  );

  it.skipIf(!haveSchema).each(SOURCES.filter(([, files]) => files.length > 0))(
    'make nothing invalid that was valid: %s (skipped without the schema)',
    async (_, files) => {
      const all = files.flatMap((file) => marked(basename(file), readFileSync(file)) ?? []);
      const faults = async (which: 'before' | 'after') =>
        (await schemaFaults(all.map((one) => ({ name: one.name, xml: text(one[which]) })))).map((fault) =>
          fault.replace(/:\d+:/, ':'),
        );
      const before = new Set(await faults('before'));
      expect((await faults('after')).filter((fault) => !before.has(fault))).toEqual([]);
    },
    300_000,
  );

  const CLOSED = writeMusicXml(
    readNotation('key: C major\n\nS: C5! D5*3 |\nA: G4 G4*3 |\nT: E4 D4 D4 D4 |\nB: C3 G2*3 |').score,
    { layout: 'closed score' },
  );
  const MARKS: ScoreAnnotations = {
    noteheads: [{ voice: 'T', at: 0, colour: '#B3261E' }],
    numbers: [
      { at: 0, voice: 'T', text: '1', colour: '#B3261E', bold: true },
      { at: 0, voice: 'B', text: '2', colour: '#9A5B00', bold: false },
      { at: CROTCHET * 1.5, voice: 'S', text: '3', colour: '#9A5B00', bold: false },
    ],
    rows: [
      [
        { at: 0, text: 'I' },
        { at: CROTCHET, text: 'V' },
        { at: CROTCHET * 2, text: 'V7' },
        { at: CROTCHET * 2.5, text: 'V65' },
      ],
      [{ at: 0, text: 'C major:' }],
    ],
    list: ['1  one & all', '2  <two>'],
  };
  const mark = (xml: string) => Buffer.from(markMusicXml(strToU8(xml), MARKS)).toString('utf8');

  it('stand where they are wanted', () => {
    const xml = mark(CLOSED);
    expect(xml.match(/<notehead color="#B3261E">normal<\/notehead>/g)).toHaveLength(1);
    expect(xml.match(/<words[^>]*>1, 2<\/words>/g)).toHaveLength(1);
    expect(xml).toMatch(/>3<\/words><\/direction-type><offset>0.5<\/offset><staff>1<\/staff>/);
    expect(xml).toContain('1  one &amp; all&#10;2  &lt;two&gt;</words>');
    // What changes over a held bass stands under the tenor's note on the same staff.
    expect(
      [...xml.matchAll(/name="numerals"[^>]*><syllabic>single<\/syllabic><text>(.*?)</g)].map((m) => m[1]),
    ).toEqual(['V7&#8211;V65', 'I', 'V']);
  });

  it('leave a notehead of the pupil’s own as it is, but for our colour', () => {
    const own = CLOSED.replace('<stem>up</stem>', '<stem>up</stem><notehead parentheses="yes">x</notehead>');
    const read = readMusicXml(strToU8(own));
    expect(read.ok).toBe(true);
    const onSoprano = { ...MARKS, noteheads: [{ voice: 'S', at: 0, colour: '#B3261E' }] as const };
    const once = markMusicXml(strToU8(own), onSoprano);
    expect(Buffer.from(once).toString()).toContain(
      '<notehead parentheses="yes" color="#B3261E">x</notehead>',
    );
    expect(markMusicXml(once, onSoprano)).toEqual(once);
    const blue = own.replace('<notehead parentheses="yes">', '<notehead color="#0000FF">');
    expect(Buffer.from(markMusicXml(strToU8(blue), onSoprano)).toString()).toContain(
      '<notehead color="#0000FF">x<',
    );
  });

  it('keep bytes of every encoding, and every other file of an archive', () => {
    const title = CLOSED.replace(
      '<identification>',
      '<movement-title>für dich</movement-title><identification>',
    );
    const latin = Buffer.from(title.replace('encoding="UTF-8"', 'encoding="ISO-8859-1"'), 'latin1');
    const wide = Buffer.concat([
      Buffer.from([0xff, 0xfe]),
      Buffer.from(title.replace('UTF-8', 'UTF-16'), 'utf16le'),
    ]);
    const marked = Buffer.from(markMusicXml(strToU8(title), MARKS)).toString('utf8');
    expect(Buffer.from(markMusicXml(latin, MARKS)).toString('latin1')).toBe(
      marked.replace('encoding="UTF-8"', 'encoding="ISO-8859-1"'),
    );
    expect(Buffer.from(markMusicXml(wide, MARKS)).subarray(2).toString('utf16le')).toBe(
      marked.replace('UTF-8', 'UTF-16'),
    );
    const packed = zipSync({ 'page.pdf': strToU8('%PDF'), 'a.musicxml': strToU8(title) });
    const entries = unzipSync(markMusicXml(packed, MARKS));
    expect(Object.keys(entries)).toEqual(['page.pdf', 'a.musicxml']);
    expect(Buffer.from(entries['page.pdf']!).toString()).toBe('%PDF');
    expect(Buffer.from(entries['a.musicxml']!).toString()).toBe(marked);
  });

  it('see through a check that can fail', () => {
    expect(lostOrForeign('<a>x</a>', '<a>x</a>')).toEqual([]);
    expect(lostOrForeign('<a>x<b/></a>', '<a>x</a>')).not.toEqual([]);
    expect(lostOrForeign('<a>x</a>', '<a><?partwise begin?><sound/><?partwise end?>x</a>')).not.toEqual([]);
  });
});
