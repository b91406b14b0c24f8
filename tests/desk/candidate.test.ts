import { describe, expect, test } from 'vitest';
import { candidateOf, readCandidatePattern } from '../../src/desk/candidate.ts';

describe('whose script a file is', () => {
  test.each([
    ['4012.musicxml', '', '4012', undefined],
    ['stack/4012_draft2.mxl', '', '4012', 2],
    ['4012-v3.txt', '', '4012', 3],
    ['4012_d1.txt', '', '4012', 1],
    ['draft 2 candidate A1007.xml', '', 'A1007', 2],
    ['draft 3/4012 final.xml', '', '4012', 3],
    ['C:\\class\\4012.xml', '', '4012', undefined],
    ['chorale.xml', 'Chorale, candidate 8123, draft 2', '8123', 2],
    ['chorale draft 3.xml', 'Candidate no. 8123', '8123', 3],
    ["=<b onclick=alert(1)>1850 draft1 '&amp;.txt", '', '1850', 1],
  ])('%s, title "%s"', (name, title, candidate, draft) => {
    const read = candidateOf(name, title);
    expect(read).toMatchObject({ ok: true, candidate });
    expect(read.ok && read.draft).toBe(draft);
  });

  test.each([
    ['chorale.xml', 'Hymn 413'],
    ['2nd go.xml', ''],
    ['draft 12.xml', ''],
    ['<img src=x onerror=alert(1)>.xml', ''],
    ['', ''],
  ])('%s, title "%s": nobody can tell', (name, title) => {
    const read = candidateOf(name, title);
    expect(read.ok).toBe(false);
    expect(!read.ok && read.message).toMatch(/say whose script it is/);
  });
});

function pattern(text: string) {
  const read = readCandidatePattern(text);
  if (!read.ok) throw new Error(read.message);
  return read.pattern;
}

describe('a pattern of the teacher’s own', () => {
  test('fits the whole name, capitals or not; the title is tried next', () => {
    const own = pattern('Set*_{candidate}_{draft}');
    expect(candidateOf('set A_77b_2.xml', '', own)).toMatchObject({ candidate: '77b', draft: 2 });
    expect(candidateOf('work.xml', 'SET b_1234_1', own)).toMatchObject({
      candidate: '1234',
      foundIn: 'title',
    });
    expect(candidateOf('other 77b.xml', '', own)).toMatchObject({ ok: false });
  });

  test('signs that mean something elsewhere stand for themselves', () => {
    const own = pattern('({candidate}).[+]');
    expect(candidateOf('(4012).[+].xml', '', own)).toMatchObject({ candidate: '4012' });
    expect(candidateOf('(4012)x[+].xml', '', own).ok).toBe(false);
  });

  test.each([
    ['', /empty/],
    ['draft{draft}', /\{candidate\} once/],
    ['{candidate}{candidate}', /\{candidate\} once/],
    ['{candidate} {draft}{draft}', /\{draft\} once/],
    ['*a*b*c*{candidate}', /up to 3 times/],
    ['**{candidate}', /side by side/],
    ['{candidate}{centre}', /knows candidate\} and draft\}/],
    [`{candidate}${'x'.repeat(200)}`, /longer than 120/],
  ])('%s is refused with a sentence', (text, message) => {
    const read = readCandidatePattern(text);
    expect(read.ok).toBe(false);
    expect(!read.ok && read.message).toMatch(message);
  });

  test('the worst pattern allowed, over a long name made against it, comes to an end', () => {
    const own = pattern('*a*a*{candidate}a{draft}!');
    expect(candidateOf(`${'a'.repeat(5_000)}.xml`, 'a'.repeat(5_000), own).ok).toBe(false);
  });
});
