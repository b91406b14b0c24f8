import { readFileSync } from 'node:fs';
import request from 'supertest';
import { describe, expect, it } from 'vitest';
import { createApp } from '../../server/app.ts';
import { jsonReviewSchema } from '../../src/report/schema.ts';

const app = createApp({ log: () => {} });
const exercise = (name: string) => readFileSync(new URL(`../../fixtures/exercises/${name}`, import.meta.url));
const PROBLEM = 'application/problem+json; charset=utf-8';

describe('POST /api/reviews', () => {
  it.each([
    ['text/plain', 'morning-walk.txt'],
    ['text/plain; charset=utf-8', 'morning-walk.txt'],
    ['application/vnd.recordare.musicxml+xml', 'morning-walk.musicxml'],
    ['application/xml', 'morning-walk.musicxml'],
    ['text/xml', 'morning-walk.musicxml'],
  ])('takes %s and gives the review and the score to draw', async (type, name) => {
    const answer = await request(app)
      .post('/api/reviews?file=walk')
      .set('Content-Type', type)
      .send(exercise(name).toString());
    expect(answer.status).toBe(200);
    const review = jsonReviewSchema.parse(answer.body.review);
    expect(review).toMatchObject({ file: 'walk', title: 'Morning walk', key: 'G major', bars: 5 });
    expect(answer.body.score.bars).toHaveLength(5);
    expect(Object.keys(answer.body.score.voices)).toEqual(['S', 'A', 'T', 'B']);
  });

  it('answers 415 to other content types and says which are taken', async () => {
    for (const type of ['application/json', 'image/png', 'multipart/form-data; boundary=x']) {
      const answer = await request(app).post('/api/reviews').set('Content-Type', type).send('x');
      expect(answer.status, type).toBe(415);
      expect(answer.headers['content-type']).toBe(PROBLEM);
      expect(answer.body.accepted).toContain('text/plain');
    }
  });

  it('answers 413 to what is too large, packed or not', async () => {
    const small = createApp({ mostBytes: 1000, log: () => {} });
    const answer = await request(small)
      .post('/api/reviews')
      .set('Content-Type', 'text/plain')
      .send('x'.repeat(2000));
    expect(answer.status).toBe(413);
    expect(answer.headers['content-type']).toBe(PROBLEM);
    expect(answer.body).toMatchObject({ status: 413, title: 'Too large' });
  });

  it('answers 422 to what is no exercise, with the place of every mistake', async () => {
    const answer = await request(app)
      .post('/api/reviews')
      .set('Content-Type', 'text/plain')
      .send('key: G major\nmetre: 4/4\nS: G4 H4 Q4 |\n');
    expect(answer.status).toBe(422);
    expect(answer.headers['content-type']).toBe(PROBLEM);
    expect(answer.body).toMatchObject({ line: 3, column: 7, problems: [{ line: 3 }, { line: 3 }] });
    const xml = await request(app)
      .post('/api/reviews')
      .set('Content-Type', 'text/xml')
      .send('<score-partwise>');
    expect(xml.status).toBe(422);
    const nothing = await request(app).post('/api/reviews').set('Content-Type', 'text/plain');
    expect(nothing.status).toBe(422);
  });

  it('answers 400 to a query it does not know', async () => {
    for (const query of ['profile=no-such', 'colour=red', 'file=']) {
      const answer = await request(app)
        .post(`/api/reviews?${query}`)
        .set('Content-Type', 'text/plain')
        .send('key: C major');
      expect(answer.status, query).toBe(400);
      expect(answer.headers['content-type']).toBe(PROBLEM);
      expect(answer.body.problems.length).toBeGreaterThan(0);
    }
  });
});

describe('the rest of the service', () => {
  it('lists the rules with their texts', async () => {
    const answer = await request(app).get('/api/rules');
    expect(answer.status).toBe(200);
    for (const rule of answer.body.rules) {
      expect(rule).toMatchObject({
        id: expect.any(String),
        statement: expect.any(String),
        why: expect.any(String),
      });
      expect(rule.hints).toHaveLength(3);
    }
    expect(answer.body.rules.map(({ id }: { id: string }) => id)).toContain('parallel-fifths');
  });

  it('forbids scripts that are not its own', async () => {
    const answer = await request(app).get('/api/rules');
    const policy = answer.headers['content-security-policy'];
    expect(policy).toContain("script-src 'self';");
    expect(policy).toContain("worker-src 'self' blob:");
    expect(answer.headers['x-powered-by']).toBeUndefined();
  });

  it('answers 404 as a problem', async () => {
    const answer = await request(app).get('/api/no-such');
    expect(answer.status).toBe(404);
    expect(answer.headers['content-type']).toBe(PROBLEM);
  });

  it('says what to run where the page is not built', async () => {
    for (const address of ['/', '/desk/']) {
      const answer = await request(createApp({ page: '/no/such/folder' })).get(address);
      expect(answer.status, address).toBe(503);
      expect(answer.body.detail).toContain('npm run build');
    }
  });
});
