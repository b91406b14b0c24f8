/** Where one goes from where one is: pure functions of the desk's state. */
import { groupWith } from '../../src/desk/index.ts';
import type { Judged, ScriptView } from '../../src/desk/wire-shapes.ts';
import { type DeskState, type Made, type Place, SHOWN_AT_ONCE } from './state.ts';

/** Nobody has decided about it, and it is more than a remark. */
function isOpen({ standing, severity }: Judged): boolean {
  return standing === 'open' && severity !== 'remark';
}

export function firstOpen({ findings }: ScriptView): Judged | undefined {
  return findings.find(isOpen) ?? findings[0];
}

/** What was chosen, where it is still there. */
export function chosenStill(
  { findings, remarks }: ScriptView,
  chosen: string | undefined,
): string | undefined {
  return [...findings, ...remarks].some(({ id }) => id === chosen) ? chosen : undefined;
}

export function chosenFinding({ script, chosen }: DeskState): Judged | undefined {
  return script?.findings.find(({ id }) => id === chosen);
}

/** Id of the finding so many places further on; the first where none is chosen, none where there are none. */
export function stepped({ script, chosen }: DeskState, by: number): string | undefined {
  const findings = script?.findings ?? [];
  const at = findings.findIndex(({ id }) => id === chosen);
  const next = at < 0 ? 0 : Math.min(findings.length - 1, Math.max(0, at + by));
  return findings[next]?.id;
}

/** The open findings of the group that the chosen one is in, itself first; what only informs is left out. */
export function openWithChosen(state: DeskState): {
  readonly group: string;
  readonly open: readonly Judged[];
} {
  const chosen = chosenFinding(state);
  const group = chosen === undefined ? undefined : groupWith(state.script?.findings ?? [], chosen.id);
  const others = (group?.findings ?? []).filter((finding) => finding.id !== chosen?.id && isOpen(finding));
  return {
    group: group?.name ?? '',
    open: chosen === undefined ? [] : [...(chosen.standing === 'open' ? [chosen] : []), ...others],
  };
}

/** The criterion so many places after one; none after the last. */
export function criterionBeside({ stack }: DeskState, id: string, by: number): string | undefined {
  const criteria = stack?.scheme.criteria ?? [];
  const at = criteria.findIndex((criterion) => criterion.id === id);
  return at < 0 ? undefined : criteria[at + by]?.id;
}

/** Where marking goes on: the first criterion this marker has not marked yet, else the first. */
export function criterionToMark({ stack, script, initials }: DeskState): string | undefined {
  const criteria = stack?.scheme.criteria ?? [];
  const unmarked = criteria.find(({ id }) => ownMark(stack, script, initials, id) === undefined);
  return (unmarked ?? criteria[0])?.id;
}

/** This marker's own mark at a criterion; with one marker, the one that stands. */
export function ownMark(
  stack: DeskState['stack'],
  script: DeskState['script'],
  initials: string,
  criterion: string,
): number | undefined {
  const marks = stack?.second === undefined ? script?.marks : script?.marksGiven;
  return marks?.find(
    (mark) =>
      mark.criterion === criterion && (stack?.second === undefined || (!mark.agreed && mark.by === initials)),
  )?.marks;
}

/** After a decision: id of the next finding nobody has decided about. Whoever has gone on by hand is not moved. */
export function nextOpen({ script, notice, writing, chosen }: DeskState, after: Judged): string | undefined {
  if (script === undefined || notice?.wrong || writing !== undefined || chosen !== after.id) return undefined;
  const at = script.findings.findIndex(({ id }) => id === after.id);
  return (script.findings.slice(at + 1).find(isOpen) ?? script.findings.find(isOpen))?.id;
}

/** The script before or after this one in the queue; after the last one the queue itself. */
export function placeBeside(
  { script, stack }: DeskState,
  which: 'before' | 'next' | 'queue',
): Place | undefined {
  const to = which === 'queue' ? undefined : script?.place[which];
  if (to !== undefined) return { view: 'script', script: to };
  if (stack === undefined) return undefined;
  const at = Math.max(0, (script?.place.at ?? 1) - 1);
  return { view: 'queue', stack: stack.id, after: at - (at % SHOWN_AT_ONCE.queue) };
}

/** The most decisions that are remembered to be taken back. */
const MOST_MADE = 200;

export function withMade(made: readonly Made[], one: Made): readonly Made[] {
  return [...made, one].slice(-MOST_MADE);
}

/** What <kbd>U</kbd> takes back: the last decision made here about this script or the whole class. */
export function lastMade({ made, script }: DeskState): Made | undefined {
  return made.findLast((one) => one.forAll || one.script === script?.script.id);
}
