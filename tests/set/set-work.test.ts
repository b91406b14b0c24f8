import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { printBrief, readBrief } from '../../src/brief/brief.ts';
import { openBrief } from '../../src/brief/open-brief.ts';
import { compareWithGiven } from '../../src/desk/given.ts';
import { writeMusicXml } from '../../src/musicxml/index.ts';
import { printNotation, readNotation } from '../../src/notation/index.ts';
import { openScore } from '../../src/open/open.ts';
import type { Score, VoiceName } from '../../src/score/score.ts';
import { choiceInWords, parseChoice } from '../../src/set/choice.ts';
import { setWork } from '../../src/set/set-work.ts';
import { openSource } from '../../src/set/source.ts';

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);
const WALK = readFileSync('fixtures/exercises/morning-walk.txt', 'utf8');
const walk = readNotation(WALK).score;
const SETTING = { profile: 'chorale', without: [] } as const;

function set(give: string, score: Score = walk) {
  const read = parseChoice(give);
  if (!read.ok) throw new Error(read.message);
  return setWork(score, read.choice, SETTING);
}

function briefOf(give: string, score: Score = walk) {
  const made = set(give, score);
  if (!made.ok) throw new Error(made.message);
  return made.brief;
}

function why(give: string, score: Score = walk): string {
  const made = set(give, score);
  if (made.ok) throw new Error('It was set.');
  return made.message;
}

/** A voice of the printed notation, bar by bar. */
function line({ score }: { readonly score: Score }, voice: VoiceName): string {
  return printNotation(score, { whole: true })
    .split('\n')
    .filter((text) => text.startsWith(`${voice}: `))
    .map((text) => text.slice(3))
    .join(' ');
}

describe('what is given', () => {
  it('is the tune, the rest empty, and the task says so', () => {
    const brief = briefOf('tune');
    expect(brief.score.voices.S).toEqual(walk.voices.S);
    for (const voice of ['A', 'T', 'B'] as const)
      expect(brief.score.voices[voice].every(({ kind }) => kind === 'gap')).toBe(true);
    expect(brief.task).toBe('add alto, tenor and bass');
  });
  it('is tune and bass with the figures of the harmony, and only under bass notes', () => {
    const brief = briefOf('tune,bass,figures');
    expect(brief.task).toBe('add alto and tenor');
    expect(printBrief(brief)).toContain('figures: 1:2 6, 1:4 6, 3:1 6, 3:2 6, 3:3 6/4, 3:4 7');
    // The closes' bass notes alone have only the figures at the closes.
    expect(printBrief(briefOf('tune,closes,figures'))).toContain('figures: 3:4 7\n');
  });
  it('keeps a file’s own figures rather than working them out', () => {
    const own = { ...walk, figures: [{ at: walk.bars[1]!.at, figures: ['5'] }] };
    expect(briefOf('bass,figures', own).score.figures).toEqual(own.figures);
  });
  it('is the closes’ bass notes, from the chord before each phrase’s last', () => {
    const brief = briefOf('tune,closes');
    expect(line(brief, 'B')).toBe('? | ?*4 | ? G3 D! ? | ?*3 D | G3*3! ||');
    expect(brief.task).toBe('add alto and tenor, and complete the bass');
  });
  it('is the opening chords in all voices', () => {
    const brief = briefOf('tune,opening=2');
    expect(line(brief, 'A')).toMatch(/^B3 \| B \?\*3 \|/);
    expect(line(brief, 'B')).toMatch(/^G2 \| E \?\*3 \|/);
  });
  it('is all that is written, with its figures', () => {
    const before = briefOf('tune,closes,figures,opening=1');
    expect(briefOf('all', before.score)).toEqual(before);
  });
  it('is single bars in all voices', () => {
    const brief = briefOf('bars=1+3-4');
    expect(line(brief, 'S')).toMatch(/^\? \| B4 A G D5 \| \?\*4 \| D/);
    expect(line(brief, 'T')).toMatch(/^\? \| G3 A B D4 \| \?\*4 \| D/);
  });
  it('keeps the tune’s rests, and takes other voices’ rests for empty bars', () => {
    const { score } = readNotation('key: C major\nmetre: 4/4\nS: C5 r E5 D5 | C5*4! ||\nB: r*4 | C3*4! ||\n');
    expect(line(briefOf('tune,bass', score), 'S')).toContain('C5 r E D');
    expect(line(briefOf('tune,bass', score), 'B')).toContain('?*4 | C3*4');
  });
  it('drops a tie into what is not given', () => {
    const { score } = readNotation(
      'key: C major\nmetre: 2/4\nS: C5 D5 | = E5 | C5*2! ||\nA: E4*2 | = E4 | E4*2 ||\n',
    );
    const brief = briefOf('tune,bars=1', score);
    expect(brief.score.voices.A[0]).not.toHaveProperty('tied');
  });
});

describe('what can’t be set', () => {
  it.each([
    ['bars=9', /no bar 9 to give; the piece has bars 0 to 4/],
    ['bars=3-2', /no bar 2/],
    ['tune,bass,bars=0-4', /Everything is given/],
  ])('%s', (give, message) => expect(why(give)).toMatch(message));
  it.each([
    ['closes', /no bass is written/],
    ['opening=1', /not all four voices/],
    ['tune,figures', /no figures to give/],
  ])('%s of a tune alone', (give, message) => {
    expect(why(give, readNotation('key: C major\nmetre: 4/4\nS: C5 D5 E5 D5 | C5*4! ||\n').score)).toMatch(
      message,
    );
  });
  it('a choice that names nothing known', () => {
    for (const bad of ['', 'tunes', 'opening', 'opening=99', 'bars=', 'tune=1', 'tune,,bass'])
      expect(parseChoice(bad)).toMatchObject({
        ok: false,
        message: expect.stringContaining('can’t be given'),
      });
  });
});

describe('round trip', () => {
  const FULL = 'tune,closes,figures,opening=1,bars=3';
  it('is read from its text as it was set', () => {
    const brief = briefOf(FULL);
    const again = readBrief(printBrief(brief));
    expect(again.problems).toEqual([]);
    expect(again.brief).toEqual(brief);
  });
  it('is read from the pupil’s MusicXML as it was set', () => {
    const brief = briefOf(FULL);
    const again = openBrief(bytes(writeMusicXml(brief.score)));
    expect(again.ok && again.brief.score).toEqual({ ...brief.score, remarks: [] });
  });
  it('gives the pupil a text with every voice’s lines, which reads the same', () => {
    const brief = briefOf('tune');
    const text = printNotation(brief.score, { whole: true });
    expect(text).toContain('T: ? | ?*4 | ?*4 | ?*4 |');
    expect(readNotation(text).score).toEqual(brief.score);
  });
  it('finds nothing amiss in a script that left the given notes alone, and what was changed in one that did not', () => {
    const brief = readBrief(printBrief(briefOf(FULL))).brief;
    expect(compareWithGiven(brief.score, walk).departures).toEqual([]);
    const handedIn = openScore(bytes(writeMusicXml(walk)));
    expect(handedIn.ok && compareWithGiven(brief.score, handedIn.score).departures).toEqual([]);
    const changed = readNotation(WALK.replace('B4 A4', 'B4 C5')).score;
    expect(changed).not.toEqual(walk);
    expect(compareWithGiven(brief.score, changed).departures.length).toBeGreaterThan(0);
  });
});

describe('the piece it is set from', () => {
  it('may be a tune by itself in MusicXML', () => {
    const tune = openSource(readFileSync('fixtures/exercises/tune-alone.musicxml'));
    if (!tune.ok) throw new Error(tune.message);
    expect(briefOf('tune', tune.source.score).task).toBe('add alto, tenor and bass');
  });
  it('may be a brief, which keeps what it says', () => {
    const read = openSource(bytes(printBrief({ ...briefOf('tune'), without: ['hints'], leastSeconds: 30 })));
    expect(read).toMatchObject({ ok: true, source: { brief: { without: ['hints'], leastSeconds: 30 } } });
  });
  it('is refused in a sentence where it is none', () => {
    expect(openSource(bytes('task: x\nS: H4 |\n'))).toMatchObject({ ok: false, line: 2 });
    expect(openSource(new Uint8Array())).toMatchObject({ ok: false });
  });
});

it('what is given is said in words', () => {
  const read = parseChoice('bass, tune ,opening=1,bars=3');
  expect(read.ok && choiceInWords(read.choice)).toBe('the tune, the bass, the first chord and bar 3');
});
