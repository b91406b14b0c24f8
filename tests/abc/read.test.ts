import { beforeAll, describe, expect, it } from 'vitest';
import { readAbc } from '../../src/abc/read.ts';
import { openBrief } from '../../src/brief/open-brief.ts';
import { kindOf, openScore, readyFor } from '../../src/open/open.ts';
import { printPitch } from '../../src/score/pitch.ts';
import { type Score, VOICES, type VoiceName } from '../../src/score/score.ts';
import { CROTCHET, printMetre } from '../../src/score/time.ts';

beforeAll(() => readyFor('abc'));

const bytesOf = (text: string) => new TextEncoder().encode(text);

function read(text: string): Score {
  const result = readAbc(text);
  if (!result.ok) throw new Error(result.message);
  return result.score;
}

function refusal(text: string): string {
  const result = readAbc(text);
  if (result.ok) throw new Error('was read');
  return result.message;
}

/** A tune in crotchets, with these fields before its key. */
const tune = (music: string, { key = 'C', metre = '4/4', unit = '1/4', more = '' } = {}) =>
  `X:1\nT:A tune\n${more}M:${metre}\nL:${unit}\nK:${key}\n${music}\n`;

/** A voice as text: `C5:1 r:1 ?:2`, in crotchets; `~` tied, `!` fermata. */
function voice(score: Score, name: VoiceName = 'S'): string {
  return score.voices[name]
    .map((event) => {
      const what = event.kind === 'note' ? printPitch(event.pitch) : event.kind === 'rest' ? 'r' : '?';
      const marks = `${event.kind === 'note' && event.tied ? '~' : ''}${event.kind !== 'gap' && event.fermata ? '!' : ''}`;
      return `${what}:${Number((event.duration / CROTCHET).toFixed(4))}${marks}`;
    })
    .join(' ');
}

const bars = (score: Score) =>
  score.bars.map(({ number, duration, metre }) => `${number} ${printMetre(metre)} ${duration / CROTCHET}`);

describe('a tune', () => {
  it('has its title, key, metre and tempo, and is the soprano', () => {
    const score = read(tune('G A B c | d4 |]', { key: 'G', more: 'Q:1/4=72\n' }));
    expect(score.title).toBe('A tune');
    expect(score.tempo).toBe(72);
    expect(score.bars[0]!.key).toEqual({ fifths: 1, mode: 'major' });
    expect(voice(score)).toBe('G4:1 A4:1 B4:1 C5:1 D5:4');
    expect(VOICES.slice(1).map((one) => voice(score, one))).toEqual(['?:4 ?:4', '?:4 ?:4', '?:4 ?:4']);
    expect(score.remarks).toEqual([]);
  });

  it('changes its tempo where it says so', () => {
    const score = read(tune('G A B c | [Q:1/8=100] d4 | e4 |]', { key: 'G', more: 'Q:1/4=72\n' }));
    expect(score.bars.map((bar) => bar.tempo)).toEqual([72, 50, 50]);
  });

  it.each([
    ['Am', { fifths: 0, mode: 'minor' }, 'F4'],
    ['Bb', { fifths: -2, mode: 'major' }, 'F4'],
    ['E minor', { fifths: 1, mode: 'minor' }, 'F#4'],
    ['DDor', { fifths: 0 }, 'F4'],
    ['A mix', { fifths: 2 }, 'F#4'],
    ['C#', { fifths: 7, mode: 'major' }, 'F#4'],
    ['Cb', { fifths: -7, mode: 'major' }, 'Fb4'],
  ])('in %s', (key, signature, note) => {
    const score = read(tune('F4 |', { key }));
    expect(score.bars[0]!.key).toEqual(signature);
    expect(voice(score)).toBe(`${note}:4`);
  });

  it('keeps accidentals through the bar, at every octave, and no further', () => {
    const score = read(tune('^F F f =f | F _B B ^^c | B c __d d |'));
    expect(voice(score)).toBe('F#4:1 F#4:1 F#5:1 F5:1 F4:1 Bb4:1 Bb4:1 C##5:1 B4:1 C5:1 Dbb5:1 Dbb5:1');
  });

  it('keeps accidentals at their own octave, or at their note, where the tune says so', () => {
    const music = '^F f F2 |';
    expect(voice(read(tune(music, { more: '%%propagate-accidentals octave\n' })))).toBe('F#4:1 F5:1 F#4:2');
    expect(voice(read(tune(music, { more: 'I:propagate-accidentals not\n' })))).toBe('F#4:1 F5:1 F4:2');
  });

  it('holds a tied note’s accidental over the barline, for that note alone', () => {
    expect(voice(read(tune('C C C ^F- | F F G2 |')))).toBe('C4:1 C4:1 C4:1 F#4:1~ F#4:1 F4:1 G4:2');
  });

  it('has octaves, note lengths, broken rhythm and tuplets exactly', () => {
    const score = read(tune("C,2 c'/ d'// e// A>B | c<d (3efg a | (5ABcde f2 |", { metre: '4/4' }));
    expect(score.voices.S.reduce((sum, { duration }) => sum + duration, 0)).toBeGreaterThan(0);
    expect(voice(score)).toMatch(/^C3:2 C6:0\.5 D6:0\.25 E5:0\.25 A4:1\.5 B4:0\.5/);
    const triplet = score.voices.S.filter(({ duration }) => duration === (CROTCHET * 2) / 3);
    expect(triplet).toHaveLength(3);
    expect(
      score.voices.S.every(({ duration, at }) => Number.isInteger(duration) && Number.isInteger(at)),
    ).toBe(true);
  });

  it('knows an upbeat, a fermata and metres that change', () => {
    const score = read(tune('D | G A B HG | [M:3/4] A3 | [M:6/8] A3/2 !fermata!B3/2 |', { key: 'G' }));
    expect(bars(score)).toEqual(['0 4/4 1', '1 4/4 4', '2 3/4 3', '3 6/8 3']);
    expect(voice(score)).toMatch(/B4:1 G4:1! /);
  });

  it('has rests, bars of rest and what is not written', () => {
    const score = read(tune('C D z E | Z2 | C4 |'));
    expect(bars(score)).toHaveLength(4);
    expect(voice(score)).toContain('C4:1 D4:1 r:1 E4:1');
  });

  it('keeps words, repeats, endings and grace notes', () => {
    const score = read(tune('|: {d}c d e f |1 c4 :|2 g4 |]\nw: Sing-ing a song now end'));
    const [first, second] = score.voices.S;
    expect(first).toMatchObject({ lyrics: ['Sing-'], grace: [{ step: 'D' }] });
    expect(second).toMatchObject({ lyrics: ['ing'] });
    expect(score.bars.map(({ repeatStart, repeatEnd, ending }) => [repeatStart, repeatEnd, ending])).toEqual([
      [true, undefined, undefined],
      [undefined, true, '1'],
      [undefined, undefined, '2'],
    ]);
  });

  it('changes key on the way, in a line or between lines', () => {
    const score = read(tune('F4 | [K:G] F4 |\nK:F\nB4 |'));
    expect(score.bars.map(({ key }) => key.fifths)).toEqual([0, 1, -1]);
    expect(voice(score)).toBe('F4:4 F#4:4 Bb4:4');
  });
});

describe('several voices', () => {
  const INTERLEAVED = `X:3
T:Four
M:4/4
L:1/4
%%score (S A) (T B)
V:S clef=treble name="Soprano"
V:A clef=treble name="Alto"
V:T clef=treble-8 name="Tenor"
V:B clef=bass name="Bass"
K:G
[V:S] G A B c | d4 |
[V:A] D D D E | F4 |
[V:T] b a g g | a4 |
[V:B] G, F, G, C, | D,4 |
K:D
[V:S] f4 |]
[V:A] F4 |]
[V:T] d4 |]
[V:B] D,4 |]
`;
  const FOUR = [
    'G4:1 A4:1 B4:1 C5:1 D5:4 F#5:4',
    'D4:1 D4:1 D4:1 E4:1 F#4:4 F#4:4',
    'B4:1 A4:1 G4:1 G4:1 A4:4 D4:4',
    'G3:1 F#3:1 G3:1 C3:1 D3:4 D3:4',
  ];

  it('line by line, a tenor with an 8 under its clef an octave lower', () => {
    const score = read(INTERLEAVED);
    expect(VOICES.map((one) => voice(score, one))).toEqual(FOUR);
    expect(score.bars.map(({ key }) => key.fifths)).toEqual([1, 1, 2]);
    expect(score.remarks).toEqual([]);
  });

  it('voice by voice, a change of key in each', () => {
    const lines = INTERLEAVED.split('\n');
    const header = lines.slice(0, 10);
    const body = ['S', 'A', 'T', 'B'].flatMap((one) => {
      const own = lines.filter((line) => line.startsWith(`[V:${one}]`)).map((line) => line.slice(5));
      return [`V:${one}`, own[0]!, 'K:D', own[1]!];
    });
    const score = read([...header, ...body].join('\n'));
    expect(VOICES.map((one) => voice(score, one))).toEqual(FOUR);
  });

  it('of which some pause for a line are not mixed up', () => {
    const score = read(
      tune('[V:S] c4 |\n[V:B] C,4 |\n[V:B] D,4 |\n[V:S] z4 | e4 |\n[V:B] E,4 |', {
        more: 'V:S\nV:B clef=bass\n',
      }),
    );
    expect(voice(score, 'B')).toBe('C3:4 D3:4 E3:4');
    expect(voice(score, 'S')).toMatch(/^C5:4 .* E5:4$/);
  });

  it('called by numbers are told apart and that is said first', () => {
    const score = read(tune('V:1\nc4|\nV:2\nG4|\nV:3\nE4|\nV:4\nC,4|'));
    expect(VOICES.map((one) => voice(score, one))).toEqual(['C5:4', 'G4:4', 'E4:4', 'C3:4']);
    expect(score.remarks[0]).toMatchObject({ about: 'voices' });
  });

  it('can be given out by hand', () => {
    const result = readAbc(tune('V:1\nc4|\nV:2\nG4|\nV:3\nE4|'), { voices: { S: '1', B: '3' } });
    expect(result.ok && VOICES.map((one) => voice(result.score, one))).toEqual([
      'C5:4',
      '?:4',
      '?:4',
      'E4:4',
    ]);
  });
});

describe('a file in ABC', () => {
  it('is known by its content, whatever stands before the tune', () => {
    expect(kindOf(bytesOf(tune('C4|')))).toBe('abc');
    expect(kindOf(bytesOf(`\ufeff%abc-2.1\n% a comment\n\n${tune('C4|')}`))).toBe('abc');
    expect(kindOf(bytesOf('title: X\nkey: G major\nS: G4*4 |'))).toBe('text');
  });

  it('opens like any other, and is a brief of which the notes are given', () => {
    const opened = openScore(bytesOf(tune('G A B c | d4 |]')));
    expect(opened).toMatchObject({ ok: true, kind: 'abc' });
    const brief = openBrief(bytesOf(tune('G A B c | d4 |]')));
    expect(brief.ok && voice(brief.brief.score)).toBe('G4:1 A4:1 B4:1 C5:1 D5:4');
  });

  it('of several tunes gives the first, and says so', () => {
    const score = read(`${tune('C4|')}\n${tune('D4|').replace('X:1', 'X:2')}`);
    expect(voice(score)).toBe('C4:4');
    expect(score.remarks).toEqual([{ message: 'The file holds 2 tunes; the first was read.' }]);
  });

  it.each([
    ['an overlay', tune('C4 & E4 |'), /sets two voices on one line/],
    ['another sounding pitch', tune('C4|', { key: 'C transpose=-2' }), /another pitch than it sounds at/],
    ['far too much text', tune('C4|\n'.repeat(9000)), /more than 24 kB/],
    [
      'far too many voices',
      tune(Array.from({ length: 40 }, (_, i) => `V:${i}\nC4|`).join('\n')),
      /more than 8 voices/,
    ],
    ['graces without end', tune('{'.repeat(5000)), /grace notes/],
    ['a metre that is none', tune('C4|', { metre: '4/5' }), /M:4\/5 can't be read/],
    ['a quarter tone', tune('^/C4|'), /quarter tone|three|column/],
    ['a length that no beat has', tune('C/11 D E F |'), /no usual division/],
    ['no notes', tune(''), /no notes|no tune|empty/i],
  ])('is refused in a sentence for %s', (_what, text, says) => {
    expect(refusal(text)).toMatch(says);
  });

  it('says where something could not be read', () => {
    const score = read(tune('C D ¿ E F |'));
    expect(score.remarks).toEqual([
      {
        message:
          'Something at column 5 of line 6 could not be read as ABC and was passed over; look whether the notes there are right.',
        line: 6,
        column: 5,
      },
    ]);
  });
});
