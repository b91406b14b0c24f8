/**
 * Cause and consequence. One wrong note breaks several rules at once; whoever mends it mends them all, so they are
 * told as one slip. Findings hang on the notes they are about: the note on which most of them hang explains them all,
 * then the note on which most of the rest hang, and so on. Within a slip one finding leads and the others follow
 * from it. What is only a remark neither explains nor follows, but for a wrong letter or a forgotten accidental, which
 * come before whatever they do to the harmony.
 */
import { severityRank } from '../rules/rule.ts';
import { VOICES } from '../score/score.ts';
import type { Tone } from '../score/texture.ts';
import type { Finding } from './finding.ts';

/** How a note is written comes before what it sounds like: rules that lead whatever else hangs on the same note. */
const WRITTEN_WRONG: readonly string[] = ['misspelt-note', 'accidental-slip', 'unraised-leading-note'];

/** The findings, each with the one it follows from; one that others follow from is as heavy as the heaviest of them. */
export function withCauses(findings: readonly Finding[]): Finding[] {
  const causes = new Map<Finding, Finding>();
  const severities = new Map<Finding, Finding['severity']>();
  const urgency = urgencyIn(findings);
  for (const slip of slipsIn(findings)) {
    const leader = leaderOf(slip, urgency);
    severities.set(leader, heaviestOf(slip));
    for (const finding of slip) if (finding !== leader) causes.set(finding, leader);
  }
  return findings.map((finding) => {
    const cause = causes.get(finding);
    const severity = severities.get(finding) ?? finding.severity;
    return { ...finding, severity, ...(cause === undefined ? {} : { because: cause.id }) };
  });
}

/**
 * Groups of two findings or more that hang together; each finding is in one at most. Notes are taken by how many
 * open groups hang on them, the most laden first; taking one can only lighten the others.
 */
function slipsIn(findings: readonly Finding[]): Finding[][] {
  const units = unitsOf(findings.filter(canHang));
  const open = new Set(units);
  const byLoad: Hook[][] = [];
  const put = (hook: Hook, load: number) => {
    const equals = byLoad[load] ?? [];
    equals.push(hook);
    byLoad[load] = equals;
  };
  for (const hook of hooksOf(units)) put(hook, hook.units.length);
  const slips: Finding[][] = [];
  for (let load = byLoad.length - 1; load > 1; load--) {
    for (const hook of (byLoad[load] ?? []).sort((a, b) => preferred(a.tone, b.tone))) {
      const still = hook.units.filter((unit) => open.has(unit));
      if (still.length < load) {
        put(hook, still.length);
        continue;
      }
      slips.push(still.flat());
      for (const unit of still) open.delete(unit);
    }
  }
  return [...slips, ...[...open].filter((unit) => unit.length > 1)];
}

function canHang({ severity, rule }: Finding): boolean {
  return severity !== 'remark' || WRITTEN_WRONG.includes(rule.id);
}

/** Consecutives of several pairs at one moment are one movement of the voices; all else stands for itself at first. */
function unitsOf(findings: readonly Finding[]): Finding[][] {
  const units = new Map<string, Finding[]>();
  for (const finding of findings) {
    const key =
      finding.rule.family === 'consecutives'
        ? `${finding.from} ${finding.until}`
        : `${finding.id} ${units.size}`;
    const unit = units.get(key);
    if (unit === undefined) units.set(key, [finding]);
    else unit.push(finding);
  }
  return [...units.values()];
}

/** A note and the findings that hang on it. */
interface Hook {
  readonly tone: Tone;
  readonly units: Finding[][];
}

/** The notes that findings are about. A note read under another name is one with the note as written. */
function hooksOf(units: readonly Finding[][]): Hook[] {
  const hooks = new Map<string, Hook>();
  for (const unit of units)
    for (const [id, tone] of new Map(unit.flatMap(({ tones }) => tones).map((tone) => [tone.id, tone]))) {
      const hook = hooks.get(id);
      if (hook === undefined) hooks.set(id, { tone, units: [unit] });
      else hook.units.push(unit);
    }
  return [...hooks.values()];
}

/** The lowest voice's first, since the melody is mostly given; then the first in time. */
function preferred(a: Tone, b: Tone): number {
  return VOICES.indexOf(b.voice) - VOICES.indexOf(a.voice) || a.at - b.at;
}

/** A rule that is broken again and again is a habit, and explains more than its weight alone. */
const PER_TIME = 0.5;

function urgencyIn(findings: readonly Finding[]): (finding: Finding) => number {
  const times = new Map<string, number>();
  for (const { rule, severity } of findings)
    if (severity !== 'remark') times.set(rule.id, (times.get(rule.id) ?? 0) + 1);
  return ({ rule }) => rule.weight + PER_TIME * (times.get(rule.id) ?? 0);
}

function leaderOf(slip: readonly Finding[], urgency: (finding: Finding) => number): Finding {
  const order = (a: Finding, b: Finding) =>
    rankWritten(a) - rankWritten(b) ||
    severityRank(a.severity) - severityRank(b.severity) ||
    urgency(b) - urgency(a) ||
    a.from - b.from;
  return [...slip].sort(order)[0]!;
}

function rankWritten({ rule }: Finding): number {
  const rank = WRITTEN_WRONG.indexOf(rule.id);
  return rank < 0 ? WRITTEN_WRONG.length : rank;
}

function heaviestOf(slip: readonly Finding[]): Finding['severity'] {
  return slip.map(({ severity }) => severity).reduce((a, b) => (severityRank(a) <= severityRank(b) ? a : b));
}
