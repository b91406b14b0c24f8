/**
 * The marking desk's thinking: plain functions on plain data, no files, no database, no page.
 *
 * - `candidate.ts`: candidate and draft number from a file's name or title; the pattern is settable.
 * - `identities.ts`: the same for a whole stack, and what lies on it before marking.
 * - `facts.ts`, `finding.ts`: what is kept of a reviewed script, as JSON; `counts.ts`, `board.ts` and `print.ts` are parts.
 * - `given.ts`: each departure from the given notes, bar by bar, transposition and moved bars recognised.
 * - `decisions.ts`: the teacher's decisions as data, and the findings as they stand under them; `context.ts` says which
 *   findings are the same thing to a musician.
 * - `groups.ts`: findings by slip, to be agreed to together.
 * - `figures.ts`: the little that lists and the class picture need of them.
 * - `drafts.ts`: mended, still there, new, matched by the music. `carried.ts`: which decisions
 *   bear on the next draft.
 * - `scheme.ts`, `measures.ts`, `suggest.ts`, `marks.ts`: the mark scheme, the figures it rests on, the level that they
 *   speak for, and the marks that a teacher gives. `example-scheme.ts` is one to begin with.
 * - `feedback.ts`: two strengths and three things to work on. `remarks.ts`: the bank of remarks.
 * - `class-picture.ts`: what a class has in common, gathered script by script.
 * - `likeness.ts`, `like-pairs.ts`: scripts that share more than the tune explains.
 * - `csv.ts`, `export.ts`: the mark book, and everything as JSON.
 */
export type { BoardBar, GoodBar } from './board.ts';
export {
  type CandidatePattern,
  type CandidateReading,
  candidateOf,
  candidatePatternSchema,
  readCandidatePattern,
} from './candidate.ts';
export {
  type CarriedDecision,
  type CarriedStanding,
  carriedDecisions,
  carriedStanding,
  madeAgain,
} from './carried.ts';
export {
  type ClassPicture,
  type ClassTally,
  classPicture,
  joined,
  NO_SCRIPTS,
  withScript,
} from './class-picture.ts';
export { BYTE_ORDER_MARK, type Cell, csvLine } from './csv.ts';
export {
  applyDecisions,
  type Decision,
  type DecisionKind,
  decisionSchema,
  type Judged,
  type JudgedFinding,
  type Standing,
  type TeacherRemark,
} from './decisions.ts';
export { compareDrafts, type DraftComparison } from './drafts.ts';
export { EXAMPLE_SCHEME } from './example-scheme.ts';

export {
  type DeskExport,
  type ExportedScript,
  exportPieces,
  markBookHead,
  markBookRow,
} from './export.ts';
export { factsOf, factsSchema, type ScriptFacts } from './facts.ts';
export { type Feedback, feedbackFor, type ToWorkOn } from './feedback.ts';
export { type FigureFinding, figuresOf, type ScriptFigures } from './figures.ts';
export type { ScriptFinding } from './finding.ts';
export { type LikenessPrint, likenessPrint } from './fingerprint.ts';
export { compareWithGiven, type Departure, type GivenComparison } from './given.ts';
export { type FindingGroup, groupsOf, groupWith, numbersOf } from './groups.ts';
export {
  type Intake,
  identify,
  intakeDoubts,
  intakeSentence,
  isNoScript,
  type NamedFile,
} from './identities.ts';
export {
  type Likenesses,
  type LikePair,
  likePairs,
  likeReference,
  type StackScript,
} from './like-pairs.ts';
export {
  type Difference,
  differencesIn,
  giveMark,
  type Mark,
  type Moderation,
  markSchema,
  marksInView,
  moderationOrder,
  SECOND_MARKINGS,
  type SecondMarking,
  settledMarks,
  standingMarks,
  type Total,
  total,
} from './marks.ts';
export type { Ground, Measure } from './measures.ts';
export { type BankedRemark, bankedRemarkSchema, rankRemarks, rememberRemark } from './remarks.ts';
export { outOf, readScheme, type Scheme, schemeSchema } from './scheme.ts';
export { type Suggestion, suggestLevel } from './suggest.ts';
