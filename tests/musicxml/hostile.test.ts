import { strToU8, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { LIMITS, readMusicXml, writeMxl } from '../../src/musicxml/index.ts';
import { readNotation } from '../../src/notation/index.ts';

const MXL = writeMxl(
  readNotation('title: A\nmetre: 4/4\n\nS: C5*4 |\nA: G4*4 |\nT: E4*4 |\nB: C3*4 |').score,
);
const CONTAINER = '<container><rootfiles><rootfile full-path="s.xml"/></rootfiles></container>';

function refusal(file: Uint8Array | string) {
  const began = performance.now();
  const reading = readMusicXml(typeof file === 'string' ? strToU8(file) : file);
  const took = performance.now() - began;
  if (reading.ok) throw new Error('was read');
  expect(reading.message).not.toMatch(/mistake in Partwise/);
  // Two seconds are the promise; the bench measures, this only catches a hang.
  expect(took).toBeLessThan(10_000);
  return reading;
}

const says = (file: Uint8Array | string) => refusal(file).message;

/** One part with one bar of this content. */
const score = (content: string, list = '<score-part id="P1"><part-name>S</part-name></score-part>') =>
  `<score-partwise><part-list>${list}</part-list><part id="P1"><measure number="1">${content}</measure></part></score-partwise>`;
const attributes = (more: string) => `<attributes>${more}</attributes>`;
const note = (inside: string) => `<note>${inside}</note>`;
const C = '<pitch><step>C</step><octave>5</octave></pitch>';

describe('what is no score', () => {
  it.each([
    ['nothing', '', /^The file is empty/],
    ['white space', '  \n ', /not well-formed|not a whole MusicXML score/],
    ['words', 'Dear teacher, here is my exercise', /not well-formed XML/],
    ['a web page', '<!DOCTYPE html><html><body>hello</body></html>', /^This is a web page/],
    ['another XML', '<svg xmlns="http://www.w3.org/2000/svg"/>', /outermost element is "svg"/],
    ['an opus', '<opus><score xlink:href="a.xml"/></opus>', /only lists other scores/],
    ['a part by itself', '<part id="P1"><measure/></part>', /not a whole MusicXML score/],
    ['a score without parts', '<score-partwise/>', /The file has no parts/],
  ])('%s', (_what, file, sentence) => expect(says(file)).toMatch(sentence));

  it('names line and column of what is not well-formed', () => {
    expect(refusal('<score-partwise>\n  <part-list>\n</score-partwise>')).toMatchObject({ line: 3 });
    expect(refusal('<score-partwise>\n  <part-list>\n</score-partwise>').column).toBeGreaterThan(1);
  });

  it.each([1, 100, 300, 500, 700])('a file cut off after %i characters', (length) => {
    const xml = score(attributes('<divisions>1</divisions>') + note(`${C}<duration>4</duration>`).repeat(10));
    expect(says(xml.slice(0, length))).toMatch(/not well-formed|not a whole/);
  });
});

describe('document types and entities', () => {
  const doc = (subset: string, body: string) =>
    `<!DOCTYPE score-partwise [${subset}]>${score('').replace('<part-name>S', `<part-name>${body}`)}`;

  it.each([
    ['an own entity', doc('<!ENTITY a "b">', '&a;')],
    ['an entity from outside', doc('<!ENTITY a SYSTEM "file:///etc/passwd">', '&a;')],
    ['a parameter entity', doc('<!ENTITY % a SYSTEM "http://127.0.0.1:1/a.dtd"> %a;', '&b;')],
    [
      'a billion laughs',
      doc(
        Array.from({ length: 10 }, (_, i) => `<!ENTITY l${i + 1} "${`&l${i};`.repeat(10)}">`).join(''),
        '&l9;',
      ),
    ],
  ])('%s is never resolved', (_what, xml) => expect(says(xml)).toMatch(/undefined entity/));

  it('a document type alone is passed over', () => {
    expect(says(doc('<!ENTITY a "b">', 'S'))).toMatch(/There are no notes/);
  });
});

describe('numbers out of range', () => {
  const four = '<divisions>4</divisions>';
  it.each([
    ['divisions of 0', attributes('<divisions>0</divisions>'), /counts "0" divisions/],
    ['divisions below 0', attributes('<divisions>-4</divisions>'), /counts "-4" divisions/],
    ['divisions of 1e309', attributes('<divisions>1e309</divisions>'), /counts "1e309" divisions/],
    ['a negative duration', attributes(four) + note(`${C}<duration>-4</duration>`), /duration is "-4"/],
    ['a duration of NaN', attributes(four) + note(`${C}<duration>NaN</duration>`), /duration is "NaN"/],
    [
      'an endless duration',
      attributes(four) + note(`${C}<duration>999999999</duration>`),
      /longer than 600,000 crotchets/,
    ],
    ['a note without duration', attributes(four) + note(C), /A note has no duration/],
    [
      'an octave of 99',
      attributes(four) + note('<pitch><step>C</step><octave>99</octave></pitch><duration>4</duration>'),
      /octave of a pitch is "99", where a whole number from 0 to 9/,
    ],
    [
      'a step of H',
      attributes(four) + note('<pitch><step>H</step><octave>4</octave></pitch><duration>4</duration>'),
      /step "H"/,
    ],
    [
      'an alteration of 40',
      attributes(four) +
        note('<pitch><step>C</step><alter>40</alter><octave>4</octave></pitch><duration>4</duration>'),
      /altered by "40"/,
    ],
    [
      'a metre of 4/0',
      attributes(`${four}<time><beats>4</beats><beat-type>0</beat-type></time>`),
      /lower figure is "0"/,
    ],
    [
      'a metre of 4/3',
      attributes(`${four}<time><beats>4</beats><beat-type>3</beat-type></time>`),
      /lower figure is 3/,
    ],
    [
      'a metre of 1000/4',
      attributes(`${four}<time><beats>1000</beats><beat-type>4</beat-type></time>`),
      /upper figure is "1000"/,
    ],
    [
      'staff 17',
      attributes(four) + note(`${C}<duration>4</duration><staff>17</staff>`),
      /staff number is "17"/,
    ],
    ['a million staves', attributes(`${four}<staves>1000000</staves>`), /number of staves is "1000000"/],
    [
      'a transposition of 1,000',
      attributes(`${four}<transpose><chromatic>1000</chromatic></transpose>`),
      /transposition's chromatic is "1000"/,
    ],
  ])('%s', (_what, content, sentence) => {
    const reading = refusal(score(`\n${content}`));
    expect(reading.message).toMatch(sentence);
    expect(reading.line).toBe(2);
  });

  it('a backup behind the beginning of the bar stops there', () => {
    const xml = score(
      `${attributes(four)}${note(`${C}<duration>4</duration>`)}<backup><duration>400</duration></backup>${note(`${C}<duration>4</duration>`)}`,
    );
    expect(says(xml)).toMatch(/up to two notes at once/);
  });
});

describe('limits', () => {
  it('nesting', () => {
    const deep = '<a>'.repeat(200_000);
    expect(says(score(deep))).toMatch(/nested more than 64 deep/);
  });
  it('elements', () => {
    expect(says(score(`<direction>${'<a/>'.repeat(LIMITS.elements)}</direction>`))).toMatch(
      /more than 300,000 elements/,
    );
  });
  it('attributes by the hundred thousand', () => {
    const many = Array.from({ length: 200_000 }, (_, i) => `a${i}=""`).join(' ');
    expect(says(score(`<note ${many}><rest/></note>`))).toMatch(/no duration/);
  });
  it('text', () =>
    expect(says(score(`<direction>${'x'.repeat(200_000)}</direction>`))).toMatch(/far too long/));
  it('parts', () => {
    const parts = Array.from({ length: 65 }, (_, i) => `<part id="P${i}"><measure/></part>`).join('');
    expect(says(`<score-partwise>${parts}</score-partwise>`)).toMatch(/more than 64 parts/);
  });
  it('bars', () => {
    expect(
      says(`<score-partwise><part id="P1">${'<measure/>'.repeat(1_001)}</part></score-partwise>`),
    ).toMatch(/more than 1,000 bars/);
    expect(
      says(`<score-timewise>${'<measure><part id="P1"/></measure>'.repeat(1_001)}</score-timewise>`),
    ).toMatch(/more than 1,000 bars/);
  });
  it('notes', () => {
    const bar = `<measure>${note('<rest/><duration>1</duration>').repeat(900)}</measure>`;
    expect(says(`<score-partwise><part id="P1">${bar.repeat(70)}</part></score-partwise>`)).toMatch(
      /more than 30,000 notes/,
    );
    expect(says(score(note('<rest/><duration>1</duration>').repeat(1_001)))).toMatch(
      /Bar 1 has more than 1000 notes/,
    );
  });
  it('a bar without end', () => {
    const forward = '<forward><duration>500000</duration></forward>';
    expect(says(score(forward.repeat(2)))).toMatch(/Bar 1 is longer than 600,000 crotchets/);
  });
  it('bars of all staves together', () => {
    const bar = '<measure><attributes><staves>16</staves></attributes></measure>';
    const parts = Array.from({ length: 8 }, (_, i) => `<part id="P${i}">${bar.repeat(500)}</part>`).join('');
    expect(says(`<score-partwise>${parts}</score-partwise>`)).toMatch(/have 64,000 bars together/);
  });
  it('notes of the four voices', () => {
    const bar = `<measure><attributes><divisions>64</divisions></attributes>${note(`${C}<duration>1</duration>`).repeat(256)}</measure>`;
    const parts = Array.from({ length: 4 }, (_, i) => `<part id="P${i}">${bar.repeat(8)}</part>`).join('');
    expect(says(`<score-partwise>${parts}</score-partwise>`)).toMatch(
      /^The four voices have 8,192 notes; at most 3,600/,
    );
  });
  it('bytes', () => expect(says(new Uint8Array(LIMITS.fileBytes + 1))).toMatch(/larger than 4 MB/));
});

describe('encodings', () => {
  it.each([
    ['broken UTF-8', new Uint8Array([0x3c, 0xc3, 0x28, 0x3e]), /not valid UTF-8/],
    ['half a sign of UTF-16', new Uint8Array([0xff, 0xfe, 0x3c, 0x00, 0x61]), /not valid UTF-16LE/],
    [
      'an encoding nobody knows',
      strToU8('<?xml version="1.0" encoding="martian"?><a/>'),
      /encoded as "martian"/,
    ],
    ['zeros', new Uint8Array(1000), /not well-formed/],
    [
      'Latin-1 that calls itself UTF-8',
      new Uint8Array(Buffer.from('<?xml version="1.0" encoding="UTF-8"?><a>é</a>', 'latin1')),
      /not valid UTF-8/,
    ],
  ])('%s', (_what, bytes, sentence) => expect(says(bytes)).toMatch(sentence));
});

describe('archives', () => {
  const archive = (files: Record<string, Uint8Array>) =>
    zipSync({ 'META-INF/container.xml': strToU8(CONTAINER), ...files });
  /** Where a text stands in bytes, the last time. */
  const lastOf = (bytes: Uint8Array, text: string) => Buffer.from(bytes).lastIndexOf(text);
  const changed = (bytes: Uint8Array, at: number, value: number) => {
    const copy = Uint8Array.from(bytes);
    copy[at] = value;
    return copy;
  };
  /** The entry's record in the list at the end of the archive. */
  const record = (bytes: Uint8Array, name: string) => lastOf(bytes, name) - 46;

  it('a bomb is stopped while it unpacks', () => {
    const bomb = archive({ 's.xml': zeros(40) });
    expect(bomb.length).toBeLessThan(100_000);
    expect(says(bomb)).toMatch(/unpacks to (over 200 times its size|more than 8 MB)/);
  });
  it('a bomb that declares a small size too', () => {
    const bomb = Uint8Array.from(archive({ 's.xml': zeros(40) }));
    new DataView(bomb.buffer).setUint32(record(bomb, 's.xml') + 24, 1000, true);
    expect(says(bomb)).toMatch(/unpacks to over 200 times its size/);
  });
  it('a score that is not the one named', () => {
    expect(says(archive({ 'other.xml': strToU8('<a/>') }))).toMatch(
      /says its score is "s\.xml", but holds no such file/,
    );
  });
  it('no container and no score', () =>
    expect(says(zipSync({ 'a.txt': strToU8('hello') }))).toMatch(/^This is a zipped folder, not one score/));
  it('a container that is none', () => {
    expect(says(zipSync({ 'META-INF/container.xml': strToU8('<a/>') }))).toMatch(
      /begins with "a", where container is needed/,
    );
    expect(says(zipSync({ 'META-INF/container.xml': strToU8('<container/>') }))).toMatch(/names no score/);
  });
  it.each(['../s.xml', '/etc/s.xml', 'C:\\s.xml', 'a/../../s.xml', '..\\s.xml'])(
    'a name that leaves the archive: %s',
    (name) => {
      expect(says(archive({ [name]: strToU8('<a/>') }))).toMatch(/points outside the archive/);
    },
  );
  it('a wrong check sum', () => {
    const at = record(MXL, 'score.musicxml') + 16;
    expect(says(changed(MXL, at, MXL[at]! ^ 1))).toMatch(/damaged: its check sum is wrong/);
  });
  it('a locked entry', () => {
    const at = record(MXL, 'score.musicxml') + 8;
    expect(says(changed(MXL, at, MXL[at]! | 1))).toMatch(/locked with a password/);
  });
  it('an unknown way of packing', () => {
    expect(says(changed(MXL, record(MXL, 'score.musicxml') + 10, 99))).toMatch(
      /packed in a way no score uses \(method 99\)/,
    );
  });
  it('a broken stream', () => {
    const at = Buffer.from(MXL).indexOf('score.musicxml') + 14 + 20;
    expect(says(changed(MXL, at, MXL[at]! ^ 0xff))).toMatch(/damaged|ends too early|unpacks/);
  });
  it.each([4, 50, 200, 400])('cut off after %i bytes', (length) =>
    expect(says(MXL.slice(0, length))).toMatch(/cut off or broken/),
  );
  it('sixty thousand entries', () => {
    const end = Uint8Array.from(MXL);
    new DataView(end.buffer).setUint16(end.length - 12, 60_000, true);
    expect(says(end)).toMatch(/holds 60000 files/);
  });
  it('an archive in an archive', () =>
    expect(says(archive({ 's.xml': MXL }))).toMatch(/not valid UTF-8|not well-formed/));
});

/** So many megabytes that pack to next to nothing. */
function zeros(megabytes: number): Uint8Array {
  return new Uint8Array(megabytes * 1024 * 1024).fill(0x20);
}
