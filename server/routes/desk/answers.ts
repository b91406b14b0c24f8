/** What the desk's routes share: parts of addresses and bodies, and the desk's errors as problems. */
import express, { type ErrorRequestHandler } from 'express';
import { z } from 'zod';
import { DeskRefused } from '../../desk/open.ts';
import { Missing, Outdated } from '../../desk/records.ts';
import { Problem } from '../../problem.ts';

export const id = z.coerce.number().int().positive();
/** The revision that the person had before them: decisions on anything older are refused. */
export const revision = z.number().int().min(0);
/** Which part of a long list. */
export const pageSchema = z.object({
  after: z.coerce.number().int().min(0).default(0),
  most: z.coerce.number().int().min(1).max(500).default(200),
});
export const withId = z.object({ id });

export const json = express.json({ limit: '1mb', strict: true });

/** The desk's own errors as problem documents; all others go on. */
export const deskProblems: ErrorRequestHandler = (error, _request, _response, next) => {
  if (error instanceof Outdated) {
    next(
      new Problem(
        409,
        'Changed meanwhile',
        'This was changed in another window since you last saw it. Nothing was stored: look at it again, then decide.',
        { revision: error.revision },
      ),
    );
  } else if (error instanceof Missing) next(new Problem(404, 'Not found', error.message));
  else if (error instanceof DeskRefused) {
    next(new Problem(422, 'Not to be used', error.message, { errors: error.message.split('\n') }));
  } else if (error instanceof z.ZodError) {
    const errors = error.issues.map(({ path, message }) => ({ at: path.join('.'), message }));
    next(new Problem(400, 'Bad request', errors.map(({ message }) => message).join('; '), { errors }));
  } else next(error);
};
