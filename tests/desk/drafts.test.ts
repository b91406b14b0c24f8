import { describe, expect, test } from 'vitest';
import { carriedDecisions, carriedStanding, madeAgain } from '../../src/desk/carried.ts';
import { applyDecisions } from '../../src/desk/decisions.ts';
import { compareDrafts } from '../../src/desk/drafts.ts';
import { exerciseText } from '../support/exercises.ts';
import { decided, scriptFrom } from './scripts.ts';

const FIRST = exerciseText('fault-consecutives');

function draft(text: string) {
  const { score, facts } = scriptFrom(text);
  return { score, findings: facts.findings.filter(({ severity }) => severity !== 'remark') };
}

const rules = (findings: readonly { readonly rule: string }[]) => findings.map(({ rule }) => rule);
const first = draft(FIRST);

/** A bar of chords put in before the first. */
const WITH_BAR = FIRST.replace('S: C5', 'S: G4 A4 G4*2 | C5')
  .replace('A: G4', 'A: E4 F4 E4*2 | G4')
  .replace('T: E4', 'T: C4 C4 C4*2 | E4')
  .replace('B: C3', 'B: C3 F3 C3*2 | C3');

describe('from draft to draft', () => {
  test('mended, still there, new', () => {
    const later = draft(FIRST.replace('T: E4 D4 E4*2', 'T: E4 D4 C4*2'));
    const compared = compareDrafts(first, later);
    expect(rules(compared.mended)).toContain('parallel-fifths');
    expect(rules(compared.stillThere.map(({ after }) => after))).toContain('parallel-octaves');
    const back = compareDrafts(later, first);
    expect(rules(back.fresh)).toContain('parallel-fifths');
    expect(rules(back.mended)).not.toContain('parallel-fifths');
  });

  test('the same draft again: all still there, unchanged', () => {
    const { mended, stillThere, fresh, summary } = compareDrafts(first, first);
    expect([mended, fresh]).toEqual([[], []]);
    expect(stillThere.every(({ before, after, unchanged }) => before === after && unchanged)).toBe(true);
    expect(summary).toBe(`None mended, ${first.findings.length} still there and none new.`);
  });

  test('a bar put in before moves the fault, and it is still the same', () => {
    const { stillThere, mended, fresh, barsFrom } = compareDrafts(first, draft(WITH_BAR));
    expect(barsFrom).toEqual([undefined, 0, 1]);
    expect(mended).toEqual([]);
    expect(rules(fresh)).not.toContain('parallel-fifths');
    expect(stillThere.find(({ after }) => after.rule === 'parallel-fifths')).toMatchObject({
      before: { bar: '1' },
      after: { bar: '2' },
      unchanged: true,
    });
  });

  test('a bar left out', () => {
    const { stillThere, mended } = compareDrafts(draft(WITH_BAR), first);
    expect(rules(stillThere.map(({ after }) => after))).toContain('parallel-fifths');
    expect(rules(mended)).not.toContain('parallel-fifths');
  });

  test('phrases that change places keep their faults', () => {
    const phrases = {
      S: ['C5 B4 C5*2', 'E5 D5 C5*2'],
      A: ['G4 G4 A4*2', 'G4 G4 G4*2'],
      T: ['E4 D4 E4*2', 'C4 B3 E4*2'],
      B: ['C3 G3 A3*2', 'C3 G3 C3*2'],
    };
    const text = (order: readonly number[]) =>
      `key: C major\nmetre: 4/4\n${Object.entries(phrases)
        .map(([voice, bars]) => `${voice}: ${order.map((i) => bars[i]).join(' | ')} |`)
        .join('\n')}`;
    const compared = compareDrafts(draft(text([0, 1])), draft(text([1, 0])));
    expect(compared.barsFrom).toContain(0);
    const fifths = compared.stillThere.filter(({ after }) => after.rule === 'parallel-fifths');
    expect(fifths.map(({ before, after }) => [before.bar, after.bar])).toEqual([['1', '2']]);
  });

  test('written in another key the faults are the same', () => {
    const inD = FIRST.replace('C major', 'D major').replaceAll(
      /\b([A-G])(\d)/g,
      (_, step: string, octave: string) => {
        const up: Record<string, string> = { C: 'D', D: 'E', E: 'F#', F: 'G', G: 'A', A: 'B', B: 'C#' };
        return `${up[step]}${step === 'B' ? Number(octave) + 1 : octave}`;
      },
    );
    const { mended, fresh, stillThere } = compareDrafts(first, draft(inD));
    expect([rules(mended), rules(fresh)]).toEqual([[], []]);
    expect(stillThere.every(({ unchanged }) => unchanged)).toBe(true);
  });

  test('the same rule at the same place between other voices is another fault', () => {
    const before = draft(
      'key: C major\nmetre: 4/4\nS: E5 D5 C5*2 |\nA: G4 F4 E4*2 |\nT: C4 A3 G3*2 |\nB: C3 D3 C3*2 |',
    );
    const after = draft(
      'key: C major\nmetre: 4/4\nS: E5 D5 C5*2 |\nA: C5 A4 G4*2 |\nT: G3 A3 G3*2 |\nB: C3 D3 C3*2 |',
    );
    const fifths = (findings: readonly { rule: string; voices: readonly string[] }[]) =>
      findings.filter(({ rule }) => rule === 'parallel-fifths').map(({ voices }) => voices.join(''));
    const { mended, fresh } = compareDrafts(before, after);
    expect(fifths(fresh)).toContain('TB');
    expect(fifths(mended)).not.toContain('TB');
  });

  test('nothing found at all', () => {
    const clean = { score: first.score, findings: [] };
    expect(compareDrafts(clean, clean).summary).toBe('Nothing was found in either draft.');
  });
});

describe('what was decided about the earlier draft', () => {
  const fifths = first.findings.find(({ rule }) => rule === 'parallel-fifths')!;
  const octaves = first.findings.find(({ rule }) => rule === 'parallel-octaves')!;
  const decisions = decided(
    { kind: 'overrule', script: 'one', finding: fifths.id, reason: 'at the fermata' },
    { kind: 'severity', script: 'one', finding: octaves.id, severity: 'query' },
    { kind: 'agree', script: 'one', finding: octaves.id },
    { kind: 'overrule', script: 'other', finding: octaves.id },
  );
  const carriedTo = (later: ReturnType<typeof draft>, made: typeof decisions) =>
    carriedDecisions('one', made, compareDrafts(first, later), { before: first.score, after: later.score });

  test('overrulings and severities carry over to the same place, wherever it now stands', () => {
    const carried = carriedTo(draft(WITH_BAR), decisions);
    expect(carried.map(({ decision, sure }) => [decision.kind, decision.id, sure])).toEqual([
      ['overrule', 'd1', true],
      ['severity', 'd2', true],
    ]);
    const later = draft(WITH_BAR).findings.find(({ rule }) => rule === 'parallel-fifths')!;
    expect(carried[0]).toMatchObject({ finding: later.id });
  });

  test('where the notes have changed it is asked, not done', () => {
    const revoiced = draft(FIRST.replace('B: C3 G3 A3*2', 'B: C3 G2 A2*2'));
    const carried = carriedTo(revoiced, decisions);
    expect(carried.find(({ decision }) => decision.id === 'd1')).toMatchObject({ sure: false });
  });

  test('what was taken back does not carry over', () => {
    const undone = [
      ...decisions,
      ...decided({ kind: 'undo', decision: 'd1' }).map((d) => ({ ...d, id: 'u' })),
    ];
    const carried = carriedTo(first, undone);
    expect(carried.map(({ decision }) => decision.id)).toEqual(['d2']);
  });

  test('a remark comes along with its bar, and is always asked about', () => {
    const last = first.score.bars.at(-1)!;
    const from = last.at / 10_080 + 1;
    const remarked = decided({ kind: 'remark', script: 'one', from, until: from + 1, text: 'Sing this.' });
    const later = draft(WITH_BAR);
    const moved = (later.score.bars.at(-1)!.at - last.at) / 10_080;
    expect(moved).toBeGreaterThan(0);
    expect(carriedTo(later, remarked)).toMatchObject([
      { sure: false, from: from + moved, until: from + moved + 1, decision: { text: 'Sing this.' } },
    ]);
  });

  test('is made again, taken back, left, and each of it undone', () => {
    const [sure] = carriedTo(first, decisions);
    const again = madeAgain(sure!, 'two');
    expect(again).toEqual({
      kind: 'overrule',
      script: 'two',
      finding: fifths.id,
      reason: 'at the fermata',
      carriedFrom: 'd1',
    });
    const standing = (...made: Parameters<typeof decided>) => carriedStanding('two', 'd1', decided(...made));
    const leave = { kind: 'leave', script: 'two', carriedFrom: 'd1' } as const;
    expect(standing().standing).toBe('asked');
    expect(standing(again)).toEqual({ standing: 'carried', made: 'd1' });
    expect(standing(again, { kind: 'undo', decision: 'd1' }).standing).toBe('asked');
    expect(standing(again, leave).standing).toBe('left');
    expect(standing(again, leave, { kind: 'undo', decision: 'd2' }).standing).toBe('carried');
    const left = applyDecisions('two', first.findings, decided(again, leave));
    expect(left.findings.find(({ id }) => id === fifths.id)!.standing).toBe('open');
  });
});
