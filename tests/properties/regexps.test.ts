import { fileURLToPath } from 'node:url';
import { check } from 'recheck';
import { describe, expect, it } from 'vitest';
import { RULES } from '../../src/rules/list.ts';
import { type Found, regexpsIn } from '../support/regexps.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const found = regexpsIn(ROOT, ['src', 'server', 'web']);

/** Why these, which are put together as they run, can't be slow. */
const MADE: Readonly<Record<string, string>> = {
  'src/profiles/read.ts': 'the forms of the rules’ own parameters, looked at below',
  'src/musicxml/marks/spots.ts': 'a literal taken up afresh',
  'web/build/fonts.ts': 'names of our own files, when the page is built',
  'src/desk/candidate.ts': 'names and titles are cut to 120 characters, and there are three stars at most',
};

/**
 * Run only over XML that the parser has found well formed: there `<` opens a tag and nothing else, and whatever opens
 * is closed, so that no search runs on to the end in vain.
 */
const OVER_WELL_FORMED_XML = /^src\/musicxml\/marks\//;

/** Those that may take longer than in proportion to the text, by a library that proves it or finds such a text. */
async function slow(patterns: readonly Pick<Found, 'where' | 'source' | 'flags'>[]): Promise<string[]> {
  const found: string[] = [];
  // One after the other: the library mixes up the verdicts on what is asked at once.
  for (const { where, source, flags } of patterns) {
    const verdict = await check(source, flags, { timeout: 20_000 });
    const linear = verdict.status === 'safe' && ['safe', 'linear'].includes(verdict.complexity.type);
    if (!linear) found.push(`${where} /${source}/${flags}: ${verdict.status}`);
  }
  return found;
}

const inputs = found.filter(({ made, where }) => !made && !OVER_WELL_FORMED_XML.test(where));

describe('every regular expression', () => {
  it('takes time in proportion to the text', { timeout: 120_000 }, async () => {
    const written = new Map(inputs.map((one) => [`${one.source}/${one.flags}`, one]));
    expect(written.size).toBeGreaterThan(80);
    expect(await slow([...written.values()])).toEqual([]);
  });

  it('that a rule asks a parameter to match does so too', async () => {
    const forms = RULES.flatMap(({ id, parameters }) =>
      Object.values(parameters).flatMap((parameter) =>
        parameter.kind === 'text' ? [{ where: id, source: parameter.form.pattern, flags: '' }] : [],
      ),
    );
    expect(forms).not.toEqual([]);
    expect(await slow(forms)).toEqual([]);
  });

  it('that is put together when it runs has a reason to be', () => {
    const places = found.filter(({ made }) => made).map(({ where }) => where.replace(/:\d+$/, ''));
    expect(new Set(places)).toEqual(new Set(Object.keys(MADE)));
  });
});

it('finds one that is not linear', async () => {
  expect(await slow([{ where: 'here', source: '^([A-Za-z][A-Za-z -]*?)\\s*:', flags: '' }])).toHaveLength(1);
});
