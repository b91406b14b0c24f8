import { strToU8 } from 'fflate';
import { describe, expect, it } from 'vitest';
import { printBrief, readBrief } from '../../src/brief/brief.ts';
import { openBrief } from '../../src/brief/open-brief.ts';
import { writeMusicXml, writeMxl } from '../../src/musicxml/index.ts';
import { printNotation, readNotation } from '../../src/notation/index.ts';
import { CROTCHET } from '../../src/score/time.ts';

const GIVEN = readNotation(`title: Kite
key: C major

S: C5 D5 E5 C5 | D5 B4 C5*2! |
A: ? ? ? ? | ? ? ? ? |
T: ? ? ? ? | ? ? ? ? |
B: C3 ? C3 ? | ? G2 C3*2 |
`).score;

function briefOf(file: string | Uint8Array) {
  const opened = openBrief(typeof file === 'string' ? strToU8(file) : file);
  if (!opened.ok) throw new Error(opened.message);
  return opened.brief;
}

describe('briefs from files', () => {
  it.each([
    ['MusicXML', writeMusicXml(GIVEN)],
    ['MXL', writeMxl(GIVEN, { layout: 'closed score' })],
    [
      'MusicXML with rests for empty bars',
      writeMusicXml(GIVEN).replaceAll(' print-object="no"', '').replace('Partwise<', 'Other<'),
    ],
  ])('%s: the notes are given, the rest is to be written', (_what, file) => {
    const brief = briefOf(file);
    expect(printNotation(brief.score)).toBe(printNotation(GIVEN));
    expect(readBrief(printBrief(brief)).problems).toEqual([]);
  });

  it('keeps figures and lyrics', () => {
    const [first, ...others] = GIVEN.voices.S;
    const rich = {
      ...GIVEN,
      figures: [{ at: CROTCHET, figures: ['6'] }],
      voices: { ...GIVEN.voices, S: [{ ...first!, lyrics: ['Fly'] }, ...others] },
    };
    const { score } = briefOf(writeMusicXml(rich));
    expect(score.figures).toEqual(rich.figures);
    expect(score.voices.S[0]).toMatchObject({ lyrics: ['Fly'] });
  });

  it('takes a tune by itself for the soprano', () => {
    const xml = writeMusicXml(GIVEN);
    const alone = xml
      .replace(/<part-group[\s\S]*?<\/part-group>|<part-group[^>]*\/>/g, '')
      .replace(/<score-part id="P[234]">.*?<\/score-part>/g, '')
      .replace(/<part id="P[234]">[\s\S]*?<\/part>/g, '')
      .replace('Soprano', 'Tune');
    const { score } = briefOf(alone);
    expect(score.voices.S).toEqual(GIVEN.voices.S);
    expect(score.voices.B.every(({ kind }) => kind === 'gap')).toBe(true);
  });

  it('reads a text with its headers, and says where it is wrong', () => {
    expect(briefOf('task: add the bass\nS: C5*4 |').task).toBe('add the bass');
    expect(openBrief(strToU8('task: add\nS: H5 |'))).toMatchObject({ ok: false, line: 2 });
    expect(openBrief(strToU8('%PDF-1.4'))).toMatchObject({
      ok: false,
      message: expect.stringContaining('PDF'),
    });
  });
});
