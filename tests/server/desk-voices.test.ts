/** Voices given out by hand at the desk: for one script, for the whole stack, and taken back. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import request from 'supertest';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { createApp } from '../../server/app.ts';
import { type MarkingDesk, openMarkingDesk } from '../../server/desk/marking-desk.ts';
import { readMusicXml } from '../../src/musicxml/index.ts';
import { printPitch } from '../../src/score/pitch.ts';
import { exerciseText } from '../support/exercises.ts';
import { notes, partwise } from '../support/partwise.ts';

const BAR = {
  high: notes('q:C5 q:D5 q:E5 q:C5'),
  second: notes('q:G4 q:G4 q:G4 q:G4'),
  third: notes('q:E4 q:D4 q:C4 q:E4'),
  low: notes('q:C3 q:B2 q:C3 q:C3'),
};
/** Five instruments: nothing says which of them are the voices. */
const FIVE = partwise({
  Oboe: [BAR.high],
  Flute: [notes('q:A5 q:B5 q:A5 q:B5')],
  Clarinet: [BAR.second],
  Horn: [BAR.third],
  Tuba: [BAR.low],
});
const NAMED = partwise({ Soprano: [BAR.high], Alto: [BAR.second], Tenor: [BAR.third], Bass: [BAR.low] });
const WINDS = 'S=1,A=3,T=4,B=5';

let folder: string;
let marking: MarkingDesk;
let app: ReturnType<typeof createApp>;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'partwise-desk-voices-'));
  marking = await openMarkingDesk(join(folder, 'desk.sqlite'), { threads: 1 });
  app = createApp({ desk: marking, log: () => {} });
});
afterAll(async () => {
  await marking.close();
  rmSync(folder, { recursive: true });
});

/** A stack with these files; gives its number and the scripts', in their order. */
async function stackOf(...files: readonly string[]): Promise<{ stack: number; scripts: number[] }> {
  const made = await request(app).post('/api/desk/stacks').send({ name: 'Winds' });
  const stack: number = made.body.stack.id;
  for (const [i, content] of files.entries()) {
    await request(app)
      .post(`/api/desk/stacks/${stack}/scripts?file=${4000 + i}.musicxml`)
      .set('Content-Type', 'application/octet-stream')
      .send(Buffer.from(content));
  }
  const { body } = await request(app).get(`/api/desk/stacks/${stack}`);
  return { stack, scripts: body.scripts.map((one: { id: number }) => one.id) };
}

const look = async (id: number) => (await request(app).get(`/api/desk/scripts/${id}`)).body;
const first = ({ score }: { score?: { voices: Record<string, { pitch: never }[]> } }, voice: string) =>
  score === undefined ? undefined : printPitch(score.voices[voice]![0]!.pitch);
const give = async (id: number, voices: string) =>
  request(app)
    .patch(`/api/desk/scripts/${id}`)
    .send({ revision: (await look(id)).script.revision, voices });
const giveAll = async (stack: number, voices: string) => {
  const { body } = await request(app).get(`/api/desk/stacks/${stack}`);
  const answer = await request(app)
    .put(`/api/desk/stacks/${stack}`)
    .send({ revision: body.stack.revision, name: 'Winds', voices });
  // The service goes on reviewing after it has answered.
  await marking.reviewAgain(stack);
  await expect.poll(() => marking.reviewing(stack).left, { timeout: 30_000 }).toBe(0);
  return answer;
};

describe('a setting in ABC at the desk', () => {
  it('is reviewed like any other', async () => {
    const abc =
      'X:1\nT:Four\nM:4/4\nL:1/4\nK:C\nV:S\nc d e c|\nV:A\nG G G G|\nV:T\nE D C E|\nV:B clef=bass\nC, B,, C, C,|\n';
    const [script] = (await stackOf(abc)).scripts;
    const read = await look(script!);
    expect(read.script.error).toBeUndefined();
    expect(['S', 'A', 'T', 'B'].map((voice) => first(read, voice))).toEqual(['C5', 'G4', 'E4', 'C3']);
    const answer = await request(app)
      .post('/api/reviews?file=four.abc')
      .set('Content-Type', 'text/vnd.abc')
      .send(Buffer.from(abc));
    expect(answer.status, JSON.stringify(answer.body)).toBe(200);
  });
});

describe('voices at the desk', () => {
  it('are given out by hand for a script that was refused, and back again', async () => {
    const [script] = (await stackOf(FIVE)).scripts;
    const refused = await look(script!);
    expect(refused.score).toBeUndefined();
    expect(refused.lines.map(({ name }: { name: string }) => name)).toEqual([
      'Oboe',
      'Flute',
      'Clarinet',
      'Horn',
      'Tuba',
    ]);
    const answer = await give(script!, WINDS);
    expect(answer.status, JSON.stringify(answer.body)).toBe(200);
    expect(answer.body.script).toMatchObject({ voices: WINDS, revision: refused.script.revision + 1 });
    const read = await look(script!);
    expect(read.script.error).toBeUndefined();
    expect(['S', 'A', 'T', 'B'].map((voice) => first(read, voice))).toEqual(['C5', 'G4', 'E4', 'C3']);
    expect(read.lines.map(({ given }: { given?: string }) => given)).toEqual(['S', undefined, 'A', 'T', 'B']);
    expect(read.score.remarks).toContainEqual(expect.objectContaining({ about: 'voices' }));
    expect((await give(script!, '')).status).toBe(200);
    expect((await look(script!)).script.error.message).toContain('Oboe');
  });

  it('are handed back in the marked file as they were given', async () => {
    const [script] = (await stackOf(FIVE)).scripts;
    await give(script!, WINDS);
    const marked = await request(app).get(`/api/desk/scripts/${script}/annotated.musicxml`).buffer();
    expect(marked.status).toBe(200);
    const bytes = marked.body instanceof Buffer ? marked.body : Buffer.from(marked.text);
    const read = readMusicXml(bytes, { voices: { S: '1', A: '3', T: '4', B: '5' } });
    expect(read).toMatchObject({ ok: true, marked: true });
  });

  it('are given out for the whole stack: texts and files without such lines are read as before', async () => {
    const { stack, scripts } = await stackOf(
      FIVE,
      NAMED,
      exerciseText('kite-hill'),
      FIVE.replace('C5', 'D5'),
    );
    const answer = await giveAll(stack, ' s = 1, a=3 ,t=4,b=5');
    expect(answer.status, JSON.stringify(answer.body)).toBe(200);
    expect(answer.body.stack.voices).toBe(WINDS);
    const [winds, named, text] = await Promise.all(scripts.map(look));
    expect(first(winds, 'A')).toBe('G4');
    expect(first(named, 'A')).toBe('G4');
    expect(named.score.remarks[0].message).toMatch(/^The lines that were chosen for the whole stack/);
    expect(text.score.remarks).toEqual([]);
    expect(text.lines).toEqual([]);
    // One script may differ.
    await give(scripts[0]!, 'S=2,A=3,T=4,B=5');
    expect(first(await look(scripts[0]!), 'S')).toBe('A5');
    expect((await giveAll(stack, '')).body.stack.voices).toBeUndefined();
    expect(first(await look(scripts[0]!), 'S')).toBe('A5');
  });

  it('are refused in a sentence where they can’t be, and nothing is changed', async () => {
    const { stack, scripts } = await stackOf(FIVE);
    const before = await look(scripts[0]!);
    for (const [voices, says] of [
      ['S=1,A=9', 'which this file does not have'],
      ['S=1,A=1', 'chosen for two voices'],
      ['soprano=1', 'is no voice with its line'],
    ] as const) {
      const answer = await give(scripts[0]!, voices);
      expect(answer.status).toBe(422);
      expect(answer.body.detail).toContain(says);
    }
    expect((await giveAll(stack, 'S=one')).body.detail).toContain('is no voice with its line');
    expect(await look(scripts[0]!)).toEqual(before);
  });

  it('are refused from a window that has not seen the latest', async () => {
    const [script] = (await stackOf(FIVE)).scripts;
    await give(script!, WINDS);
    const answer = await request(app).patch(`/api/desk/scripts/${script}`).send({ revision: 0, voices: '' });
    expect(answer.status).toBe(409);
    expect((await look(script!)).script.voices).toBe(WINDS);
  });
});
