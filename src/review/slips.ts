/**
 * Cause and consequence. One wrong note breaks several rules at once; whoever mends it mends them all, so they are
 * told as one slip. Findings hang on the notes they are about: the note on which most of them hang explains them all,
 * then the note on which most of the rest hang, and so on. Within a slip one finding leads and the others follow
 * from it. What is only a remark neither explains nor follows, but for a wrong letter or a forgotten accidental, which
 * come before whatever they do to the harmony.
 */
import { severityRank } from '../rules/rule.ts';
import { sameNoteName } from '../score/pitch.ts';
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
    const follows = slip.filter((finding) => finding !== leader && canFollow(finding, leader));
    severities.set(leader, heaviestOf([leader, ...follows]));
    for (const finding of follows) causes.set(finding, leader);
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

/** Rules about how a phrase closes: what voices do on their way does not decide it. */
const FORM: readonly string[] = ['weak-cadence', 'no-cadence'];
/** Rules about the plan of the whole piece: nothing in one place brings it about. */
const PLAN: readonly string[] = ['early-home-close', 'ends-in-another-key'];

/** How a phrase closes hangs on the chords it closes with, not on how the voices come to them. */
function canFollow(finding: Finding, leader: Finding): boolean {
  const { rule } = finding;
  if (PLAN.includes(rule.id)) return false;
  // Another letter sounds the same, and so do the fifths; a seventh degree raised moves as it did.
  const leaves = leader.rule.id === 'misspelt-note' || leader.rule.id === 'unraised-leading-note';
  if (leaves && isConsecutive(finding)) return false;
  return !FORM.includes(rule.id) || !(isConsecutive(leader) || leader.rule.family === 'melody');
}

/** Closes that an unraised seventh in them spoils. */
const CLOSES: readonly string[] = ['weak-cadence', 'no-cadence'];

/**
 * What is one matter whatever notes it names. Consecutives of several pairs at one moment are one movement of the
 * voices; a close without its leading note fails for want of it; a voice that lies too far off for a while is too
 * high or too low in it. All else stands for itself at first.
 */
function unitsOf(findings: readonly Finding[]): Finding[][] {
  const stretches = stretchesByTone(findings);
  const spoilt = new Map(
    findings
      .filter(({ rule }) => rule.id === 'unraised-leading-note')
      .flatMap((finding) => [
        [`from ${finding.from}`, finding] as const,
        [`until ${finding.until}`, finding] as const,
      ]),
  );
  const units = new Map<string, Finding[]>();
  for (const finding of findings) {
    const { rule, from, until } = finding;
    const lack = CLOSES.includes(rule.id)
      ? (spoilt.get(`until ${until}`) ?? spoilt.get(`from ${from}`))
      : undefined;
    const key = isConsecutive(finding)
      ? `${from} ${until}`
      : (lack ?? stretchAround(finding, stretches) ?? finding).id;
    const unit = units.get(key);
    if (unit === undefined) units.set(key, [finding]);
    else unit.push(finding);
  }
  return [...units.values()];
}

function isConsecutive({ rule }: Finding): boolean {
  return rule.family === 'consecutives' || rule.id === 'accented-passing-consecutives';
}

/** The findings that a voice lies badly for more notes than one, by each of those notes. */
function stretchesByTone(findings: readonly Finding[]): Map<string, Finding[]> {
  const byTone = new Map<string, Finding[]>();
  for (const finding of findings)
    for (const tone of stretchedTones(finding)) {
      const known = byTone.get(tone.id);
      if (known === undefined) byTone.set(tone.id, [finding]);
      else known.push(finding);
    }
  return byTone;
}

/** The notes of the voices that have several in a finding about where voices lie: no one of them mends it. */
function stretchedTones({ rule, tones }: Finding): readonly Tone[] {
  if (rule.family !== 'spacing and range') return [];
  return tones.filter(({ voice, id }) => tones.some((other) => other.voice === voice && other.id !== id));
}

/** The longest stretch that holds all notes that one voice has in a finding about where voices lie. */
function stretchAround(finding: Finding, stretches: ReadonlyMap<string, Finding[]>): Finding | undefined {
  if (finding.rule.family !== 'spacing and range') return undefined;
  return finding.voices
    .flatMap((voice) => {
      const tones = finding.tones.filter((tone) => tone.voice === voice);
      const ids = new Set(tones.map(({ id }) => id));
      return (stretches.get(tones[0]?.id ?? '') ?? []).filter(
        (stretch) => tones.length > 0 && [...ids].every((id) => stretch.tones.some((tone) => tone.id === id)),
      );
    })
    .reduce<Finding | undefined>((a, b) => (a && a.tones.length >= b.tones.length ? a : b), undefined);
}

/** A note and the findings that hang on it. */
interface Hook {
  readonly tone: Tone;
  readonly units: Finding[][];
}

/**
 * The notes that findings are about, each of which could mend them. A note read under another name is one with the
 * note as written.
 */
function hooksOf(units: readonly Finding[][]): Hook[] {
  const hooks = new Map<string, Hook>();
  for (const unit of units)
    for (const [id, tone] of new Map(tonesToMend(unit).map((tone) => [tone.id, tone]))) {
      const hook = hooks.get(id);
      if (hook === undefined) hooks.set(id, { tone, units: [unit] });
      else hook.units.push(unit);
    }
  return [...hooks.values()];
}

/** Of a seventh degree not raised, and the close that it spoils, that degree alone: the bass under it is as it should be. */
function tonesToMend(unit: readonly Finding[]): readonly Tone[] {
  const unraised = unit.find(({ rule }) => rule.id === 'unraised-leading-note');
  if (unraised === undefined) return unit.flatMap(hookTones);
  const first = unraised.tones.reduce((a, b) => (b.at < a.at ? b : a));
  return unraised.tones.filter(({ pitch }) => sameNoteName(pitch, first.pitch));
}

function hookTones(finding: Finding): readonly Tone[] {
  const stretched = new Set(stretchedTones(finding));
  return finding.tones.filter((tone) => !stretched.has(tone));
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
    rankWritten(a.rule.id) - rankWritten(b.rule.id) ||
    severityRank(a.severity) - severityRank(b.severity) ||
    longerStretch(a, b) ||
    urgency(b) - urgency(a) ||
    a.from - b.from;
  return [...slip].sort(order)[0]!;
}

/** 0 for what comes before all else; as many as there are such rules for what doesn't. Takes a rule's id. */
export function rankWritten(rule: string): number {
  const rank = WRITTEN_WRONG.indexOf(rule);
  return rank < 0 ? WRITTEN_WRONG.length : rank;
}

/** Of two voices badly placed, the longer stretch explains the shorter; of other things length says nothing. */
function longerStretch(a: Finding, b: Finding): number {
  const [one, other] = [stretchedTones(a).length, stretchedTones(b).length];
  return one > 0 && other > 0 ? other - one : 0;
}

function heaviestOf(slip: readonly Finding[]): Finding['severity'] {
  return slip.map(({ severity }) => severity).reduce((a, b) => (severityRank(a) <= severityRank(b) ? a : b));
}
