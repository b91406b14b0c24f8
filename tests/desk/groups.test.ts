import { describe, expect, it } from 'vitest';
import { applyDecisions } from '../../src/desk/decisions.ts';
import { EXAMPLE_SCHEME } from '../../src/desk/example-scheme.ts';
import { groupsOf, groupWith, numbersOf } from '../../src/desk/groups.ts';
import { differencesIn, giveMark, marksInView, settledMarks, standingMarks } from '../../src/desk/marks.ts';
import { decided, exercise } from './scripts.ts';

describe('findings by slip', () => {
  const { facts, findings } = exercise('fault-consecutives');

  it('puts what is told under one mark together, in the order of the list, and loses nothing', () => {
    const groups = groupsOf(findings);
    expect(groups.flatMap((group) => group.findings)).toEqual(findings);
    expect(groups.length).toBeLessThan(findings.length);
    const several = groups.find((group) => group.findings.length > 1)!;
    expect(several.slips).toBe(several.findings.filter(({ because }) => because === undefined).length);
    expect(groupWith(findings, several.findings.at(-1)!.id)).toEqual(several);
  });

  it('are agreed to as one decision, from which a single one can be excepted, and taken back as one', () => {
    const [first, second, third] = facts.findings.map(({ id }) => id) as [string, string, string];
    const made = decided(
      { kind: 'agree', script: 'x', by: 'AB', finding: first, also: [second, third] },
      { kind: 'overrule', script: 'x', finding: second },
    );
    const standings = (decisions: typeof made) =>
      applyDecisions('x', facts.findings, decisions).findings.slice(0, 3);
    expect(standings(made)).toMatchObject([
      { standing: 'agreed', by: 'AB' },
      { standing: 'overruled' },
      { standing: 'agreed', by: 'AB' },
    ]);
    const undone = [
      ...made.slice(0, 1),
      ...decided({ kind: 'undo', decision: 'd1' }).map((d) => ({ ...d, id: 'd9' })),
    ];
    expect(standings(undone).map(({ standing }) => standing)).toEqual(['open', 'open', 'open']);
  });

  it('a remark about the whole script comes before those with a place', () => {
    const remarks = decided(
      { kind: 'remark', script: 'x', from: 0, text: 'Here.' },
      { kind: 'remark', script: 'x', text: 'In all.' },
    );
    expect(applyDecisions('x', [], remarks).remarks.map(({ text }) => text)).toEqual(['In all.', 'Here.']);
  });
});

describe('two markers', () => {
  const { id } = EXAMPLE_SCHEME.criteria[0]!;
  const give = (marks: number, by: string, agreed?: true) => {
    const given = giveMark(EXAMPLE_SCHEME, id, marks, {
      at: '2026-11-01T10:00:00Z',
      by,
      ...(agreed ? { agreed } : {}),
    });
    if (!given.ok) throw new Error(given.message);
    return given.mark;
  };

  it('where they differ no mark stands until one is agreed on; the same mark stands', () => {
    const [ab, cd] = [give(7, 'AB'), give(5, 'CD')];
    expect(standingMarks([ab], 'open')).toEqual([ab]);
    expect(settledMarks([ab], 'open')).toEqual([ab]);
    expect(settledMarks([ab], 'blind')).toEqual([]);
    expect(standingMarks([ab, cd], 'open')).toEqual([]);
    expect(differencesIn([ab, cd])).toEqual([{ criterion: id, marks: [ab, cd] }]);
    expect(standingMarks([ab, give(7, 'CD')], 'open')).toHaveLength(1);
    const agreed = give(6, 'CD', true);
    expect(standingMarks([ab, cd, agreed], 'open')).toEqual([agreed]);
    expect(differencesIn([ab, cd, agreed])).toEqual([]);
  });

  it('with one marker the last mark counts, whoever gave it', () => {
    expect(standingMarks([give(7, 'AB'), give(5, 'CD')]).map(({ marks }) => marks)).toEqual([5]);
  });

  it('a second marker who works unseen sees the first one’s mark only beside an own one', () => {
    const [ab, cd] = [give(7, 'AB'), give(5, 'CD')];
    expect(marksInView([ab], 'CD', 'blind')).toEqual([]);
    expect(marksInView([ab], 'CD', 'open')).toEqual([ab]);
    expect(marksInView([ab, cd], 'CD', 'blind')).toEqual([ab, cd]);
    expect(marksInView([ab], undefined, 'blind')).toEqual([]);
  });
});

describe('the numbers of findings', () => {
  it('are those of their marks, and count on where there is none', () => {
    const numbers = numbersOf([
      { id: 'a', mark: 2 },
      { id: 'b', mark: 2 },
      { id: 'c' },
      { id: 'd', mark: 5 },
      { id: 'e' },
    ]);
    expect([...numbers]).toEqual([
      ['a', 2],
      ['b', 2],
      ['c', 6],
      ['d', 5],
      ['e', 7],
    ]);
  });
});
