/** All exercises with their versions as one file, and back. */
import * as z from 'zod';
import type { Keeping, KeptExercise } from '../state/keeping.ts';
import type { Version } from '../state/page.ts';
import { titleOf, workFromText } from '../state/work.ts';

const voice = z.enum(['S', 'A', 'T', 'B']);
const keptVersion = z.object({ when: z.number(), label: z.string().max(200), text: z.string().max(500_000) });
const keptExercise = z.object({
  id: z.string().min(1).max(100),
  changed: z.number(),
  text: z.string().max(500_000),
  locked: z.array(voice),
  notes: z.record(z.string(), z.string().max(2_000)),
  brief: z.string().max(500_000),
  otherSeconds: z.number().min(0).max(7_200),
  begunFromBrief: z.boolean().exactOptional(),
  versions: z.array(keptVersion).max(10_000),
});
const everything = z.object({
  partwise: z.literal('exercises'),
  exercises: z.array(keptExercise).max(5_000),
});

export async function packEverything(keeping: Keeping): Promise<string> {
  const entries = await keeping.shelf();
  const exercises = await Promise.all(
    entries.map(async ({ id }) => {
      const exercise = await keeping.exercise(id);
      const versions = await keeping.versions(id);
      return exercise === undefined ? [] : [packed(exercise, versions)];
    }),
  );
  return JSON.stringify({ partwise: 'exercises', exercises: exercises.flat() }, null, 1);
}

function packed(exercise: KeptExercise, versions: readonly Version[]): z.infer<typeof keptExercise> {
  const { id, changed, text, locked, notes, brief, otherSeconds, begunFromBrief } = exercise;
  return {
    id,
    changed,
    text,
    locked: [...locked],
    notes,
    brief,
    otherSeconds,
    ...(begunFromBrief && { begunFromBrief }),
    versions: versions.map(({ when, label, text: old }) => ({ when, label, text: old })),
  };
}

/**
 * Puts the exercises of such a file on the shelf. One that is there already is kept as it is where it is newer; the
 * file's then becomes one of its versions. Answers how many came, or undefined where the text is no such file.
 */
export async function unpackEverything(text: string, keeping: Keeping): Promise<number | undefined> {
  const parsed = everything.safeParse(asJson(text));
  if (!parsed.success) return undefined;
  for (const { versions, ...exercise } of parsed.data.exercises) {
    const { score } = workFromText(exercise.text);
    const here = await keeping.exercise(exercise.id);
    const older = here !== undefined && here.changed >= exercise.changed;
    if (!older) await keeping.putExercise({ ...exercise, title: titleOf(score), score });
    const all = older
      ? [...versions, { when: exercise.changed, label: 'from a file', text: exercise.text }]
      : versions;
    for (const version of all)
      await keeping.putVersion({
        ...version,
        key: `${exercise.id}@${version.when}`,
        exercise: exercise.id,
        score: workFromText(version.text).score,
      });
  }
  return parsed.data.exercises.length;
}

function asJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

/** True where a file is worth trying as such a file. */
export function looksLikeEverything(text: string): boolean {
  return /^\s*\{\s*"partwise"/.test(text);
}
