/** The mark book as a table, and everything as JSON: one script after the other, so that a large stack is no burden. */
import * as z from 'zod';
import { FAMILIES } from '../rules/rule.ts';
import type { Cell } from './csv.ts';
import { standingFindings } from './decisions.ts';
import { factsSchema } from './facts.ts';
import { scriptFindingSchema } from './finding.ts';
import { markSchema, total } from './marks.ts';
import { fullMarks, type Scheme, schemeSchema } from './scheme.ts';

export const judgedSchema = scriptFindingSchema.extend({
  standing: z.enum(['open', 'agreed', 'overruled']),
  foundAs: z.enum(['fault', 'query', 'remark']),
  reason: z.string().optional(),
  forAll: z.literal(true).optional(),
  decision: z.string().optional(),
  by: z.string().optional(),
});

const exportedRemarkSchema = z.object({
  voice: z.enum(['S', 'A', 'T', 'B']).optional(),
  /** Left out where it is about the whole script. */
  from: z.number().min(0).optional(),
  until: z.number().min(0).optional(),
  text: z.string(),
});

/** One script with all that is known of it. A file that could not be read has `failure` and no facts. */
const exportedScriptSchema = z.object({
  candidate: z.string(),
  draft: z.number().int().min(1),
  file: z.string(),
  failure: z.string().optional(),
  facts: factsSchema.omit({ findings: true, print: true }).optional(),
  findings: z.array(judgedSchema),
  remarks: z.array(exportedRemarkSchema),
  marks: z.array(markSchema),
  /** Against the draft before it, by finding id: `mended` are ids in the earlier draft. */
  sinceLastDraft: z
    .object({ mended: z.array(z.string()), stillThere: z.array(z.string()), fresh: z.array(z.string()) })
    .optional(),
  /** Where the given notes were departed from, in sentences. */
  departures: z.array(z.string()),
});
export type ExportedScript = z.infer<typeof exportedScriptSchema>;

export const deskExportSchema = z.object({
  /** Fields are added, never renamed or taken away. */
  version: z.literal(1),
  at: z.iso.datetime(),
  scheme: schemeSchema.optional(),
  scripts: z.array(exportedScriptSchema),
});
export type DeskExport = z.infer<typeof deskExportSchema>;

/** The export as text in pieces, to be written one after the other; joined they are one JSON document. */
export function* exportPieces(
  head: Omit<DeskExport, 'scripts' | 'version'>,
  scripts: Iterable<ExportedScript>,
): Generator<string> {
  const opening = JSON.stringify({ version: 1, ...head });
  yield `${opening.slice(0, -1)},"scripts":[`;
  let first = true;
  for (const script of scripts) {
    yield `${first ? '' : ','}\n${JSON.stringify(script)}`;
    first = false;
  }
  yield '\n]}\n';
}

const PLAIN_COLUMNS = [
  'candidate',
  'draft',
  'file',
  'title',
  'key',
  'bars',
  'beats written, %',
  'phrases',
  'phrases closed',
  'faults',
  'queries',
  'remarks',
  'overruled',
  ...FAMILIES.map((family) => `faults: ${family}`),
  'departures from the given notes',
  'mended',
  'still there',
  'new',
  'could not be read',
] as const;

/** The head of the mark book: what every script has, then a column for each criterion, then the total. */
export function markBookHead(scheme?: Scheme): Cell[] {
  const criteria = scheme?.criteria.map((criterion) => criterion.name) ?? [];
  return [...PLAIN_COLUMNS, ...criteria, ...(scheme === undefined ? [] : ['total', `out of`])];
}

/** A script's row of the mark book, in the order of {@link markBookHead}. Marks not given yet are left empty. */
export function markBookRow(script: ExportedScript, scheme?: Scheme): Cell[] {
  const { facts, sinceLastDraft: since } = script;
  const standing = standingFindings(script.findings);
  const bySeverity = (severity: string) => standing.filter((finding) => finding.severity === severity).length;
  const known = (value: number): Cell => (facts === undefined ? undefined : value);
  const counts = facts?.counts;
  const cells: Cell[] = [
    script.candidate,
    script.draft,
    script.file,
    facts?.title,
    facts?.key,
    facts?.bars,
    counts === undefined ? undefined : Math.floor((1 - counts.unwritten) * 100),
    counts?.phrases.length,
    counts?.phrases.filter(({ cadence }) => cadence !== undefined).length,
    known(bySeverity('fault')),
    known(bySeverity('query')),
    known(bySeverity('remark')),
    known(script.findings.length - standing.length),
    ...FAMILIES.map((family) =>
      known(standing.filter((finding) => finding.severity === 'fault' && finding.family === family).length),
    ),
    known(script.departures.length),
    since?.mended.length,
    since?.stillThere.length,
    since?.fresh.length,
    script.failure,
  ];
  if (scheme === undefined) return cells;
  const marks = new Map(script.marks.map((mark) => [mark.criterion, mark.marks]));
  const whole = total(scheme, script.marks);
  return [
    ...cells,
    ...scheme.criteria.map(({ id }) => marks.get(id)),
    whole.missing.length === 0 && whole.beyond.length === 0 ? whole.marks : undefined,
    fullMarks(scheme),
  ];
}
