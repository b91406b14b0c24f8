/**
 * Which scripts of a stack share more of their added voices than the tune explains: the worker pool runs it, with the
 * desk's file open for reading alone, so that the service goes on answering.
 */
import {
  type Likenesses,
  type LikePair,
  likenessPrint,
  likePairs,
  likeReference,
  type StackScript,
} from '../../src/desk/index.ts';
import { openScore } from '../../src/open/open.ts';
import { latestPrints } from './kept.ts';
import { openForReading } from './open.ts';

export interface LikenessTask {
  /** The desk's file. */
  readonly path: string;
  readonly stack: number;
}

/** Whose script a likeness speaks of. */
export interface LikeScript {
  readonly script: number;
  readonly candidate?: string;
  readonly file: string;
}

export interface LikenessReport extends Omit<Likenesses<LikeScript>, 'pairs'> {
  readonly pairs: readonly LikePair<LikeScript>[];
  /** Scripts that are like the reference the teacher supplied. */
  readonly reference?: readonly LikePair<LikeScript, LikeScript | 'reference'>[];
}

/** Compares candidates' latest drafts. @throws {Refused} */
export default async function likenessReport({ path, stack }: LikenessTask): Promise<LikenessReport> {
  const db = await openForReading(path);
  try {
    const scripts = latestPrints(db, stack).map(
      ({ id, candidate, file, print }): StackScript<LikeScript> => ({
        id: { script: id, ...(candidate === undefined ? {} : { candidate }), file },
        ...(candidate === undefined ? {} : { candidate }),
        print,
      }),
    );
    const found = likePairs(scripts);
    const text = db.prepare('SELECT reference FROM stacks WHERE id = ?').pluck().get(stack);
    const reference = typeof text === 'string' ? openScore(new TextEncoder().encode(text)) : undefined;
    return reference?.ok
      ? { ...found, reference: likeReference(scripts, likenessPrint(reference.score)) }
      : found;
  } finally {
    db.close();
  }
}
