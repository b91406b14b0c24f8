import { describe, expect, test } from 'vitest';
import { csv, csvLine } from '../../src/desk/csv.ts';
import { applyDecisions } from '../../src/desk/decisions.ts';
import { EXAMPLE_SCHEME } from '../../src/desk/example-scheme.ts';
import {
  deskExportSchema,
  type ExportedScript,
  exportPieces,
  markBookHead,
  markBookRow,
} from '../../src/desk/export.ts';
import { factsSchema } from '../../src/desk/facts.ts';
import { giveMark } from '../../src/desk/marks.ts';
import { decided, exercise } from './scripts.ts';

const at = '2026-11-01T10:00:00Z';
const script = exercise('fault-consecutives');

function exported(changes: Partial<ExportedScript> = {}): ExportedScript {
  const { findings: _findings, print: _print, ...facts } = script.facts;
  const first = script.facts.findings[0]!;
  const judged = applyDecisions(
    'x',
    script.facts.findings,
    decided({ kind: 'overrule', script: 'x', finding: first.id }),
  );
  const marks = EXAMPLE_SCHEME.criteria.flatMap(({ id }) => {
    const given = giveMark(EXAMPLE_SCHEME, id, 5, { at });
    return given.ok ? [given.mark] : [];
  });
  return {
    candidate: '4012',
    draft: 2,
    file: '4012-draft2.txt',
    facts,
    findings: [...judged.findings],
    remarks: [{ from: 0, text: 'Good.' }],
    marks,
    departures: [],
    ...changes,
  };
}

describe('tables for spreadsheets', () => {
  test('quotes as RFC 4180 has it, lines ended by CR LF', () => {
    expect(csvLine(['a', 1, undefined, 'say "no", please', 'two\nlines'])).toBe(
      'a,1,,"say ""no"", please","two\nlines"\r\n',
    );
    expect(csv([['a'], ['b']])).toBe('\uFEFFa\r\nb\r\n');
  });

  test.each(['=1+1', '+1', '-2', '@x', '\t=1', '\r=1', ' @x', '\n=1', '\uFEFF=1', '＝1', '－1', '\tx'])(
    'a text that would run as a formula does not: %j',
    (text) => {
      expect(csvLine([text]).replace(/^"/, '')[0]).toBe("'");
    },
  );

  test('numbers of ours are numbers, a minus within a text is a minus', () => {
    expect(csvLine([-3, 2.5, Number.NaN, 'a-b', 'F#4 = sharp'])).toBe('-3,2.5,,a-b,F#4 = sharp\r\n');
  });
});

describe('the mark book', () => {
  test('has a row of as many cells as its head, whatever the script', () => {
    const head = markBookHead(EXAMPLE_SCHEME);
    const row = markBookRow(exported(), EXAMPLE_SCHEME);
    expect(row).toHaveLength(head.length);
    const cell = (name: string) => row[head.indexOf(name)];
    expect(cell('candidate')).toBe('4012');
    expect(cell('overruled')).toBe(1);
    expect(cell('faults: consecutives')).toBe(1);
    expect(cell('total')).toBe(20);
    expect(cell('out of')).toBe(40);
    expect(markBookRow(exported())).toHaveLength(markBookHead().length);
  });

  test('a script not fully marked has no total; one that could not be read says why', () => {
    const head = markBookHead(EXAMPLE_SCHEME);
    const cell = (script: ExportedScript, name: string) =>
      markBookRow(script, EXAMPLE_SCHEME)[head.indexOf(name)];
    expect(cell(exported({ marks: [] }), 'total')).toBeUndefined();
    const { facts: _facts, ...rest } = exported({ failure: 'The file is empty.', findings: [], marks: [] });
    expect(cell(rest, 'could not be read')).toBe('The file is empty.');
    expect(cell(rest, 'faults')).toBeUndefined();
  });

  test('changes since the last draft', () => {
    const head = markBookHead();
    const row = markBookRow(
      exported({ sinceLastDraft: { mended: ['a', 'b'], stillThere: ['c'], fresh: [] } }),
    );
    expect(['mended', 'still there', 'new'].map((name) => row[head.indexOf(name)])).toEqual([2, 1, 0]);
  });
});

describe('everything as JSON', () => {
  test('the pieces are one document of the published shape', () => {
    const scripts = [exported(), exported({ candidate: '<b>4013</b>' })];
    const text = [...exportPieces({ at, scheme: EXAMPLE_SCHEME }, scripts)].join('');
    const read = deskExportSchema.parse(JSON.parse(text));
    expect(read.scripts.map(({ candidate }) => candidate)).toEqual(['4012', '<b>4013</b>']);
    expect(read.version).toBe(1);
    expect(deskExportSchema.parse(JSON.parse([...exportPieces({ at }, [])].join(''))).scripts).toEqual([]);
  });

  test('scripts are taken one after the other', () => {
    let taken = 0;
    function* many() {
      for (; taken < 100; taken++) yield exported();
    }
    const pieces = exportPieces({ at }, many());
    pieces.next();
    expect(taken).toBe(0);
    pieces.next();
    expect(taken).toBe(0);
    pieces.next();
    expect(taken).toBe(1);
  });
});

describe('what is kept of a script', () => {
  test.each(['fault-consecutives', 'half-built', 'tune-alone', 'two-bridges', 'fault-notation'])(
    '%s survives JSON and is of the shape that is promised',
    (name) => {
      const { facts } = exercise(name);
      expect(factsSchema.parse(JSON.parse(JSON.stringify(facts)))).toEqual(facts);
      expect(new Set(facts.findings.map(({ id }) => id)).size).toBe(facts.findings.length);
    },
  );

  test('the kind of place is told by key, chords and degrees, whatever the key', () => {
    expect(script.facts.findings.map(({ context }) => context)).toContain('major; V vi; T 2 3; B 5 6');
  });
});
