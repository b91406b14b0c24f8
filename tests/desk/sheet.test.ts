import { describe, expect, it } from 'vitest';
import type { JudgedFinding } from '../../src/desk/decisions.ts';
import { feedbackFor } from '../../src/desk/feedback.ts';
import { printSheetOptions, readSheetOptions } from '../../src/desk/sheet-options.ts';
import { exercise } from './scripts.ts';

describe('the two strengths', () => {
  const facts = {
    strengths: ['Closes.', 'No fifths.', 'Bass sings.', 'Moves.'],
    strengthKinds: ['close', 'clean', 'bass', 'movement'] as const,
    counts: { phrases: [{ from: 0, until: 8, firstBar: '1', lastBar: '8' }] },
  };
  const told = (...findings: Partial<JudgedFinding>[]) =>
    feedbackFor(
      { ...facts, strengthKinds: [...facts.strengthKinds] },
      findings.map((finding) => ({
        ...exercise('fault-consecutives').findings[0]!,
        bar: '2',
        voices: ['S' as const],
        ...finding,
      })),
    ).strengths;

  it('are none that a finding that stands contradicts', () => {
    expect(told()).toEqual(['Closes.', 'No fifths.']);
    expect(told({ family: 'consecutives' })).toEqual(['Closes.', 'Bass sings.']);
    expect(told({ family: 'chords', bar: '8' })).toEqual(['No fifths.', 'Bass sings.']);
    expect(
      told({ family: 'consecutives' }, { family: 'melody', voices: ['B'] }, { family: 'dissonance' }),
    ).toEqual(['Closes.']);
  });

  it('are told again where the teacher overruled it, or let it be a remark', () => {
    expect(told({ family: 'consecutives', standing: 'overruled' })).toEqual(['Closes.', 'No fifths.']);
    expect(told({ family: 'consecutives', severity: 'remark' })).toEqual(['Closes.', 'No fifths.']);
  });

  it('of an exercise full of consecutives never say there are none', () => {
    const { facts: own, findings } = exercise('fault-consecutives');
    expect(feedbackFor(own, findings).strengths.join(' ')).not.toMatch(/No consecutive/);
  });
});

describe('what is printed', () => {
  const readBack = (text: string) => readSheetOptions(text.split('/')[0], text.split('/')[1]);

  it('stands in an address, and comes back from it', () => {
    for (const options of [
      { parts: ['marks', 'markers'] as const, scripts: [4, 12] },
      { parts: [], scripts: [] },
    ])
      expect(readBack(printSheetOptions(options))).toEqual(options);
    expect(readSheetOptions(undefined, undefined).parts).toEqual(['marks']);
    expect(readSheetOptions('marks.<script>', '1.x.-3.2')).toEqual({ parts: ['marks'], scripts: [1, 2] });
  });
});
