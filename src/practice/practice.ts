/** Short exercises for what went wrong: made by chance from a seed, each proved solvable. Pure. */
import type { Brief } from '../brief/brief.ts';
import { DEFAULT_PROFILE } from '../profiles/list.ts';
import type { Profile } from '../profiles/profile.ts';
import { type Outcome, refuse } from '../refusal/refusal.ts';
import { taskFor } from '../set/set-work.ts';
import type { Aim } from './aims.ts';
import { chance } from './random.ts';
import { ENOUGH_ANSWERS, type Proof, prove, scoreOf } from './search.ts';
import { type PracticeTune, tuneFor } from './tune.ts';

export const MOST_EXERCISES = 6;
export const MOST_SEED = 999_999;

export interface PracticeExercise {
  readonly aim: Aim;
  readonly brief: Brief;
  /** Answers with neither fault nor query that were found, at least {@link ENOUGH_ANSWERS}, of so many tried. */
  readonly proof: Pick<Proof, 'answers' | 'tried'>;
}

export interface PracticeOrder {
  /** Turn by turn, where there are more exercises than aims. */
  readonly aims: readonly Aim[];
  readonly number: number;
  readonly seed: number;
  readonly profile?: Profile;
}

/** Tunes tried before an exercise is given up; far more than any was seen to need. */
const MOST_TUNES = 400;

/** The exercises a seed brings, no two with the same tune. */
export function practise(order: PracticeOrder): Outcome<{ readonly exercises: readonly PracticeExercise[] }> {
  const exercises: PracticeExercise[] = [];
  for (const made of oneByOne(order)) {
    if (!made.ok) return made;
    exercises.push(made.exercise);
  }
  return exercises.length === 0 ? refuse('Nothing is chosen to practise.') : { ok: true, exercises };
}

/** The same one at a time, for a page that has to draw in between. */
export function* oneByOne(order: PracticeOrder): Generator<Outcome<{ readonly exercise: PracticeExercise }>> {
  const { aims, number, seed, profile = DEFAULT_PROFILE } = order;
  const known = new Set<string>();
  for (let i = 0; i < Math.min(number, MOST_EXERCISES); i++) {
    const aim = aims[i % aims.length];
    if (aim === undefined) return;
    const made = exerciseFor(aim, seed * MOST_EXERCISES + i, profile, known);
    if (made === undefined) {
      yield refuse(`No exercise for ${aim.name} came of seed ${seed}. Take another seed.`);
      return;
    }
    known.add(nameOf(made.tune));
    const score = scoreOf(made.tune, [made.proof.opening], `Practice ${seed}.${i + 1}`);
    const task = [taskFor(score)!, ...(aim.task === undefined ? [] : [aim.task])].join('; ');
    const { answers, tried } = made.proof;
    const brief: Brief = { score, task, profile: profile.name, without: [] };
    yield { ok: true, exercise: { aim, brief, proof: { answers, tried } } };
  }
}

function exerciseFor(
  aim: Aim,
  seed: number,
  profile: Profile,
  known: ReadonlySet<string>,
): { readonly tune: PracticeTune; readonly proof: Proof } | undefined {
  const by = chance(seed);
  for (let i = 0; i < MOST_TUNES; i++) {
    const tune = tuneFor(aim, by);
    if (tune === undefined || known.has(nameOf(tune))) continue;
    const proof = prove(tune, aim, profile, by);
    if (proof !== undefined && proof.answers >= ENOUGH_ANSWERS) return { tune, proof };
  }
  return undefined;
}

function nameOf({ notes }: PracticeTune): string {
  return notes.map(({ degree, raised }) => `${degree}${raised}`).join(' ');
}

/** `It can be solved: 20 answers without fault or query among the 34 first tried.` No answer is ever shown. */
export function proofInWords({ answers, tried }: PracticeExercise['proof']): string {
  return `It can be solved: ${answers} answers without fault or query among the first ${tried} tried, where the search stopped.`;
}
