import { strToU8, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { openScore } from '../../src/open/open.ts';

const bytes = (text: string) => Uint8Array.from(text, (sign) => sign.charCodeAt(0));
const zip = (...names: string[]) => zipSync(Object.fromEntries(names.map((name) => [name, strToU8('<a/>')])));
const CONTAINER = '<container><rootfiles><rootfile full-path="a.own"/></rootfiles></container>';

function says(file: Uint8Array): string {
  const opened = openScore(file);
  if (opened.ok) throw new Error('was read');
  return opened.message;
}

describe('files handed in by mistake', () => {
  it.each([
    ['a PDF document', bytes('%PDF-1.7 …')],
    ['a picture', bytes('\x89PNG\r\n\x1a\n')],
    ['a picture', bytes('\xff\xd8\xff\xe0\0\x10JFIF')],
    ['a picture', bytes('\0\0\0\x18ftypheic')],
    ['a MIDI file', bytes('MThd\0\0\0\x06\0\x01')],
    ['a sound recording', bytes('ID3\x04')],
    ['a sound recording', bytes('RIFF\0\0\0\0WAVEfmt ')],
    ['a film', bytes('\0\0\0\x18ftypisom')],
    ['a word-processor document', bytes('\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1')],
    ['a word-processor document', bytes('{\\rtf1\\ansi')],
    ['a word-processor document', zip('[Content_Types].xml', 'word/document.xml')],
    ['a word-processor document', zip('mimetype', 'content.xml', 'styles.xml', 'META-INF/manifest.xml')],
    ['a notation program’s own file', bytes('\x0fSIB\x10\0')],
    ['a notation program’s own file', strToU8('<?xml version="1.0"?><musicalScore version="4"/>')],
    [
      'a notation program’s own file',
      zipSync({ 'META-INF/container.xml': strToU8(CONTAINER), 'a.own': strToU8('<musicalScore/>') }),
    ],
    ['a web page', strToU8('<!DOCTYPE html>\n<html lang=en><br>Sign in')],
  ])('%s is called by its name, and what is needed is said', (what, file) => {
    const message = says(file);
    expect(message).toContain(`This is ${what}`);
    expect(message).toContain('export, then MusicXML');
  });

  it('says why MIDI is not enough', () => {
    expect(says(bytes('MThd\0\0\0\x06'))).toMatch(/how the notes are spelled/);
  });

  it('sends a zipped folder to be unzipped', () => {
    expect(says(zip('a.musicxml', 'b.musicxml', 'notes.pdf'))).toMatch(
      /^This is a zipped folder with 2 files that may be scores.*Unzip it/,
    );
  });

  it('says nothing of how the reader is built', () => {
    for (const file of ['<score-partwise><part', '<score-partwise>&x;', '<a b=c>', '<score-partwise></b>'])
      expect(says(strToU8(file))).not.toMatch(/unclosed|unexpected|disallowed|tag|attribute|sax/i);
  });
});

describe('text of other days', () => {
  it('reads curly quotes of Windows-1252, as text and as MusicXML', () => {
    const text = bytes('title: \x93Abide\x94 \x96 caf\xe9\nkey: C major\nS: C5*4 |\n');
    const opened = openScore(text);
    expect(opened.ok && opened.score.title).toBe('“Abide” – café');
    const xml = bytes(
      '<?xml version="1.0" encoding="windows-1252"?><score-partwise><work><work-title>\x93A\x94</work-title></work><part-list><score-part id="P1"><part-name>Soprano</part-name></score-part><score-part id="P2"><part-name>Bass</part-name></score-part></part-list>' +
        ['P1', 'P2']
          .map(
            (id) =>
              `<part id="${id}"><measure number="1"><note><pitch><step>C</step><octave>4</octave></pitch><duration>4</duration></note></measure></part>`,
          )
          .join('') +
        '</score-partwise>',
    );
    const read = openScore(xml);
    expect(read.ok && read.score.title).toBe('“A”');
  });

  it('shows signs that move the caret or turn the text as harmless ones', () => {
    const opened = openScore(strToU8('title: a\u001b[2Jb\u202ec\nS: C5*4 |\n'));
    expect(opened.ok && opened.score.title).toBe('a\ufffd[2Jb\ufffdc');
  });
});
