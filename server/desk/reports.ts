/** What comes off the desk: how a script stands, sheets, the class, moderation, exports. Reads only. */

import {
  applyDecisions,
  BYTE_ORDER_MARK,
  compareDrafts,
  csvLine,
  type Decision,
  type DraftComparison,
  type ExportedScript,
  exportPieces,
  type Feedback,
  feedbackFor,
  type JudgedFinding,
  type Mark,
  type Moderation,
  markBookHead,
  markBookRow,
  marksInView,
  moderationOrder,
  type Suggestion,
  standingMarks,
  suggestLevel,
  type TeacherRemark,
  type Total,
  total,
} from '../../src/desk/index.ts';
import { styleAdvice } from '../../src/desk/script-style.ts';
import type { FoundLine } from '../../src/musicxml/index.ts';
import type { Score } from '../../src/score/score.ts';
import { decisionsByScript } from './kept.ts';
import { marksGiven } from './marks-given.ts';
import { type OpenedScript, openScript, saidVoices } from './open-script.ts';
import { isSeen, latestEntries } from './queue.ts';
import type { Script, ScriptEntry, Stack } from './records.ts';
import type { Desk } from './store.ts';

/** A script as it stands under the teacher's decisions. */
export interface StandingScript {
  readonly script: Script;
  readonly findings: readonly JudgedFinding[];
  readonly remarks: readonly TeacherRemark[];
  readonly marks: readonly Mark[];
}

export function standingOf(desk: Desk, script: Script, decisions?: readonly Decision[]): StandingScript {
  const judged = applyDecisions(
    String(script.id),
    script.facts?.findings ?? [],
    decisions ?? desk.decisions(script.stack, script.id),
  );
  return { script, findings: judged.findings, remarks: judged.remarks, marks: desk.marks(script.id) };
}

/** The score of a script, read anew from its file; undefined for a file that could not be read. */
export function scoreOf(desk: Desk, script: ScriptEntry): Score | undefined {
  return openedScript(desk, script)?.score;
}

/** The same with what else its file says. */
export function openedScript(
  desk: Desk,
  script: ScriptEntry,
): Extract<OpenedScript, { ok: true }> | undefined {
  if (script.error !== undefined) return undefined;
  const opened = reopened(desk, script);
  return opened.ok ? opened : undefined;
}

/** A script's file opened as it was for its review, or the reason why it can't be. */
function reopened(desk: Desk, script: ScriptEntry): OpenedScript {
  return openScript(desk.content(script.id), saidVoices(desk.stack(script.stack).voices, script.voices));
}

/** Which lines of a file there are to choose its voices from, and which were taken; none for a text. */
export function linesOf(desk: Desk, script: ScriptEntry): readonly FoundLine[] {
  return reopened(desk, script).lines ?? [];
}

/** How a script changed since the candidate's draft before it; undefined where it is the first. */
export function sinceDraftBefore(
  desk: Desk,
  standing: StandingScript,
): DraftComparison<JudgedFinding> | undefined {
  const { script } = standing;
  const before = desk.draftBefore(script);
  if (before === undefined) return undefined;
  const [old, now] = [scoreOf(desk, before), scoreOf(desk, script)];
  if (old === undefined || now === undefined) return undefined;
  return compareDrafts(
    { score: old, findings: worthTelling(standingOf(desk, before).findings) },
    { score: now, findings: worthTelling(standing.findings) },
  );
}

/** Remarks inform; whether one is still there is no news. */
function worthTelling(findings: readonly JudgedFinding[]): JudgedFinding[] {
  return findings.filter(({ severity, standing }) => severity !== 'remark' && standing !== 'overruled');
}

/** The level suggested at each criterion of the scheme, with its evidence. */
export function suggestionsFor(stack: Stack, standing: StandingScript): Suggestion[] {
  const { facts } = standing.script;
  if (facts === undefined) return [];
  const ground = { counts: facts.counts, findings: standing.findings };
  return stack.scheme.criteria.map((criterion) => suggestLevel(criterion, ground));
}

export interface Sheet {
  readonly script: ScriptEntry;
  readonly title: string;
  readonly key: string;
  /** The teacher has decided something about it, marked it or finished with it. */
  readonly seen: boolean;
  /** Initials of everybody who decided something about it. */
  readonly markers: readonly string[];
  /** All drafts of the candidate up to this one, with what stands against each. */
  readonly drafts: readonly { readonly draft: number; readonly faults: number; readonly queries: number }[];
  /** What is printed: agreed findings, and those nobody has decided about, which the sheet marks as such. */
  readonly findings: readonly JudgedFinding[];
  readonly remarks: readonly TeacherRemark[];
  readonly feedback: Feedback & { readonly style: readonly string[] };
  readonly marks: readonly Mark[];
  readonly total: Total;
  readonly since?: { readonly summary: string; readonly mended: readonly string[] };
  readonly given?: Script['given'];
  readonly score?: Score;
}

/** A pupil's sheet, as data: drawn and printed by the page. */
export function sheetOf(desk: Desk, stack: Stack, script: Script): Sheet {
  const standing = standingOf(desk, script);
  const { facts } = script;
  const since = sinceDraftBefore(desk, standing);
  const score = scoreOf(desk, script);
  const { error: _error, facts: _facts, given, ...entry } = script;
  return {
    script: entry,
    title: facts?.title ?? '',
    key: facts?.key ?? '',
    seen: isSeen(desk, script),
    markers: markersOf(standing),
    drafts: draftsUpTo(desk, standing),
    findings: standing.findings.filter(isPrinted),
    remarks: standing.remarks,
    feedback: {
      ...feedbackFor(facts ?? { strengths: [] }, standing.findings),
      style: styleAdvice(facts?.counts.style ?? {}),
    },
    marks: standing.marks,
    total: total(stack.scheme, standing.marks),
    ...(since === undefined
      ? {}
      : {
          since: {
            summary: since.summary,
            mended: since.mended.map(({ name, bar }) => `${name}, bar ${bar}`),
          },
        }),
    ...(given === undefined ? {} : { given }),
    ...(score === undefined ? {} : { score }),
  };
}

function markersOf({ marks, remarks, findings }: StandingScript): string[] {
  const named = [...marks, ...remarks, ...findings].flatMap(({ by }) => by ?? []);
  return [...new Set(named)].sort();
}

function draftsUpTo(desk: Desk, now: StandingScript): Sheet['drafts'] {
  const earlier: StandingScript[] = [];
  for (
    let before = desk.draftBefore(now.script);
    before !== undefined && earlier.length < MOST_DRAFTS;
    before = desk.draftBefore(before)
  )
    earlier.unshift(standingOf(desk, before));
  return [...earlier, now].map(({ script, findings }) => {
    const against = worthTelling(findings);
    const faults = against.filter(({ severity }) => severity === 'fault').length;
    return { draft: script.draft, faults, queries: against.length - faults };
  });
}

/** A picture of more drafts is no small one. */
const MOST_DRAFTS = 7;

/** Overruled findings never reach a pupil; a remark does only where the teacher agreed to it. */
export function isPrinted({ standing, severity }: JudgedFinding): boolean {
  return standing === 'agreed' || (standing === 'open' && severity !== 'remark');
}

/** The marks of a script as far as one marker may see them: all that were given, and those that stand of them. */
export function marksSeenBy(
  desk: Desk,
  script: number,
  by: string | undefined,
): { readonly given: readonly Mark[]; readonly marks: readonly Mark[] } {
  const { given, second } = marksGiven(desk.db, script);
  const seen = marksInView(given, by, second);
  return { given: second === undefined ? [] : seen, marks: standingMarks(seen, second) };
}

export interface Moderated {
  readonly id: number;
  readonly candidate?: string;
  readonly draft: number;
  readonly marks: readonly Mark[];
}

/** Scripts in rank order at one criterion, or by total: their marks alone. */
export function moderationOf(
  desk: Desk,
  stack: Stack,
  criterion: string | undefined,
  by?: string,
): Moderation<Moderated> {
  const scripts = latestEntries(desk, stack.id, Number.MAX_SAFE_INTEGER).map(
    ({ id, candidate, draft }): Moderated => ({
      id,
      ...(candidate === undefined ? {} : { candidate }),
      draft,
      marks: marksSeenBy(desk, id, by).marks,
    }),
  );
  return moderationOrder(stack.scheme, scripts, criterion);
}

/** Every script of a stack with all that is known of it, one at a time. */
function* exportedScripts(desk: Desk, stack: Stack): Generator<ExportedScript> {
  const byScript = decisionsByScript(desk.db, stack.id);
  // By number, page by page: the database is free between two of them for what each script asks of it.
  for (let after = 0; ; after += PAGE) {
    const page = desk.entries(stack.id, PAGE, after);
    for (const entry of page) yield exportedScript(desk, desk.script(entry.id), byScript(entry.id));
    if (page.length < PAGE) return;
  }
}

const PAGE = 200;

function exportedScript(desk: Desk, script: Script, decisions: readonly Decision[]): ExportedScript {
  const standing = standingOf(desk, script, decisions);
  const since = sinceDraftBefore(desk, standing);
  const { facts } = script;
  const kept = facts === undefined ? undefined : withoutBulk(facts);
  return {
    candidate: script.candidate ?? '',
    draft: script.draft,
    file: script.file,
    ...(script.error === undefined ? {} : { failure: script.error.message }),
    ...(kept === undefined ? {} : { facts: kept }),
    findings: [...standing.findings],
    remarks: standing.remarks.map(({ voice, from, until, text }) => ({
      ...(voice === undefined ? {} : { voice }),
      ...(from === undefined ? {} : { from }),
      ...(until === undefined ? {} : { until }),
      text,
    })),
    marks: [...standing.marks],
    ...(since === undefined
      ? {}
      : {
          sinceLastDraft: {
            mended: since.mended.map(({ id }) => id),
            stillThere: since.stillThere.map(({ after }) => after.id),
            fresh: since.fresh.map(({ id }) => id),
          },
        }),
    departures: script.given?.departures.map(({ message }) => message) ?? [],
  };
}

function withoutBulk(facts: NonNullable<Script['facts']>): NonNullable<ExportedScript['facts']> {
  const { findings: _findings, print: _print, ...kept } = facts;
  return kept;
}

/** The mark book as CSV, in pieces. */
export function* markBook(desk: Desk, stack: Stack): Generator<string> {
  yield BYTE_ORDER_MARK + csvLine(markBookHead(stack.scheme));
  for (const script of exportedScripts(desk, stack)) yield csvLine(markBookRow(script, stack.scheme));
}

/** Everything as JSON, in pieces. */
export function everything(desk: Desk, stack: Stack): Generator<string> {
  return exportPieces({ at: desk.now().toISOString(), scheme: stack.scheme }, exportedScripts(desk, stack));
}
