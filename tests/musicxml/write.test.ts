import { readdirSync, readFileSync } from 'node:fs';
import { strFromU8, strToU8, unzipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { readMusicXml, type WriteOptions, writeMusicXml, writeMxl } from '../../src/musicxml/index.ts';
import { printNotation, readNotation } from '../../src/notation/index.ts';
import { endOf, type Score, VOICES } from '../../src/score/score.ts';
import { CROTCHET } from '../../src/score/time.ts';
import { CHORALES, haveChorales, haveSchema } from '../support/musicxml.ts';
import { sampled } from '../support/sampled.ts';
import { schemaFaults } from '../support/schema.ts';

const EXERCISES = new URL('../../fixtures/exercises/', import.meta.url).pathname;
const LAYOUTS = ['four staves', 'closed score'] as const;

/** Everything but the reader's remarks, which are no part of the music. */
function music(score: Score): Omit<Score, 'remarks'> {
  const { remarks: _remarks, ...rest } = score;
  return rest;
}

function read(bytes: Uint8Array): Score {
  const reading = readMusicXml(bytes);
  if (!reading.ok) throw new Error(`${reading.message} (line ${reading.line})`);
  return reading.score;
}

function again(score: Score, options: WriteOptions = {}): Score {
  return read(strToU8(writeMusicXml(score, options)));
}

function exercise(name: string): Score {
  return readNotation(readFileSync(`${EXERCISES}${name}.txt`, 'utf8')).score;
}

const EVERYTHING = `title: Every & <thing>
key: G major
metre: 4/4
tempo: 72.5
upbeat: 1

S: D5 | (D5 E5 F#5)*2 G5*3/2 F#5/2 | E5*4_ | E5*2 D5*2! |
A: G4 | A4 ? B4/2 A4/2 G4 | r G4*3 | F##4 G#4 Cb5 Bbb4 |
T: B3 | D4 D4 D4 D4 | C4 = = = |
B: G3 | F#3 D3 G2 B2 | C3*4 | ? A2 D3 ? |
`;

describe('what somebody said of a phrase’s end', () => {
  const text = "key: G major\nmetre: 4/4\nS: G4 A B' C5 | D5~ C B4*2! |\nB: G2 ? ? ? | ?*4 |";

  it.each(LAYOUTS)('is kept on %s, unprinted and as the schema allows', async (layout) => {
    const { score } = readNotation(text);
    const phrases = (one: Score) =>
      one.voices.S.map((event) => (event.kind === 'note' ? event.phrase : undefined));
    expect(phrases(score)).toContain('ends');
    expect(phrases(score)).toContain('goes on');
    expect(phrases(again(score, { layout }))).toEqual(phrases(score));
    const xml = writeMusicXml(score, { layout });
    expect(xml).toContain('<other-notation type="single" print-object="no">phrase ends</other-notation>');
    if (haveSchema) expect(await schemaFaults([{ name: layout, xml }])).toEqual([]);
  });
});

describe('writing and reading again', () => {
  const files = readdirSync(EXERCISES).filter((file) => file.endsWith('.txt'));

  it.each(LAYOUTS.flatMap((layout) => files.map((file) => ({ layout, file }))))(
    'gives the text of $file back by way of MusicXML on $layout',
    ({ file, layout }) => {
      const score = exercise(file.replace('.txt', ''));
      const back = again(score, { layout });
      expect(printNotation(back)).toBe(printNotation(score));
      expect(music(back)).toEqual(music(score));
    },
  );

  it.each(files)('finds the same score in %s and in the MusicXML beside it', (file) => {
    const bytes = readFileSync(EXERCISES + file.replace('.txt', '.musicxml'));
    expect(printNotation(read(bytes))).toBe(printNotation(exercise(file.replace('.txt', ''))));
  });

  it.each(LAYOUTS)('keeps tuplets, ties, gaps, rests, double accidentals, tempo and title (%s)', (layout) => {
    const { score, problems } = readNotation(EVERYTHING);
    expect(problems).toEqual([]);
    expect(music(again(score, { layout }))).toEqual(music(score));
  });

  it('prints a note above the music, which no reader takes for its title', () => {
    const score = readNotation('title: Weir\nS: C5*4 |\n').score;
    const xml = writeMusicXml(score, { note: 'Set <without> hints.' });
    expect(xml).toContain('<credit-words>Set &lt;without&gt; hints.</credit-words>');
    const read = readMusicXml(new TextEncoder().encode(xml));
    expect(read.ok && read.score.title).toBe('Weir');
  });
  it.each(LAYOUTS)('keeps lyrics, grace notes, figures, repeats and endings (%s)', (layout) => {
    const { score } = readNotation(
      'key: D minor\nmetre: 3/4\n\nS: D5 E5 F5 | E5*3 | D5*3 |\nB: D3 C3 D3 | A2*3 | D3*3 |',
    );
    const rich: Score = {
      ...score,
      bars: score.bars.map((bar, i) => ({
        ...bar,
        ...(i === 0 ? { repeatStart: true as const } : {}),
        ...(i === 1 ? { repeatEnd: true as const, ending: '1' } : {}),
        ...(i === 2 ? { ending: '2' } : {}),
      })),
      voices: {
        ...score.voices,
        S: score.voices.S.map((event, i) =>
          event.kind !== 'note'
            ? event
            : {
                ...event,
                ...(i === 0 ? { lyrics: ['Al-', 'Sing '.trim()] } : {}),
                ...(i === 1 ? { lyrics: ['le-'] } : {}),
                ...(i === 2 ? { lyrics: ['lu', 'we'] } : {}),
                ...(i === 3 ? { grace: [{ step: 'F', alteration: 1, octave: 5 }] as const } : {}),
              },
        ),
      },
      figures: [
        { at: 0, figures: ['6', '#4'] },
        { at: CROTCHET / 2, figures: ['b7'] },
        { at: 4 * CROTCHET, figures: ['n'] },
      ],
    };
    expect(music(again(rich, { layout }))).toEqual(music(rich));
  });

  it('does not change the score it is given', () => {
    const score = exercise('lantern');
    const before = structuredClone(score);
    writeMusicXml(score, { layout: 'closed score' });
    expect(score).toEqual(before);
  });

  it('packs an archive that names its score', () => {
    const score = exercise('millstream');
    const entries = unzipSync(writeMxl(score));
    expect(Object.keys(entries)).toEqual(['mimetype', 'META-INF/container.xml', 'score.musicxml']);
    expect(strFromU8(entries['score.musicxml']!)).toBe(writeMusicXml(score));
    expect(writeMxl(score)).toEqual(writeMxl(score));
    expect(music(read(writeMxl(score)))).toEqual(music(score));
  });
});

describe.skipIf(!haveChorales)('the open chorales (skipped where ../shared/corpus is absent)', () => {
  const files = haveChorales ? readdirSync(CHORALES).filter((file) => file.endsWith('.mxl')) : [];

  it('are read as four whole voices, as long as their analyses say', () => {
    expect(files.length).toBeGreaterThan(0);
    for (const file of files) {
      const reading = readMusicXml(readFileSync(CHORALES + file));
      if (!reading.ok) throw new Error(`${file}: ${reading.message}`);
      const { quarters } = JSON.parse(readFileSync(CHORALES + file.replace('.mxl', '.json'), 'utf8'));
      expect(endOf(reading.score) / CROTCHET, file).toBe(quarters);
      expect(reading.assignment.guessed, file).toBe(false);
      for (const voice of VOICES) {
        expect(
          reading.score.voices[voice].filter((event) => event.kind === 'note').length,
          file,
        ).toBeGreaterThan(20);
      }
    }
  }, 120_000);

  it('come back note for note from MusicXML written here, on four staves and in closed score', () => {
    for (const file of sampled(files, 3)) {
      const score = read(readFileSync(CHORALES + file));
      for (const layout of LAYOUTS) expect(music(again(score, { layout })), file).toEqual(music(score));
    }
  }, 120_000);

  it('come back note for note from our text', () => {
    for (const file of sampled(files, 3)) {
      const score = read(readFileSync(CHORALES + file));
      const { score: back, problems } = readNotation(printNotation(score));
      expect(problems, file).toEqual([]);
      for (const voice of VOICES) {
        const notes = (of: Score) =>
          of.voices[voice].map((event) =>
            event.kind === 'note'
              ? {
                  at: event.at,
                  duration: event.duration,
                  pitch: event.pitch,
                  tied: event.tied,
                  fermata: event.fermata,
                }
              : { kind: event.kind, at: event.at, duration: event.duration },
          );
        expect(notes(back), file).toEqual(notes(score));
      }
    }
  }, 120_000);
});

describe.skipIf(!haveSchema)('the MusicXML 4.0 schema (skipped where ../shared/schema is absent)', () => {
  it('accepts what is written', async () => {
    const scores = [
      ...readdirSync(EXERCISES)
        .filter((file) => file.endsWith('.txt'))
        .map((file) => exercise(file.replace('.txt', ''))),
      readNotation(EVERYTHING).score,
      ...(haveChorales
        ? readdirSync(CHORALES)
            .filter((file) => file.endsWith('.mxl'))
            .filter((_, i) => i % 40 === 0)
            .map((file) => read(readFileSync(CHORALES + file)))
        : []),
    ];
    const documents = scores.flatMap((score, i) =>
      LAYOUTS.map((layout) => ({ name: `${i}-${layout[0]}.xml`, xml: writeMusicXml(score, { layout }) })),
    );
    expect(await schemaFaults(documents)).toEqual([]);
  }, 60_000);

  it('names what is wrong in a file that is not valid (so that the test above can fail)', async () => {
    const xml = writeMusicXml(exercise('lantern'))
      .replace('<duration>', '<lenght>')
      .replace('</duration>', '</lenght>');
    expect((await schemaFaults([{ name: 'wrong.xml', xml }])).join()).toContain('lenght');
  }, 60_000);
});
