import { deflateSync, strToU8 } from 'fflate';
import { describe, expect, it } from 'vitest';
import { HELPS } from '../../src/brief/helps.ts';
import { readNotation } from '../../src/notation/index.ts';
import { VOICES } from '../../src/score/score.ts';
import { LINK_LIMITS, linkTo, readLink } from '../../src/set/link.ts';

const score = readNotation('title: Föhn – 1\nkey: C major\nmetre: 4/4\nS: C5 D5 E5 D5 | C5*4! ||\n').score;
const brief = { score, task: 'add alto, tenor and bass', profile: 'chorale', without: HELPS };

function link(content: unknown): string {
  const packed = deflateSync(strToU8(typeof content === 'string' ? content : JSON.stringify(content)));
  return `set/${Buffer.from(packed).toString('base64url')}`;
}

describe('an exercise in an address', () => {
  it.each([1, 2, 6])('comes back as it was, %i at a time', (number) => {
    const briefs = Array.from({ length: number }, (_, i) => ({
      ...brief,
      score: { ...score, title: `No. ${i}` },
    }));
    const made = linkTo(briefs);
    if (!made.ok) throw new Error(made.message);
    expect(made.hash).toMatch(/^set\/[A-Za-z0-9_-]+$/);
    const read = readLink(made.hash);
    expect(read.ok && read.exercises.map((one) => one.brief)).toEqual(briefs);
  });
  it('is base64url as others write it', () => {
    const read = readLink(link({ v: 1, briefs: ['profile: chorale\nS: C5*4 |\n'] }));
    expect(read).toMatchObject({ ok: true, exercises: [{ text: 'profile: chorale\nS: C5*4 |\n' }] });
  });
  it('is refused, with the file instead, where it grows too long', () => {
    let seed = 1;
    const random = (): number => {
      seed = (seed * 48_271) % 2_147_483_647;
      return seed;
    };
    const line = (voice: string): string => {
      const notes = Array.from({ length: 1_000 }, () => `${'CDEFGAB'[random() % 7]}${4 + (random() % 2)}`);
      return `${voice}: ${notes.join(' ').replaceAll(/((?:\S+ ){4})/g, '$1| ')}\n`;
    };
    const long = readNotation(`metre: 4/4\n${VOICES.map(line).join('')}`).score;
    const made = linkTo([{ ...brief, score: long }]);
    expect(made).toMatchObject({
      ok: false,
      message: expect.stringMatching(/too long for a link .* file instead/),
    });
    expect(linkTo(Array.from({ length: 7 }, () => brief)).ok).toBe(false);
  });
});

describe('a hostile address', () => {
  const good = linkTo([brief]);
  const whole = good.ok ? good.hash : '';
  it.each([
    ['nothing', 'set/'],
    ['no base64url', 'set/%%%'],
    ['cut short', whole.slice(0, -12)],
    ['no deflate', `set/${Buffer.from('hello there').toString('base64url')}`],
    ['no JSON', link('profile: chorale')],
    ['another version', link({ v: 2, briefs: ['S: C5*4 |'] })],
    ['more than it should hold', link({ v: 1, briefs: ['S: C5*4 |'], also: 1 })],
    ['no exercise', link({ v: 1, briefs: [] })],
    ['seven exercises', link({ v: 1, briefs: Array(7).fill('S: C5*4 |') })],
    ['no text', link({ v: 1, briefs: [7] })],
    ['a bomb', link({ v: 1, briefs: ['#'.repeat(1_000_000)] })],
  ])('with %s is damaged', (_what, hash) => {
    expect(hash.length).toBeLessThan(LINK_LIMITS.characters);
    expect(readLink(hash)).toMatchObject({ ok: false, message: expect.stringContaining('damaged') });
  });
  it('longer than any that is made is not even unpacked', () => {
    expect(readLink(`set/${'A'.repeat(LINK_LIMITS.characters + 1)}`)).toMatchObject({
      ok: false,
      message: expect.stringContaining('longer than any'),
    });
  });
  it('with text that is no brief says where', () => {
    expect(readLink(link({ v: 1, briefs: ['profile: chorale\nS: H4 |'] }))).toMatchObject({
      ok: false,
      message: expect.stringContaining('line 2'),
    });
  });
  it('never throws, whatever bits are turned', () => {
    for (let i = 4; i < whole.length; i++)
      for (const sign of ['A', 'z', '-']) {
        const read = readLink(whole.slice(0, i) + sign + whole.slice(i + 1));
        expect(typeof read.ok).toBe('boolean');
      }
  });
});
