import { strToU8 } from 'fflate';
import { describe, expect, it } from 'vitest';
import { readMusicXml, type VoiceAssignment, writeMusicXml } from '../../src/musicxml/index.ts';
import { CHORALE } from '../../src/profiles/profile.ts';
import { reviewScore } from '../../src/review/review.ts';
import { printPitch } from '../../src/score/pitch.ts';
import { barAt, placeAt, printPlace } from '../../src/score/place.ts';
import { type Score, VOICES, type VoiceName } from '../../src/score/score.ts';
import { printMetre } from '../../src/score/time.ts';
import { note, notes, partwise, START } from '../support/partwise.ts';

function reading(xml: string, voices?: VoiceAssignment) {
  return readMusicXml(strToU8(xml), voices === undefined ? {} : { voices });
}

function read(xml: string, voices?: VoiceAssignment): Score {
  const result = reading(xml, voices);
  if (!result.ok) throw new Error(result.message);
  return result.score;
}

function refusal(xml: string, voices?: VoiceAssignment): string {
  const result = reading(xml, voices);
  if (result.ok) throw new Error('was read');
  return result.message;
}

/** A voice as text: `C5:1 r:1 ?:2`, in crotchets; `~` tied, `!` fermata. */
function voice(score: Score, name: VoiceName): string {
  return score.voices[name]
    .map((event) => {
      const what = event.kind === 'note' ? printPitch(event.pitch) : event.kind === 'rest' ? 'r' : '?';
      const marks = `${event.kind === 'note' && event.tied ? '~' : ''}${event.kind !== 'gap' && event.fermata ? '!' : ''}`;
      return `${what}:${event.duration / 10_080}${marks}`;
    })
    .join(' ');
}

/** The notes too many of a voice: `3: D4 beside G4`, by bar. */
function spare(score: Score, name: VoiceName): string[] {
  return score.voices[name].flatMap((event) =>
    event.kind === 'note'
      ? (event.beside ?? []).map(
          ({ pitch }) =>
            `${barAt(score, event.at).number}: ${printPitch(pitch)} beside ${printPitch(event.pitch)}`,
        )
      : [],
  );
}

const bars = (score: Score) =>
  score.bars.map(
    (bar) =>
      `${bar.number}@${bar.at / 10_080}+${bar.duration / 10_080}${bar.offset ? ` from ${bar.offset / 10_080}` : ''}`,
  );

const SATB = (s: string[], a: string[], t: string[], b: string[]) => ({
  Soprano: s,
  Alto: a,
  Tenor: t,
  Bass: b,
});
const FILL = (bar: string) =>
  SATB(
    [notes('q:C5 q:D5 q:E5 q:F5'), bar],
    [notes('w:G4'), notes('w:G4')],
    [notes('w:E4'), notes('w:E4')],
    [notes('w:C3'), notes('w:C3')],
  );

describe('tempo', () => {
  const mark = (tempo: number) => `<direction><sound tempo="${tempo}"/></direction>`;
  const tempos = (first: string, second: string) =>
    read(
      partwise(
        SATB(
          [first, second, notes('w:C5')],
          [notes('w:G4'), notes('w:G4'), notes('w:G4')],
          [notes('w:E4'), notes('w:E4'), notes('w:E4')],
          [mark(200) + notes('w:C3'), mark(300) + notes('w:C3'), notes('w:C3')],
        ),
      ),
    ).bars.map((bar) => bar.tempo);

  it('changes where it is marked, by the first part that marks it', () => {
    expect(tempos(mark(60) + notes('w:C5'), mark(90) + notes('w:C5'))).toEqual([60, 90, 90]);
  });

  it('marked inside a bar holds from the next barline on, unless another is marked there', () => {
    const slowing = mark(70) + notes('h:C5') + mark(60) + notes('q:C5') + mark(50) + notes('q:C5');
    expect(tempos(slowing, notes('w:C5') + mark(40))).toEqual([70, 50, 40]);
    expect(tempos(slowing, mark(70) + notes('h:C5') + mark(65) + notes('h:C5'))).toEqual([70, 70, 65]);
    expect(tempos(notes('h:C5') + mark(60) + notes('h:C5'), notes('w:C5'))[0]).toBe(60);
  });

  it('is read from a metronome mark, but for what nobody plays', () => {
    const dotted =
      '<direction><direction-type><metronome><beat-unit>quarter</beat-unit><beat-unit-dot/><per-minute>50</per-minute></metronome></direction-type></direction>';
    expect(tempos(dotted + notes('w:C5'), mark(9000) + notes('w:C5'))).toEqual([75, 300, 300]);
  });
});

describe('silence', () => {
  it('takes an empty bar in one voice as not yet written, and the rests of the bar before it too', () => {
    const score = read(
      partwise(
        SATB(
          [notes('q:C5 q:D5 q:E5 q:F5'), notes('w:G5')],
          [notes('q:G4 q:G4 h:r'), '<note><rest measure="yes"/><duration>16</duration></note>'],
          [notes('w:E4'), notes('w:E4')],
          [notes('w:C3'), notes('w:C3')],
        ),
      ),
    );
    expect(voice(score, 'A')).toBe('G4:1 G4:1 ?:2 ?:4');
  });

  it('takes a rest in a finished score as a rest, even while others sing', () => {
    const score = read(partwise(FILL(notes('q:G5 q:r h:G5'))));
    expect(voice(score, 'S')).toBe('C5:1 D5:1 E5:1 F5:1 G5:1 r:1 G5:2');
  });

  it("leaves a tune's own short rest alone in an exercise whose lower voices are still to be written", () => {
    const score = read(
      partwise(
        SATB(
          [notes('q:C5 q:r q:E5 q:F5'), notes('w:G5')],
          [notes('q:G4 q:r q:G4 q:A4'), notes('w:r')],
          [notes('w:r'), notes('w:r')],
          [notes('q:C3 q:G3 q:C3 q:D3'), notes('w:E3')],
        ),
      ),
    );
    expect(voice(score, 'S')).toBe('C5:1 r:1 E5:1 F5:1 G5:4');
    expect(voice(score, 'A')).toBe('G4:1 ?:1 G4:1 A4:1 ?:4');
    expect(voice(score, 'T')).toBe('?:4 ?:4');
  });

  it('takes what the file leaves out as not yet written', () => {
    const score = read(partwise(SATB([notes('w:C5')], [notes('h:G4')], [''], [notes('w:C3')])));
    expect(voice(score, 'A')).toBe('G4:2 ?:2');
    expect(voice(score, 'T')).toBe('?:4');
  });

  it('keeps a rest of all voices together, and drops empty bars of paper at the end', () => {
    const all = (pitch: string) => [notes(`h:${pitch} h:r`), notes(`w:${pitch}`), notes('w:r')];
    const score = read(partwise(SATB(all('C5'), all('G4'), all('E4'), all('C3'))));
    expect(voice(score, 'S')).toBe('C5:2 r:2 C5:4 ?:4');
  });

  it('lets one rest stand for both voices of a staff', () => {
    const staff = (upper: string, lower: string) =>
      `${START}${notes(`h:${upper} h:r`, '1')}<backup><duration>16</duration></backup>${notes(`h:${lower}`, '2')}`;
    const score = read(partwise({ upper: [staff('C5', 'G4')], lower: [staff('E4', 'C3')] }));
    expect(VOICES.map((one) => voice(score, one))).toEqual(['C5:2 r:2', 'G4:2 r:2', 'E4:2 r:2', 'C3:2 r:2']);
  });
});

describe('bars', () => {
  const four = (content: (pitch: string) => string[], attributes?: string[]) =>
    read(partwise(SATB(content('C5'), content('G4'), content('E4'), content('C3')), attributes));

  it('joins the halves of a split bar', () => {
    const score = four(
      (p) => [notes(`w:${p}`), notes(`h:${p}`), notes(`h:${p}`), notes(`w:${p}`)],
      ['number="1"', 'number="2"', 'number="X1" implicit="yes"', 'number="3"'],
    );
    expect(bars(score)).toEqual(['1@0+4', '2@4+2', 'X1@6+2 from 2', '3@8+4']);
    expect(score.bars.flatMap((bar) => bar.misfits)).toEqual([]);
  });

  it('splits a bar at a repeat in its middle', () => {
    const repeat = '<barline location="middle"><repeat direction="backward"/></barline>';
    const score = four((p) => [`${START}${notes(`h:${p}`)}${repeat}${notes(`h:${p}`)}`, notes(`w:${p}`)]);
    expect(bars(score)).toEqual(['1@0+2', '1@2+2 from 2', '2@4+4']);
    expect(score.bars.map((bar) => bar.repeatEnd === true)).toEqual([true, false, false]);
  });

  it('reads each ending once and knows where they begin and end', () => {
    const left = (number: string) =>
      `<barline location="left"><ending number="${number}" type="start"/></barline>`;
    const right = (number: string, repeat = '') =>
      `<barline location="right"><ending number="${number}" type="stop"/>${repeat}</barline>`;
    const back = '<repeat direction="backward"/>';
    const score = four((p) => [
      `${START}<barline location="left"><repeat direction="forward"/></barline>${notes(`w:${p}`)}`,
      `${left('1')}${notes(`w:${p}`)}${right('1', back)}`,
      `${left('2')}${notes(`w:${p}`)}${right('2')}`,
      notes(`w:${p}`),
    ]);
    expect(score.bars.map((bar) => [bar.repeatStart, bar.repeatEnd, bar.ending])).toEqual([
      [true, undefined, undefined],
      [undefined, true, '1'],
      [undefined, undefined, '2'],
      [undefined, undefined, undefined],
    ]);
  });

  it('reads changes of metre and key, also inside a bar', () => {
    const change = (fifths: number) =>
      `<attributes><key><fifths>${fifths}</fifths><mode>minor</mode></key></attributes>`;
    const score = four((p) => [
      `${START}${notes(`h:${p}`)}${change(-3)}${notes(`h:${p}`)}`,
      `<attributes><time><beats>3+2</beats><beat-type>8</beat-type></time></attributes>${notes(`q:${p} q:${p} e:${p}`)}`,
    ]);
    expect(
      score.bars.map((bar) => `${printMetre(bar.metre)} ${bar.key.fifths}${bar.key.mode ?? ''}`),
    ).toEqual(['4/4 0', '4/4 -3minor', '5/8 -3minor']);
    expect(bars(score)).toEqual(['1@0+2', '1@2+2 from 2', '2@4+2.5']);
  });

  it('finds the metre in the bars where the file gives none', () => {
    const start = '<attributes><divisions>4</divisions></attributes>';
    const score = four((p) => [`${start}${notes(`h.:${p}`)}`, notes(`h.:${p}`)]);
    expect(printMetre(score.bars[0]!.metre)).toBe('3/4');
  });

  it('notes a bar in which a voice has too much', () => {
    const score = read(partwise(FILL(notes('q:G5 q:F5 q:E5 q:D5 q:C5'))));
    expect(score.bars[1]!.misfits).toEqual([{ voice: 'S', written: 5 * 10_080, expected: 4 * 10_080 }]);
    expect(voice(score, 'A')).toBe('G4:4 G4:4 ?:1');
  });
});

describe('ties, fermatas, figures, lyrics', () => {
  it('ties over a barline, and from a single note into a chord', () => {
    const chord = (value: string, upper: string, lower: string) =>
      note(`${value}:${upper}`) + note(`${value}:${lower}`).replace('<note>', '<note><chord/>');
    const upper = `${START}${chord('h', 'C5', 'G4')}${note('h:C5~')}${note('h:G4~').replace('<note>', '<note><chord/>')}`;
    const next = `${chord('h', 'C5', 'G4')}${chord('h', 'D5', 'G4')}`;
    const lower = [`${START}${chord('w', 'E4', 'C3')}`, chord('w', 'E4', 'C3')];
    const score = read(partwise({ up: [upper, next], down: lower }));
    expect(voice(score, 'S')).toBe('C5:2 C5:2~ C5:2 D5:2');
    expect(voice(score, 'A')).toBe('G4:2 G4:2~ G4:2 G4:2');
  });

  it('believes a tie that is only marked at its end, and drops one that leads nowhere', () => {
    const score = read(
      partwise(
        FILL(`${notes('h:F5').replace('<voice>', '<tie type="stop"/><voice>')}${notes('q:G5~ q:A5')}`),
      ),
    );
    expect(voice(score, 'S')).toBe('C5:1 D5:1 E5:1 F5:1~ F5:2 G5:1 A5:1');
  });

  it('keeps figured bass where it stands, of a part of its own too', () => {
    const figures = (...list: string[]) => `<figured-bass>${list.join('')}</figured-bass>`;
    const figure = (prefix: string, number: string) =>
      `<figure><prefix>${prefix}</prefix><figure-number>${number}</figure-number></figure>`;
    const parts = FILL(notes('w:G5'));
    const score = read(
      partwise({
        ...parts,
        Continuo: [
          `${START}${figures('<figure><figure-number>6</figure-number></figure>', figure('sharp', '4'))}${notes('h:C3')}${figures(
            '<figure><figure-number>7</figure-number></figure><duration>4</duration>',
          )}${figures('<figure><prefix>flat</prefix></figure><duration>4</duration>')}${notes('h:C3')}`,
          notes('w:C3'),
        ],
      }),
    );
    expect(score.figures).toEqual([
      { at: 0, figures: ['6', '#4'] },
      { at: 2 * 10_080, figures: ['7'] },
      { at: 3 * 10_080, figures: ['b'] },
    ]);
    expect(score.remarks.map((remark) => remark.message).join()).toContain(
      'The part "Continuo" was set aside',
    );
  });

  it('keeps grace notes before their note, without time', () => {
    const grace =
      '<note><grace slash="yes"/><pitch><step>A</step><octave>5</octave></pitch><voice>1</voice></note>';
    const score = read(partwise(FILL(`${grace}${notes('w:G5')}`)));
    expect(score.voices.S.at(-1)).toMatchObject({ duration: 4 * 10_080, grace: [{ step: 'A', octave: 5 }] });
  });

  it('reads the lengths of tuplets that a program has rounded', () => {
    const triplet = (pitch: string, duration: number) =>
      `<note><pitch><step>${pitch}</step><octave>5</octave></pitch><duration>${duration}</duration><voice>1</voice><type>eighth</type><time-modification><actual-notes>3</actual-notes><normal-notes>2</normal-notes></time-modification></note>`;
    const score = read(
      partwise(
        FILL(
          `<attributes><divisions>16</divisions></attributes>${triplet('G', 5)}${triplet('F', 5)}${triplet('E', 6)}<note><pitch><step>D</step><octave>5</octave></pitch><duration>48</duration><voice>1</voice></note>`,
        ),
      ),
    );
    expect(score.voices.S.slice(4).map((event) => event.duration)).toEqual([3360, 3360, 3360, 30_240]);
  });
});

describe('voices', () => {
  const keyboard = (...chords: string[]) =>
    chords
      .map((chord) =>
        chord
          .split('+')
          .map((pitch, i) => note(`q:${pitch}`).replace('<note>', i > 0 ? '<note><chord/>' : '<note>'))
          .join(''),
      )
      .join('');

  it('tells what it found and lets a person choose otherwise', () => {
    const xml = partwise({
      one: [notes('w:C5')],
      two: [notes('w:G4')],
      three: [notes('w:E4')],
      four: [notes('w:C3')],
    });
    const first = reading(xml);
    if (!first.ok) throw new Error(first.message);
    expect(first.assignment.guessed).toBe(true);
    expect(first.assignment.lines).toMatchObject([
      { id: '1.1.1', part: 'one', name: 'One', lowest: 'C5', highest: 'C5', notes: 1, given: 'S' },
      { id: '2.1.1', given: 'A' },
      { id: '3.1.1', given: 'T' },
      { id: '4.1.1', given: 'B' },
    ]);
    const swapped = read(xml, { S: '1.1.1', A: '3.1.1', T: '2.1.1', B: '4.1.1' });
    expect(voice(swapped, 'A')).toBe('E4:4');
    expect(voice(read(xml, { S: '1.1.1', B: '4.1.1' }), 'T')).toBe('?:4');
    expect(refusal(xml, { S: '9.1.1' })).toMatch(
      /The soprano was to be read from line "9\.1\.1", which this file does not have; it has 1\.1\.1, 2\.1\.1/,
    );
    expect(refusal(xml, { S: '1.1.1', A: '1.1.1' })).toMatch(
      /chosen for two voices; choose another for the alto/,
    );
  });

  it('sets a keyboard reduction without a name aside where it only doubles the voices', () => {
    const score = read(
      partwise({
        a: [notes('q:C5 q:D5 q:E5 q:F5')],
        b: [notes('q:G4 q:G4 q:G4 q:A4')],
        c: [notes('q:E4 q:D4 q:C4 q:C4')],
        d: [notes('q:C3 q:B2 q:C3 q:F2')],
        e: [keyboard('G4+C5', 'G4+D5', 'G4+E5', 'A4+F5')],
      }),
    );
    expect(score.remarks.map((remark) => remark.message).join()).toMatch(/the part "e" was set aside/i);
  });

  it('reads melody and bass on two staves as an exercise whose inner voices are to be written', () => {
    const score = read(
      partwise({ Melody: [notes('q:C5 q:D5 q:E5 q:F5')], Bass: [notes('q:C3 q:B2 q:C3 q:F2')] }),
    );
    expect(voice(score, 'B')).toBe('C3:1 B2:1 C3:1 F2:1');
    expect(voice(score, 'A')).toBe('?:4');
    expect(score.remarks[0]!.message).toMatch(/no part for the alto and tenor/);
  });

  it('sets instruments aside beside the named voices, whatever they play', () => {
    const parts = SATB([notes('w:C5')], [notes('w:G4')], [notes('w:E4')], [notes('w:C3')]);
    const score = read(
      partwise({ ...parts, 'Alto trombone': [notes('q:A4 q:B4 q:A4 q:B4')], 'Oboe 1': [notes('w:A5')] }),
    );
    expect(voice(score, 'A')).toBe('G4:4');
    expect(score.remarks.map((remark) => remark.message)).toEqual([
      'The part "Alto trombone" was set aside; only the four voices are judged.',
      'The part "Oboe 1" was set aside; only the four voices are judged.',
    ]);
  });

  it('takes Part A to Part D from the top, not for an alto and a bass', () => {
    const score = read(
      partwise({
        'Part A': [notes('w:C5')],
        'Part B': [notes('w:G4')],
        'Part C': [notes('w:E4')],
        'Part D': [notes('w:C3')],
      }),
    );
    expect(VOICES.map((one) => voice(score, one))).toEqual(['C5:4', 'G4:4', 'E4:4', 'C3:4']);
  });

  it('keeps the outer note where a voice divides for one chord, and says so', () => {
    const steps = Array.from({ length: 6 }, () => notes('q:C5 q:D5 q:E5 q:F5'));
    const low = (last: string) => [...Array.from({ length: 6 }, () => notes('q:C3 q:D3 q:C3 q:D3')), last];
    const chord = (upper: string, under: string) =>
      note(`w:${upper}`) + note(`w:${under}`).replace('<note>', '<note><chord/>');
    const score = read(
      partwise(
        SATB(
          [...steps, chord('C5', 'E5')],
          [...low(notes('w:G4'))].map((bar) => bar.replaceAll('<octave>3', '<octave>4')),
          low(notes('w:E4')),
          low(chord('C3', 'C2')),
        ),
      ),
    );
    expect(voice(score, 'S')).toMatch(/ E5:4$/);
    expect(voice(score, 'B')).toMatch(/ C2:4$/);
    expect(spare(score, 'S')).toEqual(['7: C5 beside E5']);
    expect(spare(score, 'B')).toEqual(['7: C3 beside C2']);
    expect(score.remarks).toEqual([]);
  });

  const FIVE = [notes('q:C5 q:D5 q:E5 q:F5')];
  const UNDER = [notes('q:A4 q:B4 q:A4 q:B4')];
  const LOWER = { Alto: [notes('w:G4')], Tenor: [notes('w:E4')], Bass: [notes('w:C3')] };

  it.each([
    ['Soprano 1', 'Soprano 2', /^The file has more than four voices: the part "Soprano 2" was left out/],
    ['Canto', 'Quinto', /^The part "Quinto" was set aside/],
  ])('reads four of five voices, %s and %s, and says first which it left out', (first, second, says) => {
    const score = read(partwise({ [first]: FIVE, [second]: UNDER, ...LOWER }));
    expect(voice(score, 'S')).toBe('C5:1 D5:1 E5:1 F5:1');
    expect(score.remarks[0]).toMatchObject({ message: expect.stringMatching(says), about: 'voices' });
  });

  it.each([
    ['Women 1', 'Women 2', 'Men 1', 'Men 2'],
    ['Treble', 'Treble', 'Bass', 'Bass'],
    ['Soprano', 'Soprano', 'Bass', 'Bass'],
    ['Voice', 'Voice 2', 'Women', 'Men'],
  ])('takes four single staves from the top, called %s, %s, %s and %s', (...names) => {
    const four = [notes('w:C5'), notes('w:G4'), notes('w:E4'), notes('w:C3')];
    const ids = names.map((_, i) => `P${i}`);
    const xml = partwise(Object.fromEntries(ids.map((id, i) => [id, [four[i]!]])));
    const named = ids.reduce(
      (text, id, i) => text.replace(`<part-name>${id}</part-name>`, `<part-name>${names[i]}</part-name>`),
      xml,
    );
    expect(VOICES.map((one) => voice(read(named), one))).toEqual(['C5:4', 'G4:4', 'E4:4', 'C3:4']);
  });

  it.each(['Bass &amp; Continuo', 'Figured bass', 'Continuo'])(
    'takes a part called %s for the bass where there is no other, whatever a flute plays',
    (name) => {
      const upper = { Soprano: [notes('w:C5')], Alto: [notes('w:G4')], Tenor: [notes('w:E4')] };
      const score = read(
        partwise({ Flute: [notes('q:A5 q:B5 q:A5 q:B5')], ...upper, [name]: [notes('w:C3')] }),
      );
      expect(voice(score, 'B')).toBe('C3:4');
      expect(score.remarks.map((remark) => remark.message).join()).toContain('"Flute" was set aside');
    },
  );

  it('takes no flute for a voice that is missing', () => {
    const parts = { Soprano: [notes('w:C5')], Alto: [notes('w:G4')], Tenor: [notes('w:E4')] };
    const score = read(partwise({ ...parts, Flute: [notes('q:A5 q:B5 q:A5 q:B5')] }));
    expect(voice(score, 'B')).toBe('?:4');
    expect(score.remarks.every(({ about }) => about === 'voices')).toBe(true);
  });

  it.each([
    ['named parts', ['Soprano', 'Alto', 'Tenor', 'Bass']],
    ['parts without names', ['1', '2', '3', '4']],
  ])('reads a script with a stray chord note in one of five bars: %s', (_what, names) => {
    const chord = `${notes('q:G4 h:G4')}${note('q:G4')}${note('q:D4').replace('<note>', '<note><chord/>')}`;
    const four = ['w:C5', 'w:G4', 'w:E4', 'w:C3'].map((one) => Array.from({ length: 5 }, () => notes(one)));
    four[1]![2] = chord;
    const score = read(partwise(Object.fromEntries(names.map((name, i) => [`${name} `, four[i]!]))));
    expect(voice(score, 'A')).toContain('G4:1 G4:2 G4:1');
    const found = reviewScore(score, CHORALE).findings.filter(({ rule }) => rule.id === 'divided-voice');
    expect(found.map(({ from, message }) => `${printPlace(placeAt(score, from))}: ${message}`)).toEqual([
      expect.stringMatching(/^bar 3, beat 4: Alto has two notes at once: G4, and D4 beside it/),
    ]);
  });

  it.each(['four staves', 'closed score'] as const)(
    'hands the notes too many back on %s, and reads them again',
    (layout) => {
      const chord = `${notes('q:C5 h:C5')}${note('q:C5')}${note('q:A4').replace('<note>', '<note><chord/>')}`;
      const four = ['w:C5', 'w:G4', 'w:E4', 'w:C3'].map((one) => Array.from({ length: 8 }, () => notes(one)));
      four[0]![2] = chord;
      const score = read(partwise(SATB(four[0]!, four[1]!, four[2]!, four[3]!)));
      const again = read(writeMusicXml(score, { layout }));
      expect(spare(score, 'S')).toEqual(['3: A4 beside C5']);
      expect(spare(again, 'S')).toEqual(spare(score, 'S'));
      expect(again.voices).toEqual(score.voices);
    },
  );

  it('tells of a note that begins while another of its voice is held', () => {
    const held = `${note('h:E4')}<backup><duration>4</duration></backup>${notes('q:D4 h:E4')}`;
    const four = ['w:C5', 'w:G4', 'w:E4', 'w:C3'].map((one) => Array.from({ length: 8 }, () => notes(one)));
    four[2]![1] = held;
    const score = read(partwise(SATB(four[0]!, four[1]!, four[2]!, four[3]!)));
    expect(voice(score, 'T')).toContain('E4:4 E4:2 E4:2 E4:4');
    expect(spare(score, 'T')).toEqual(['2: D4 beside E4']);
    expect(read(writeMusicXml(score)).voices).toEqual(score.voices);
  });

  it('gives the lines to choose from where the voices can’t be told', () => {
    const result = reading(partwise({ Oboe: [notes('w:C5')], Horn: [notes('w:G4')], Tuba: [notes('w:C3')] }));
    expect(result).toMatchObject({ ok: false, lines: [{ id: '1.1.1', name: 'Oboe' }, {}, { id: '3.1.1' }] });
  });

  it('gives a fermata on the first note of a chord to all its voices', () => {
    const held = note('w:C5').replace('</note>', '<notations><fermata/></notations></note>');
    const under = (pitch: string) => note(`w:${pitch}`).replace('<note>', '<note><chord/>');
    const score = read(partwise({ a: [held + under('G4')], b: [note('w:E4') + under('C3')] }));
    expect(VOICES.map((one) => voice(score, one))).toEqual(['C5:4!', 'G4:4!', 'E4:4', 'C3:4']);
  });

  it('asks whether a tenor in a plain treble clef was meant to sound an octave lower', () => {
    const clef = (octaves: string) =>
      START.replace('</attributes>', `<clef><sign>G</sign><line>2</line>${octaves}</clef></attributes>`);
    const parts = (octaves: string) => {
      const low = [notes('q:G4 q:G4 q:G4 q:A4'), notes('q:G4 q:G4 q:G4 q:A4')];
      const tenor = [`${clef(octaves)}${notes('q:C5 q:D5 q:C5 q:C5')}`, notes('q:C5 q:D5 q:C5 q:C5')];
      return partwise(SATB([notes('w:E5'), notes('w:E5')], low, tenor, [notes('w:C3'), notes('w:C3')]));
    };
    expect(read(parts('')).remarks).toMatchObject([
      { voice: 'T', message: expect.stringContaining('treble clef without the 8') },
    ]);
    expect(read(parts('<clef-octave-change>-1</clef-octave-change>')).remarks).toEqual([]);
    expect(voice(read(parts('')), 'T')).toBe('C5:1 D5:1 C5:1 C5:1 C5:1 D5:1 C5:1 C5:1');
  });

  it('reads three named parts and says that the fourth is missing', () => {
    const score = read(partwise({ Soprano: [notes('w:C5')], Alto: [notes('w:G4')], Bass: [notes('w:C3')] }));
    expect(voice(score, 'T')).toBe('?:4');
    expect(score.remarks[0]!.message).toBe(
      'The file has no part for the tenor; what is missing was taken as not written yet.',
    );
  });

  it.each([
    [
      'a single melody',
      { Melody: [notes('q:C5 q:D5 q:E5 q:F5')] },
      /^This is a single melody: one part: the part "Melody" \(one line of notes from C5 to F5\)/,
    ],
    [
      'a piano piece',
      {
        Piano: [`${START}${keyboard('C4+E4+G4', 'C4+F4+A4', 'B3+D4+G4', 'C4+E4+G4')}`],
        Low: [notes('w:C3')],
      },
      /two parts: the part "Piano" \(up to three notes at once from B3 to A4\) and the part "Low" \(one line of notes, all on C3\)/,
    ],
    [
      'three voices',
      { one: [notes('w:C5')], two: [notes('w:G4')], three: [notes('w:C3')] },
      /It has three parts/,
    ],
    [
      'a tablature',
      {
        Guitar: [
          `<attributes><divisions>4</divisions><clef><sign>TAB</sign><line>5</line></clef></attributes>${notes('w:C4')}`,
        ],
      },
      /a tablature/,
    ],
    [
      'an empty page',
      { Soprano: [''], Alto: [''], Tenor: [''], Bass: [''] },
      /^There are no notes in the file/,
    ],
  ])('refuses %s and says what was found and what is needed', (_what, parts, says) => {
    const message = refusal(partwise(parts as Record<string, string[]>));
    expect(message).toMatch(says);
    expect(message).toMatch(/Needed are soprano, alto, tenor and bass/);
  });

  it('refuses a quarter tone and an odd tuplet, naming bar and voice', () => {
    const quarter = notes('w:G5').replace('<octave>', '<alter>0.5</alter><octave>');
    expect(refusal(partwise(FILL(quarter)))).toMatch(
      /^In bar 2, soprano, a note is G5 altered by 0\.5 semitones/,
    );
    const eleven = notes('w:G5').replace('<duration>16</duration>', '<duration>11</duration>');
    expect(
      refusal(
        partwise(FILL(`<attributes><divisions>11</divisions></attributes>${eleven.replace('11', '10')}`)),
      ),
    ).toMatch(/^In bar 2, soprano, a note begins or ends at a moment/);
  });
});
