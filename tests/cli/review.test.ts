import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readMusicXml, writeMusicXml } from '../../src/musicxml/index.ts';
import { readNotation } from '../../src/notation/index.ts';
import { jsonLineSchema, jsonReviewSchema } from '../../src/report/schema.ts';
import { lostOrForeign } from '../support/marked.ts';
import { partwise, partwiseProcess } from './run.ts';

const CLEAN = 'fixtures/exercises/morning-walk.txt';
const FAULTY = 'fixtures/exercises/fault-consecutives.txt';

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'partwise-'));
});
afterAll(() => rmSync(folder, { recursive: true }));

function file(name: string, content: string | Uint8Array): string {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
}

describe('partwise review --json', () => {
  it('prints one review a line for each file, and the others where one cannot be read', async () => {
    const broken = file('broken.txt', 'key: G major\nS: G4 H4 |\n');
    const { status, out } = await partwise(['review', '--json', CLEAN, broken, 'no-such-file', FAULTY]);
    const lines = out.trimEnd().split('\n');
    expect(lines).toHaveLength(4);
    const [clean, unread, missing, faulty] = lines.map((line) => jsonLineSchema.parse(JSON.parse(line)));
    expect(clean).toMatchObject({
      file: CLEAN,
      title: 'Morning walk',
      key: 'G major',
      bars: 5,
      crotchets: 16,
    });
    expect(unread).toMatchObject({ file: broken, error: { line: 2, column: 7 } });
    expect(missing).toMatchObject({ file: 'no-such-file', error: { message: /no such file/ } });
    expect(faulty).toMatchObject({ file: FAULTY });
    expect(status).toBe(2);
  });

  it('reads standard input, and says 0 for nothing at fault', async () => {
    const text = 'title: One chord\nkey: C major\nmetre: 4/4\nS: E5*4! |\nA: G4*4 |\nT: C4*4 |\nB: C3*4 |\n';
    const { status, out } = await partwise(['review', '--json', '-'], text);
    const review = jsonReviewSchema.parse(JSON.parse(out));
    expect(review.file).toBe('-');
    expect(review.chords).toMatchObject([
      {
        at: 0,
        until: 4,
        bar: '1',
        beat: 1,
        key: 'C major',
        numeral: 'I',
        root: 'C',
        bass: 'C',
        quality: 'major',
        seventh: false,
      },
    ]);
    expect(review.summary.faults).toBe(0);
    expect(status).toBe(0);
  });

  it('says 1 where there are faults', async () => {
    const { status, out } = await partwise(['review', '--json', FAULTY]);
    const review = jsonReviewSchema.parse(JSON.parse(out));
    expect(review.findings.map(({ rule }) => rule)).toEqual(
      expect.arrayContaining(['parallel-fifths', 'parallel-octaves']),
    );
    expect(status).toBe(1);
  });

  it('tells every mistake of a text, each with its place', async () => {
    const broken = file('three.txt', 'key: G major\nmetre: 4/4\nS: G4 H4 G4 Q4 |\nB: G3 G3 *2 G3 |\n');
    const { out } = await partwise(['review', '--json', broken]);
    const { error } = JSON.parse(out) as { error: { problems: { line: number }[] } };
    expect(error.problems.map(({ line }) => line)).toEqual([3, 3, 4]);
  });

  it('goes by the content, not by the ending', async () => {
    const odd = file(
      'exercise.xml',
      'key: C major\nmetre: 4/4\nS: E5*4 |\nA: G4*4 |\nT: C4*4 |\nB: C3*4 |\n',
    );
    const picture = file('picture.musicxml', new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0, 1, 2, 3]));
    const { out, status } = await partwise(['review', '--json', odd, picture, folder]);
    const [text, image, directory] = out
      .trimEnd()
      .split('\n')
      .map((line) => jsonLineSchema.parse(JSON.parse(line)));
    expect(text).toMatchObject({ key: 'C major' });
    expect(image).toMatchObject({ error: { message: /neither MusicXML nor text/ } });
    expect(directory).toMatchObject({ error: { message: /folder/ } });
    expect(status).toBe(2);
  });
});

describe('partwise review for people', () => {
  it('lists marks by what costs most, prints chords and cadences and ends with a summary, within 80 columns', async () => {
    const { out, status } = await partwise(['review', FAULTY, CLEAN]);
    expect(out).toMatch(/^Two abreast/);
    expect(out).toMatch(/^ 1 {2}Fault: parallel fifths$/m);
    expect(out).toMatch(/Bar 1, beat 2: Tenor and bass move in parallel fifths/);
    expect(out).not.toMatch(/parallel-fifths/);
    expect(out).toMatch(/perfect cadence in C major/);
    expect(out).toMatch(/\d faults?/);
    for (const line of out.split('\n')) expect([...line].length, line).toBeLessThanOrEqual(80);
    expect(out).not.toContain('\u001b');
    expect(status).toBe(1);
  });

  it('writes chords the way asked for', async () => {
    const figures = await partwise(['review', CLEAN]);
    const letters = await partwise(['review', '--labels', 'letters', CLEAN]);
    const bass = await partwise(['review', '--labels', 'bass', CLEAN]);
    expect(figures.out).toMatch(/V6\b/);
    expect(letters.out).toMatch(/Vb\b/);
    expect(bass.out).not.toMatch(/\bIV?6?\b ·/);
  });
});

describe('bad usage', () => {
  it.each([
    [['review']],
    [['review', '--no-such-option', CLEAN]],
    [['review', '--labels', 'runes', CLEAN]],
    [['review', '--profile', 'no-such-profile', CLEAN]],
    [['explain', 'no-such-rule']],
    [['serve', '--port', 'soon']],
    [['revue', CLEAN]],
  ])('%j exits with 2 and a sentence', async (args) => {
    const { status, out, err } = await partwise(args);
    expect(status).toBe(2);
    expect(out).toBe('');
    expect(err.length).toBeGreaterThan(10);
    expect(err).not.toMatch(/at .*\.ts:\d+/);
  });

  it('shows help and the version with 0', async () => {
    expect(await partwise(['--help'])).toMatchObject({ status: 0, err: '' });
    expect(await partwise(['--version'])).toMatchObject({ status: 0, out: '0.1.0\n' });
  });
});

describe('as a process', () => {
  it('reads standard input, prints to each stream what belongs there, and exits with the status', async () => {
    const fine = await partwiseProcess(['review', '--json', '-'], readFileSync(CLEAN));
    expect(jsonReviewSchema.parse(JSON.parse(fine.out))).toMatchObject({ title: 'Morning walk' });
    expect(fine).toMatchObject({ status: 0, err: '' });
    const bad = await partwiseProcess(['review', FAULTY, 'no-such-file']);
    expect(bad).toMatchObject({ status: 2, out: expect.stringMatching(/^Two abreast/) });
    expect(bad.err).toMatch(/no-such-file: could not be read\.\n {2}There is no such file/);
  });
});

it('a reader that stops early is no error', () => {
  const files = Array.from({ length: 40 }, () => CLEAN).join(' ');
  const ran = spawnSync(
    'bash',
    ['-c', `set -o pipefail; ${process.execPath} src/cli/partwise.mjs review --json ${files} | head -n 1`],
    {
      encoding: 'utf8',
    },
  );
  expect(ran.stderr).toBe('');
  expect(ran.stdout.split('\n')).toHaveLength(2);
});

describe('partwise annotate', () => {
  it.each(['musicxml', 'mxl', 'txt'])(
    'writes .%s, which opens again and gives the same review',
    async (ending) => {
      const out = join(folder, `annotated.${ending}`);
      expect(await partwise(['annotate', FAULTY, '-o', out])).toMatchObject({ status: 0, err: '' });
      const [before, after] = (await partwise(['review', '--json', FAULTY, out])).out
        .trimEnd()
        .split('\n')
        .map((line) => jsonReviewSchema.parse(JSON.parse(line)));
      expect(after!.findings).toEqual(before!.findings);
      expect(after!.chords).toEqual(before!.chords);
    },
  );

  it('hands a closed score back as a closed score', async () => {
    const { score } = readNotation(readFileSync(CLEAN, 'utf8'));
    const closed = file('closed.musicxml', writeMusicXml(score, { layout: 'closed score' }));
    const out = join(folder, 'closed annotated.musicxml');
    expect(await partwise(['annotate', closed, '-o', out])).toMatchObject({ status: 0, err: '' });
    const read = readMusicXml(readFileSync(out));
    expect(read).toMatchObject({ ok: true, assignment: { layout: 'closed score' } });
    expect(read.ok && read.score.voices).toEqual(score.voices);
  });

  it('puts the marks into the pupil’s own file and leaves the rest of it alone', async () => {
    const { score } = readNotation(readFileSync(FAULTY, 'utf8'));
    const own = writeMusicXml(score).replace('<part id="P1">', '<!-- mine --><part id="P1">');
    const from = file('own.musicxml', own);
    const out = join(folder, 'own marked.musicxml');
    const annotate = (...more: string[]) => partwise(['annotate', from, '-o', ...more]);
    expect(await annotate(out)).toMatchObject({ status: 0, err: '' });
    const marked = readFileSync(out, 'utf8');
    expect(lostOrForeign(own, marked)).toEqual([]);
    expect(marked).toMatch(/<words[^>]*>1 {2}Bar 1, beat 2: fault, parallel fifths/);
    // An earlier marked copy is replaced, with the same bytes; anything else only when asked.
    expect(await annotate(out)).toMatchObject({ status: 0, err: '' });
    expect(readFileSync(out, 'utf8')).toBe(marked);
    expect(await annotate(from)).toMatchObject({ status: 2, err: expect.stringMatching(/--force/) });
    const other = file('other.musicxml', own);
    expect(await annotate(other)).toMatchObject({ status: 2, err: expect.stringMatching(/there already/) });
    expect(readFileSync(from, 'utf8')).toBe(own);
    expect(await annotate(from, '--force')).toMatchObject({ status: 0, err: '' });
    expect(readFileSync(from, 'utf8')).toBe(marked);
    expect(await annotate(from)).toMatchObject({ status: 2, err: expect.stringMatching(/--force/) });
  }, 120_000);

  it('says which endings it knows', async () => {
    const { status, err } = await partwise(['annotate', FAULTY, '-o', join(folder, 'out.pdf')]);
    expect(status).toBe(2);
    expect(err).toMatch(/\.musicxml/);
  });
});

describe('--profile', () => {
  it('takes a teacher’s own file, and the summary says what it switches off', async () => {
    const own = file(
      'ours.json',
      JSON.stringify({
        name: 'ours',
        statement: 'For one class.',
        rules: { 'parallel-octaves': { severity: 'off' } },
      }),
    );
    const { out } = await partwise(['review', '--profile', own, FAULTY]);
    expect(out).toMatch(/Fault: parallel fifths/);
    expect(out).not.toMatch(/(Fault|from it): parallel octaves/);
    expect(out).toMatch(/“ours” does not look at: parallel octaves/);
  });

  it('reads a file in any encoding that text comes in', async () => {
    const own = JSON.stringify({ name: 'ours', statement: 'For “one” class.', rules: {} });
    const wide = file('wide.json', Buffer.concat([Buffer.from([0xff, 0xfe]), Buffer.from(own, 'utf16le')]));
    expect((await partwise(['review', '--profile', wide, FAULTY])).out).toMatch(/Fault: parallel fifths/);
  });

  it('names every error of a file', async () => {
    const wrong = file('wrong.json', JSON.stringify({ name: 'X Y', rules: { 'no-such-rule': {} } }));
    const { status, err } = await partwise(['review', '--profile', wrong, FAULTY]);
    expect(status).toBe(2);
    expect(err).toMatch(/no-such-rule/);
    expect(err.split('\n').length).toBeGreaterThan(2);
  });
});
