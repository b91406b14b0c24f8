import { describe, expect, test } from 'vitest';
import {
  applyDecisions,
  decisionSchema,
  decisionsInForce,
  standingFindings,
} from '../../src/desk/decisions.ts';
import { decided, exercise, scriptFrom } from './scripts.ts';

const { findings } = exercise('fault-consecutives').facts;
const fifths = findings.find(({ rule }) => rule === 'parallel-fifths')!;
const octaves = findings.find(({ rule }) => rule === 'parallel-octaves')!;

function standing(...made: Parameters<typeof decided>) {
  return applyDecisions('x', findings, decided(...made)).findings.find(({ id }) => id === fifths.id)!;
}

describe('decisions about one finding', () => {
  test('nobody has decided: it is open, and counts', () => {
    expect(standing()).toMatchObject({ standing: 'open', severity: 'fault', foundAs: 'fault' });
  });

  test('agreed, overruled with a reason; the later decision holds', () => {
    const agree = { kind: 'agree', script: 'x', finding: fifths.id } as const;
    const overrule = { kind: 'overrule', script: 'x', finding: fifths.id, reason: 'meant so' } as const;
    expect(standing(agree).standing).toBe('agreed');
    expect(standing(agree, overrule)).toMatchObject({
      standing: 'overruled',
      reason: 'meant so',
      decision: 'd2',
    });
    expect(standing(overrule, agree)).toMatchObject({ standing: 'agreed', decision: 'd2' });
    expect(standing(overrule, agree).reason).toBeUndefined();
  });

  test('the teacher’s severity stands beside the one found', () => {
    expect(standing({ kind: 'severity', script: 'x', finding: fifths.id, severity: 'remark' })).toMatchObject(
      { severity: 'remark', foundAs: 'fault', standing: 'open' },
    );
  });

  test('another script’s decisions are passed over', () => {
    expect(standing({ kind: 'overrule', script: 'y', finding: fifths.id }).standing).toBe('open');
  });
});

describe('decisions for the whole class', () => {
  const forAll = { kind: 'overrule for all', rule: 'parallel-fifths', context: fifths.context } as const;

  test('hold wherever the music is of that kind, in any key', () => {
    const inD = scriptFrom(
      'key: D major\nmetre: 4/4\nS: D5 C#5 D5*2 |\nA: A4 A4 B4*2 |\nT: F#4 E4 F#4*2 |\nB: D3 A3 B3*2 |',
    ).facts.findings;
    const same = inD.find(({ rule }) => rule === 'parallel-fifths')!;
    expect(same.context).toBe(fifths.context);
    const judged = applyDecisions('y', inD, decided(forAll)).findings;
    expect(judged.find(({ id }) => id === same.id)).toMatchObject({ standing: 'overruled', forAll: true });
  });

  test('not where it is another place, unless the whole rule is overruled', () => {
    const other = { ...forAll, context: 'major; I ii; T 5 6; B 1 2' } as const;
    expect(standing(other).standing).toBe('open');
    expect(standing({ kind: 'overrule for all', rule: 'parallel-fifths' }).standing).toBe('overruled');
    const judged = applyDecisions(
      'x',
      findings,
      decided({ kind: 'overrule for all', rule: 'parallel-fifths' }),
    );
    expect(judged.findings.find(({ id }) => id === octaves.id)!.standing).toBe('open');
    expect(standingFindings(judged.findings)).toHaveLength(findings.length - 1);
  });

  test('one place can be excepted, before or after', () => {
    const agree = { kind: 'agree', script: 'x', finding: fifths.id } as const;
    expect(standing(agree, forAll).standing).toBe('agreed');
    expect(standing(forAll, agree).standing).toBe('agreed');
  });

  test('a rule named like a built-in thing harms nothing', () => {
    expect(standing({ kind: 'overrule for all', rule: '__proto__' }).standing).toBe('open');
  });
});

describe('undo', () => {
  const overrule = { kind: 'overrule', script: 'x', finding: fifths.id } as const;

  test('takes a decision back; what held before holds again', () => {
    const agree = { kind: 'agree', script: 'x', finding: fifths.id } as const;
    expect(standing(agree, overrule, { kind: 'undo', decision: 'd2' }).standing).toBe('agreed');
    expect(
      standing({ kind: 'overrule for all', rule: 'parallel-fifths' }, { kind: 'undo', decision: 'd1' })
        .standing,
    ).toBe('open');
  });

  test('an undo can be undone, and that again', () => {
    const undo = (decision: string) => ({ kind: 'undo', decision }) as const;
    expect(standing(overrule, undo('d1'), undo('d2')).standing).toBe('overruled');
    expect(standing(overrule, undo('d1'), undo('d2'), undo('d3')).standing).toBe('open');
    expect(decisionsInForce(decided(overrule, undo('d1'), undo('d2'))).map(({ id }) => id)).toEqual(['d1']);
  });
});

describe('the teacher’s own remarks', () => {
  test('come in order of their place and can be taken back', () => {
    const remark = (from: number, text: string) => ({ kind: 'remark', script: 'x', from, text }) as const;
    const made = decided(remark(6, 'Lovely close.'), remark(2, 'Sing this.'), remark(4, 'No.'), {
      kind: 'undo',
      decision: 'd3',
    });
    expect(applyDecisions('x', findings, made).remarks.map(({ text }) => text)).toEqual([
      'Sing this.',
      'Lovely close.',
    ]);
  });
});

describe('decisions as data', () => {
  test('are checked', () => {
    const [good] = decided({ kind: 'remark', script: 'x', from: 2.5, text: ' Well done. ' });
    expect(decisionSchema.parse(good)).toMatchObject({ text: 'Well done.' });
    const bad = [
      { ...good, text: '  ' },
      { ...good, text: 'x'.repeat(2_001) },
      { ...good, from: -1 },
      { ...good, kind: 'praise' },
    ];
    for (const decision of bad) expect(decisionSchema.safeParse(decision).success).toBe(false);
  });

  test('inputs are not changed', () => {
    const frozen = Object.freeze(decided({ kind: 'overrule', script: 'x', finding: fifths.id }));
    applyDecisions('x', Object.freeze([...findings]), frozen);
    expect(fifths.severity).toBe('fault');
  });
});
