import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { writeMusicXml } from '../../src/musicxml/index.ts';
import { readNotation } from '../../src/notation/index.ts';
import { looksLikeEverything, packEverything, unpackEverything } from '../../web/files/everything.ts';
import { takeBytes, takeText, withVoices } from '../../web/files/open.ts';
import { asTyped, pasted } from '../../web/files/pasted.ts';
import { fileName } from '../../web/files/save.ts';
import { openKeeping } from '../../web/state/keeping.ts';
import { workFromText } from '../../web/state/work.ts';

const bytes = (text: string) => new TextEncoder().encode(text);
const fixture = (name: string) => readFileSync(new URL(`../../fixtures/exercises/${name}`, import.meta.url));

describe('what is taken in', () => {
  it('a text with mistakes, to be mended in the page', async () => {
    const taken = await takeText('S: C5 X5 |');
    expect(taken).toMatchObject({ ok: true, work: { problems: [{ line: 1, column: 7 }] } });
  });
  it('nothing that has no line of an exercise in it', async () => {
    expect(await takeText('Dear Sir, here is my chorale.')).toMatchObject({ ok: false });
  });
  it('a text that an old program wrote, with its quotation marks, and one in UTF-16, mistakes and all', () => {
    const old = Uint8Array.from([...bytes('title: Pat'), 0x92, ...bytes('s\nS: C5 D5 E5 F5 |')]);
    const taken = takeBytes(old, 'old.txt');
    expect(taken.ok && taken.work.score.title).toBe('Pat’s');
    const wide = Uint8Array.from([
      0xff,
      0xfe,
      ...[...'S: C5 X5 |'].flatMap((sign) => [sign.charCodeAt(0), 0]),
    ]);
    expect(takeBytes(wide, 'wide.txt')).toMatchObject({
      ok: true,
      work: { problems: [{ line: 1, column: 7 }] },
    });
  });
  it('a file without a title, under its own name', () => {
    const taken = takeBytes(bytes('S: C5*4 |'), 'kite_hill.txt');
    expect(taken.ok && taken.work.score.title).toBe('kite hill');
  });
  it('MusicXML, with the lines it was read from to give out anew', () => {
    const taken = takeBytes(fixture('lantern.musicxml'), 'lantern.musicxml');
    if (!taken.ok || !taken.particulars?.source) throw new Error('not taken');
    const { source } = taken.particulars;
    const [first, second] = source.assignment.lines;
    const swapped = withVoices(source, { S: second!.id, A: first!.id });
    if (!swapped.ok) throw new Error(swapped.message);
    const notes = (work: typeof swapped.work, voice: 'S' | 'A') =>
      work.score.voices[voice].filter((e) => e.kind === 'note');
    expect(notes(swapped.work, 'S')).toEqual(notes(taken.work, 'A'));
    expect(withVoices(source, { S: first!.id, A: first!.id })).toMatchObject({ ok: false });
  });
  it('a brief: its given voices locked, the brief beside it', async () => {
    const text = 'task: add the rest\ntitle: Set\nS: C5*4 |\n';
    expect(await takeText(text)).toMatchObject({ ok: true, particulars: { brief: text, locked: ['S'] } });
  });
  it('what MusicXML it writes itself', () => {
    const { score } = readNotation(fixture('lantern.txt').toString());
    const taken = takeBytes(bytes(writeMusicXml(score)), 'again.musicxml');
    expect(taken.ok && taken.work.score.voices).toEqual(score.voices);
  });
});

describe('everything as one file', () => {
  it('comes back, versions and notes and all, and does no harm to what is newer', async () => {
    const first = await openKeeping();
    const { score } = workFromText('title: One\nS: C5*4 |');
    const exercise = {
      id: 'one',
      title: 'One',
      changed: 1000,
      text: 'title: One\nS: C5*4 |',
      score,
      locked: ['S' as const],
      notes: { 'parallel-fifths@0:SB': 'so be it' },
      brief: '',
      otherSeconds: 90,
    };
    await first.putExercise(exercise);
    await first.putVersion({
      key: 'v',
      exercise: 'one',
      when: 500,
      label: 'draft',
      text: 'S: D5*4 |',
      score,
    });
    const packed = await packEverything(first);
    expect(looksLikeEverything(packed)).toBe(true);

    const second = await openKeeping();
    expect(await unpackEverything(packed, second)).toBe(1);
    expect(await second.exercise('one')).toEqual(exercise);
    expect((await second.versions('one')).map((v) => v.label)).toEqual(['draft']);

    await second.putExercise({ ...exercise, changed: 2000, text: 'title: One\nS: E5*4 |' });
    await unpackEverything(packed, second);
    expect((await second.exercise('one'))?.text).toContain('E5');
    expect((await second.versions('one')).map((v) => v.label)).toEqual(['from a file', 'draft']);
  });
  it('is refused where it is damaged or something else', async () => {
    const keeping = await openKeeping();
    for (const text of [
      '{"partwise":"exercises"}',
      '{"partwise":"exercises","exercises":[{"id":1}]}',
      '[]',
      'nonsense',
    ])
      expect(await unpackEverything(text, keeping)).toBeUndefined();
  });
});

describe('file names', () => {
  it.each([
    ['A tune: for “practice”!', 'A-tune-for-practice.txt'],
    ['../../etc/passwd', 'etcpasswd.txt'],
    ['Où est l’écho', 'Ou-est-lecho.txt'],
    ['***', 'exercise.txt'],
  ])('%s becomes %s', (title, name) => {
    expect(fileName(title, 'txt')).toBe(name);
  });
});

describe('what is pasted', () => {
  const clipboard = (text: string, ...files: File[]) => ({
    files: files as unknown as FileList,
    getData: () => text,
  });
  it('is the words where a word processor lays their picture beside them', () => {
    const picture = new File(['x'], 'image.png', { type: 'image/png' });
    expect(pasted(clipboard('S: C5 |', picture))).toEqual({ text: 'S: C5 |', files: [] });
  });
  it('is the file where one was copied, and nothing where there is nothing', () => {
    const file = new File(['x'], 'mine.musicxml');
    expect(pasted(clipboard('mine.musicxml', file))).toEqual({ text: undefined, files: [file] });
    expect(pasted(clipboard(' \n'))).toEqual({ text: undefined, files: [] });
  });
  it('is read as it was typed, before a word processor improved it', async () => {
    const improved =
      '\ufefftitle: Mine\r\nkey:\u00a0F\u266f minor\u000bS:\u2003F\u266f5\u00d73/2 (B\u266d4 A4) C5 \u2223\r\n';
    expect(asTyped(improved)).toBe('title: Mine\nkey: F# minor\nS: F#5*3/2 (Bb4 A4) C5 |\n');
    const taken = await takeText('\u00a0title: Mine\r\nkey: G\u00a0major\r\nS: F\u266f5 G5 A5 B5 \u2223');
    expect(taken.ok && taken.work.problems).toEqual([]);
    expect(taken.ok && taken.work.score.voices.S.map((e) => e.kind === 'note' && e.pitch.alteration)).toEqual(
      [1, 0, 0, 0],
    );
  });
  it('has its repeats, fractions and rests back, of which a word processor makes faces, signs and sentences', async () => {
    const improved =
      'key\uff1a G major\nupbeat: \u00bd\nS: D5/2 |: G5*2 A5 B5! R |\u00a0? R C5*2 \u{1f610}\ufe0f\nA: C5*1\u00bd';
    expect(asTyped(improved)).toBe(
      'key: G major\nupbeat: 1/2\nS: D5/2 |: G5*2 A5 B5! r | ? r C5*2 :|\nA: C5*1\u00bd',
    );
    const taken = await takeText(improved.slice(0, improved.indexOf('\nA:')));
    expect(taken.ok && taken.work.problems).toEqual([]);
    expect(taken.ok && taken.work.score.bars.at(-1)?.repeatEnd).toBe(true);
  });
  it('is MusicXML whatever stands before its first sign', async () => {
    const xml = writeMusicXml(readNotation('S: C5*4 |').score);
    expect((await takeText(`\n  ${xml}`)).ok).toBe(true);
  });
});
