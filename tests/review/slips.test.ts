import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { openScore } from '../../src/open/open.ts';
import { CHORALE } from '../../src/profiles/profile.ts';
import { jsonReview } from '../../src/report/json.ts';
import { firstToMend, isUnwritten, marksOf, slipsAmong } from '../../src/review/marks.ts';
import { reviewNear } from '../../src/review/near.ts';
import { type Finding, reviewScore } from '../../src/review/review.ts';
import { withNear } from '../../src/review/with-near.ts';
import { severityRank } from '../../src/rules/rule.ts';
import { scoreOf } from '../support/rules.ts';

const review = (text: string) => reviewScore(scoreOf(text), CHORALE);
const alone = (findings: readonly Finding[]) =>
  findings.filter(({ because, severity }) => because === undefined && severity !== 'remark');
const ids = (findings: readonly Finding[]) => findings.map(({ rule }) => rule.id);

/** Alto and bass, tenor and bass: two pairs of consecutives in one movement. */
const ABREAST = `key: C major
metre: 4/4
S: C5 B4 C5*2 | D5 B4 C5*2! |
A: G4 G4 A4*2 | A4 G4 E4*2! |
T: E4 D4 E4*2 | D4 D4 C4*2! |
B: C3 G3 A3*2 | F3 G3 C3*2! |`;

/** The tenor of the third beat lies an octave too low. */
const DISPLACED = `key: G major
metre: 4/4
S: B4 A4 G4 D5 | C5 B4 A4*2! |
A: B3 D4 D4 G4 | G4 G4 F#4*2! |
T: G3 A3 B2 D4 | E4 D4 D4*2! |
B: E2 F#2 (G2 A2) B2 | C3 G3 D3*2! |`;

/** A half close on v, come to in fifths between alto and bass. */
const MODAL = `key: D minor
metre: 4/4
S: D5 C5 Bb4 A4! | F4 G4 E4 D4! |
A: F4 E4 D4 E4! | D4 D4 C#4 D4! |
T: A3 C4 D4 C4! | A3 Bb3 A3 F3! |
B: D3 A2 G2 A2! | D3 G2 A2 D3! |`;

/** VI, VII and i at a close, soprano and bass in octaves. */
const LOWERED_OCTAVES = `key: A minor
metre: 4/4
S: C5 B4 A4 G4 | F4 G4 A4*2! | C5 D5 B4 A4! |
A: E4 E4 C4 E4 | C4 D4 E4*2! | E4 F4 E4 E4! |
T: A3 G#3 F3 G3 | A3 B3 C4*2! | A3 A3 G#3 C4! |
B: A2 E3 F3 C3 | F2 G2 A2*2! | A2 D3 E3 A2! |`;

/** The piece ends on the dominant, come to in fifths between soprano and alto. */
const OPEN_END = `key: C major
metre: 4/4
S: G4 A4 B4 C5! | C5 F5 (E5 E5) D5! |
A: E4 F4 D4 E4! | G4 A4 (G4 A4) G4! |
T: C4 C4 G3 G3! | E4 C4 C4 B3! |
B: C3 F3 G3 C3! | C3 F3 (C3 E3) G3! |`;

/** A sharp for B flat in soprano and bass, which move in octaves. */
const LETTERS = `key: F major
metre: 4/4
S: F4 A4 A#4 A4 | G4 G4 F4*2! |
A: C4 F4 F4 F4 | E4 E4 C4*2! |
T: A3 C4 D4 C4 | C4 C4 A3*2! |
B: F3 F3 A#2 A2 | C3 C3 F3*2! |`;

/** The dominant of the close has D natural where E minor asks for D sharp. */
const UNRAISED = `key: E minor
metre: 4/4
S: E4 G4 F#4 G4 | A4 G4 F#4*2! | G4 A4 B4 G4 | F#4 F#4 E4*2! |
A: B3 E4 D#4 E4 | E4 E4 D#4*2! | E4 F#4 G4 E4 | E4 D4 B3*2! |
T: G3 B3 B3 B3 | C4 B3 B3*2! | B3 D4 D4 B3 | C4 B3 G3*2! |
B: E3 E3 B2 E3 | A2 E3 B2*2! | E3 D3 G3 E3 | A2 B2 E3*2! |`;

/** Every chord but the first and the last has its fifth in the bass. */
const SIX_FOURS = `key: F major
metre: 4/4
S: A4 Bb4 A4 G4 | C5 A4 Bb4 A4! | G4 A4 G4*2 | F4*4! |
A: F4 F4 F4 E4 | F4 F4 F4 F4! | E4 F4 E4*2 | C4*4! |
T: C4 D4 C4 C4 | A3 C4 D4 C4! | C4 C4 Bb3*2 | A3*4! |
B: F3 F3 C3 G3 | C3 C3 F3 C3! | G3 C3 C3*2 | F2*4! |`;

describe('cause and consequence', () => {
  it('takes the consecutives of several pairs at one moment for one slip', () => {
    const { findings } = review(ABREAST);
    const consecutives = findings.filter(({ rule }) => rule.family === 'consecutives');
    expect(consecutives.length).toBeGreaterThan(1);
    expect(alone(consecutives)).toHaveLength(1);
  });

  it('puts the seventh that was not raised before the close it spoils', () => {
    const { findings } = review(UNRAISED);
    const cause = findings.find(({ rule }) => rule.id === 'unraised-leading-note');
    expect(cause?.because).toBeUndefined();
    expect(cause?.severity).toBe('fault');
    const late = findings.filter(({ from, severity }) => from >= cause!.from && severity !== 'remark');
    expect(late.length).toBeGreaterThan(1);
    expect(ids(alone(late))).toEqual(['unraised-leading-note']);
  });

  it('lets nothing of the fifths under it hang on a seventh that was not raised', () => {
    const { findings } = review(MODAL);
    expect(findings.find(({ rule }) => rule.id === 'unraised-leading-note')?.severity).toBe('query');
    expect(ids(alone(findings))).toEqual(
      expect.arrayContaining(['unraised-leading-note', 'parallel-fifths']),
    );
  });

  it('lets no octaves hang on a seventh that was not raised, in which they move', () => {
    const { findings } = review(LOWERED_OCTAVES);
    const octaves = findings.filter(({ rule }) => rule.id === 'parallel-octaves');
    expect(octaves.length).toBeGreaterThan(0);
    const cause = findings.find(({ rule }) => rule.id === 'unraised-leading-note');
    expect(octaves.filter(({ because }) => because === cause!.id)).toEqual([]);
  });

  it('lets no close follow from fifths on the way to it', () => {
    const { findings } = review(OPEN_END);
    const fifths = findings.filter(({ rule }) => rule.id === 'parallel-fifths');
    const close = findings.find(({ rule }) => rule.id === 'weak-cadence');
    expect(fifths.some(({ until }) => until > close!.from)).toBe(true);
    expect(close?.because).toBeUndefined();
  });

  it('lets no octaves follow from a wrong letter in them', () => {
    const { findings } = review(LETTERS);
    const octaves = findings.find(({ rule }) => rule.id === 'parallel-octaves');
    expect(octaves?.because).toBeUndefined();
    expect(new Set(ids(findings.filter(({ severity }) => severity !== 'remark')))).toEqual(
      new Set(['parallel-octaves', 'misspelt-note']),
    );
  });

  it('lets a voice an octave out of place be one slip', () => {
    const { findings } = review(DISPLACED);
    const about = findings.filter(
      ({ tones, severity }) => severity !== 'remark' && tones.some(({ id }) => id === 'T@20160'),
    );
    expect(about.length).toBeGreaterThan(1);
    expect(alone(about)).toHaveLength(1);
  });

  it('keeps slips apart that have no note in common', () => {
    const two = `key: C major
metre: 4/4
S: E5 D5 E5 C5 | D5 B4 C5*2 | C5 D5 E5 C5 | D5 B4 C5*2! |
A: G4 F4 G4 G4 | A4 G4 E4*2 | G4 F4 G4 G4 | A4 G4 E4*2! |
T: G3 A3 C4 E4 | F4 D4 G3*2 | E4 B3 C4 E4 | F4 D4 G3*2! |
B: C3 D3 C3 C3 | F3 G3 C3*2 | C4 G2 C3 C3 | F3 G3 C3*2! |`;
    const { findings } = review(two);
    const first = findings.find(({ rule, from }) => rule.id === 'parallel-fifths' && from === 0);
    expect(first).toBeDefined();
    const second = alone(findings).filter(({ from }) => from >= 8 * 10_080);
    expect(second.length).toBeGreaterThan(0);
    expect(second.every(({ because }) => because === undefined)).toBe(true);
  });
});

describe('marks', () => {
  it('are one for a slip that is made again and again, with all its places', () => {
    const { findings } = review(SIX_FOURS);
    const sixFours = findings.filter(({ rule }) => rule.id === 'stray-six-four');
    expect(sixFours.length).toBeGreaterThan(3);
    const marks = marksOf(findings);
    const [mark] = marks;
    expect(ids(mark!.slips.map(({ finding }) => finding))).toEqual(mark!.slips.map(() => 'stray-six-four'));
    expect(mark!.slips).toHaveLength(sixFours.length);
    expect(marks.filter(({ slips }) => slips[0].finding.rule.id === 'stray-six-four')).toHaveLength(1);
  });

  it('set three apart to begin with only where there are more', () => {
    expect(firstToMend(marksOf(review(ABREAST).findings))).toEqual([]);
    const { findings } = review(UNRAISED.replace('B2 E3*2! |`', 'B2 E3*2! |'));
    expect(firstToMend(marksOf(findings)).length).toBeLessThanOrEqual(3);
  });

  it('leave what is still to be written without a number, at the end', () => {
    const { findings } = review(ABREAST.replace('A: G4 G4 A4*2 |', 'A: G4 ? ?*2 |'));
    const unwritten = findings.filter(isUnwritten);
    expect(unwritten.length).toBeGreaterThan(0);
    expect(findings.slice(-unwritten.length)).toEqual(unwritten);
    expect(unwritten.every(({ mark }) => mark === undefined)).toBe(true);
  });

  it('say in the summary how many slips the faults come from', () => {
    const reviewed = review(ABREAST);
    expect(jsonReview('x', reviewed).summary.sentence).toMatch(/^2 faults, from 1 slip[.;]/);
  });
});

const FOLDER = new URL('../../fixtures/exercises/', import.meta.url);
const EXERCISES = readdirSync(FOLDER)
  .filter((name) => /\.(txt|mxl|musicxml)$/.test(name))
  .flatMap((name) => {
    const opened = openScore(readFileSync(new URL(name, FOLDER)));
    return opened.ok ? [[name, opened.score] as const] : [];
  });

describe.each([...EXERCISES, ['six-fours', scoreOf(SIX_FOURS)], ['unraised', scoreOf(UNRAISED)]] as const)(
  'the findings of %s',
  (_name, score) => {
    const { findings } = reviewScore(score, CHORALE);

    it('follow from one that follows from nothing, stands before them and is as heavy', () => {
      const seen = new Map<string, Finding>();
      for (const finding of findings) {
        expect(seen.has(finding.id)).toBe(false);
        if (finding.because !== undefined) {
          const cause = seen.get(finding.because);
          expect(cause).toBeDefined();
          expect(cause!.because).toBeUndefined();
          expect(severityRank(cause!.severity)).toBeLessThanOrEqual(severityRank(finding.severity));
          expect(finding.mark).toBe(cause!.mark);
        }
        seen.set(finding.id, finding);
      }
    });

    it('come faults first, then queries, then remarks, each in one mark', () => {
      const marks = marksOf(findings);
      const ranks = marks.map(({ severity }) => severityRank(severity));
      expect(ranks).toEqual([...ranks].sort((a, b) => a - b));
      expect(marks.map(({ number }) => number)).toEqual(marks.map((_, index) => index + 1));
      const told = marks.flatMap(({ slips }) =>
        slips.flatMap(({ finding, follows }) => [finding, ...follows]),
      );
      expect([...told, ...findings.filter(isUnwritten)].map(({ id }) => id)).toEqual(
        findings.map(({ id }) => id),
      );
      expect(slipsAmong(findings)).toBeLessThanOrEqual(
        findings.filter(({ severity }) => severity !== 'remark').length,
      );
    });

    it('name in JSON the number of the finding they follow from', () => {
      const json = jsonReview('x', reviewScore(score, CHORALE)).findings;
      expect(json.map(({ number }) => number)).toEqual(json.map((_, index) => index + 1));
      const named = json.map(({ because }) => (because === undefined ? undefined : json[because - 1]?.id));
      expect(named).toEqual(findings.map(({ because }) => because));
    });

    it('stay whole when a place is looked at anew', () => {
      const again = withNear(findings, reviewNear(score, CHORALE, 0));
      const known = new Set(again.map(({ id }) => id));
      expect(again.filter(({ because }) => because !== undefined && !known.has(because))).toEqual([]);
    });
  },
);
