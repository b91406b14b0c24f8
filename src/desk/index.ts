/**
 * The marking desk's thinking: plain functions on plain data, no files, no database, no page.
 *
 * - `candidate.ts`: candidate and draft number from a file's name or title; the pattern is settable.
 * - `facts.ts`, `finding.ts`: `factsOf(review, strengths, given)`: what is kept of a reviewed script, as JSON.
 * - `given.ts`: `compareWithGiven(given, script)`: each departure from the given notes, bar by bar.
 * - `drafts.ts`: `compareDrafts(before, after)`: mended, still there, new; which decisions may be carried over.
 * - `decisions.ts`: the teacher's decisions as data; `applyDecisions(script, findings, decisions)`.
 * - `remarks.ts`: the bank of remarks.
 * - `scheme.ts`, `suggest.ts`, `marks.ts`: the mark scheme, what the evidence suggests, the marks that are given.
 * - `feedback.ts`: two strengths and three things to work on.
 * - `classPicture.ts`: what a class has in common, script by script (an accumulator).
 * - `likeness.ts`: scripts that share more than the tune explains.
 * - `csv.ts`, `export.ts`: the mark book and everything as JSON.
 */
export {
  applyDecisions,
  DECISION_LIMITS,
  type Decision,
  type DecisionKind,
  decisionSchema,
  decisionsInForce,
  type Judged,
  type JudgedFinding,
  type Standing,
  standingFindings,
  type TeacherRemark,
} from './decisions.ts';
export { excerptOf, excerptText } from './excerpt.ts';
export { factsOf, factsSchema, type ScriptFacts } from './facts.ts';
export { type ScriptFinding, scriptFindingSchema, scriptFindings } from './finding.ts';
