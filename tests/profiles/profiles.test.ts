import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DEFAULT_PROFILE, PROFILES, profileNamed } from '../../src/profiles/list.ts';
import { readProfile } from '../../src/profiles/read.ts';
import { reviewScore } from '../../src/review/review.ts';
import { RULES } from '../../src/rules/list.ts';
import { scoreOf } from '../support/rules.ts';

const EXERCISE = `key: C major
metre: 3/4
S: E4 A4 C5 |
A: C4 F4 G4 |
T: G3 A3 E4 |
B: C3 D3 C3 |`;

function errorsOf(data: unknown): readonly string[] {
  const reading = readProfile(data);
  return reading.ok ? [] : (reading.problems ?? []).map(({ message }) => message);
}

describe('the house profiles', () => {
  it('are three, and the chorale style is the one that holds', () => {
    expect(PROFILES.map((profile) => profile.name)).toEqual(['first-steps', 'chorale', 'strict']);
    expect(DEFAULT_PROFILE.name).toBe('chorale');
    expect(profileNamed('strict')?.name).toBe('strict');
    expect(profileNamed('constructor')).toBeUndefined();
  });

  it.each(PROFILES.map((profile) => [profile.name, profile] as const))(
    '%s sets only what there is',
    (_name, profile) => {
      const { ok, ...rest } = readProfile({ name: 'copy', rules: profile.rules });
      expect(rest).not.toHaveProperty('problems');
      expect(ok).toBe(true);
      expect(profile.statement).toMatch(/^[A-Z].*\.$/);
    },
  );

  it('grow stricter', () => {
    const faults = PROFILES.map(
      (profile) =>
        reviewScore(scoreOf(EXERCISE), profile).findings.filter((f) => f.severity === 'fault').length,
    );
    expect(faults[2]).toBeGreaterThan(faults[1]!);
    expect(faults[1]).toBeGreaterThanOrEqual(faults[0]!);
  });
});

describe("a teacher's own profile", () => {
  it('turns rules off, down and up, and the review says what is off', () => {
    const reading = readProfile({
      name: 'year-12',
      statement: 'For the second term.',
      rules: { 'exposed-fifths': 'off', 'voice-overlap': { severity: 'fault' } },
    });
    expect(reading.ok).toBe(true);
    if (!reading.ok) return;
    const review = reviewScore(scoreOf(EXERCISE), reading.profile);
    expect(review.switchedOff).toEqual(['exposed-fifths']);
    expect(review.findings.some((finding) => finding.rule.id === 'exposed-fifths')).toBe(false);
    expect(
      reviewScore(scoreOf(EXERCISE), DEFAULT_PROFILE).findings.some((f) => f.rule.id === 'exposed-fifths'),
    ).toBe(true);
  });

  it('starts from the house profile it names and changes only what it says', () => {
    const reading = readProfile({
      name: 'mine',
      basedOn: 'strict',
      rules: { 'voice-range': { parameters: { stretch: 1 } } },
    });
    expect(reading.ok && reading.profile.rules['voice-range']?.parameters).toEqual({
      ...profileNamed('strict')?.rules['voice-range']?.parameters,
      stretch: 1,
    });
    expect(reading.ok && reading.profile.rules['exposed-fifths']?.severity).toBe('fault');
  });

  it('passes its parameters on to the rule', () => {
    const hammered = scoreOf(`metre: 4/4
S: E4 F4 G4 C5 |
A: C4 C4 C4 C4 |
T: G3 A3 G3 E3 |
B: C3 F3 E3 C3 |`);
    const reading = readProfile({ name: 'mine', rules: { 'hammered-note': { parameters: { most: 3 } } } });
    expect(reading.ok).toBe(true);
    if (!reading.ok) return;
    const ids = (profile = reading.profile) =>
      reviewScore(hammered, profile).findings.map((finding) => finding.rule.id);
    expect(ids()).toContain('hammered-note');
    expect(ids(DEFAULT_PROFILE)).not.toContain('hammered-note');
  });

  it('names every error in a sentence', () => {
    expect(
      errorsOf({
        name: 'Year 12',
        colour: 'red',
        basedOn: 'easy',
        rules: {
          'parallel-fiths': 'off',
          'voice-crossing': 'bad',
          'voice-overlap': 3,
          'exposed-fifths': { level: 'query' },
          'hammered-note': { severity: 'warn', parameters: { most: 99, least: 1 } },
          'circling-line': { parameters: [] },
          'voice-range': { parameters: { comfortable: 'high' } },
          'parallel-octaves': { parameters: { onBeats: 'never' } },
        },
      }),
    ).toEqual([
      'The “name” must be small letters and digits, with hyphens between words: “year-12”.',
      '“basedOn” must be the name of a house profile: “first-steps”, “chorale”, “strict”.',
      'The profile has an entry that is not known: “colour”. It may have “name”, “statement”, “basedOn” and “rules”.',
      '“parallel-fiths” is not the name of a rule. Did you mean “parallel-fifths”?',
      'The severity of “voice-crossing” must be one of “fault”, “query”, “remark”, “off”; it is “bad”.',
      '“voice-overlap” must be “fault”, “query”, “remark”, “off”, or an object in braces with “severity” and “parameters”; it is 3.',
      '“exposed-fifths” has an entry “level”; it may have “severity” and “parameters”.',
      'The severity of “hammered-note” must be one of “fault”, “query”, “remark”, “off”; it is “warn”.',
      'The parameter “most” of “hammered-note” must be a number from 2 to 32; it is 99.',
      '“hammered-note” has no parameter “least”; it has “remarkable”, “most”.',
      'The “parameters” of “circling-line” must be an object in braces; they are a list.',
      'The parameter “comfortable” of “voice-range” must be written like “S C4–G5, A G3–D5, T C3–G4, B E2–D4”; it is “high”.',
      'The parameter “onBeats” of “parallel-octaves” must be one of “fault”, “query”, “remark”, “ignore”; it is “never”.',
    ]);
  });

  it('is refused, with a reason, when it is no profile at all', () => {
    for (const data of [null, 7, 'chorale', [], {}]) expect(errorsOf(data).length).toBeGreaterThan(0);
    expect(errorsOf([])[0]).toBe('A profile must be a JSON object in braces, with a “name” and “rules”.');
    expect(errorsOf({})[0]).toBe('The profile needs a “name”, in quotation marks.');
    expect(errorsOf({ name: 'chorale' })[0]).toContain('must not be one of the names that are taken');
    expect(errorsOf({ name: 'mine', rules: JSON.parse('{"__proto__": "off"}') })[0]).toContain(
      'is not the name of a rule',
    );
  });

  it('never makes the reader throw, whatever the JSON', () => {
    fc.assert(
      fc.property(fc.jsonValue(), fc.constantFrom(...RULES.map((rule) => rule.id)), (value, id) => {
        expect(() => readProfile(value)).not.toThrow();
        const reading = readProfile({ name: 'mine', rules: { [id]: value } });
        if (!reading.ok)
          expect(reading.message.split('\n').every((error) => /\.$|\?$/.test(error))).toBe(true);
      }),
      { seed: 7 },
    );
  });
});
