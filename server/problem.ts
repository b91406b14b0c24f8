/** Refusals as `application/problem+json` (RFC 9457). */
import type { ErrorRequestHandler, RequestHandler, Response } from 'express';
import * as z from 'zod';
import { type RefusalKind, Refused, refusalOf } from '../src/refusal/refusal.ts';

/** The status and title of each kind of refusal. */
const ANSWERS: Readonly<Record<RefusalKind, readonly [status: number, title: string]>> = {
  unclear: [400, 'Bad request'],
  'signed out': [401, 'Passphrase needed'],
  forbidden: [403, 'Not from here'],
  missing: [404, 'Not found'],
  outdated: [409, 'Changed meanwhile'],
  'too large': [413, 'Too large'],
  'unknown kind': [415, 'Unknown kind of file'],
  unreadable: [422, 'Not a four-part exercise that can be read'],
  unusable: [422, 'Not to be used'],
  'too many': [429, 'Too many requests'],
  fault: [500, 'Fault of ours'],
  unable: [501, 'Not possible on this machine'],
  unready: [503, 'Not ready yet'],
  'no answer': [504, 'No answer'],
};

/** `detail` is for the person and says what to do; `kind`, lines and problems are for programs. */
export function sendRefusal(response: Response, refused: Refused): void {
  const { kind, more } = refused;
  const [status, title] = ANSWERS[kind];
  const { message: detail, ...places } = refusalOf(refused);
  response
    .status(status)
    .type('application/problem+json')
    .send(JSON.stringify({ type: 'about:blank', title, status, detail, kind, ...places, ...more }));
}

export const notFound: RequestHandler = (request, _response) => {
  throw new Refused(`There is nothing at ${request.path}.`, { kind: 'missing' });
};

/** Last in line. What we did not foresee is logged here and answered plainly: no message of ours leaks out. */
export function problemHandler(log: (error: unknown) => void): ErrorRequestHandler {
  return (error, _request, response, next) => {
    if (response.headersSent) {
      next(error);
      return;
    }
    sendRefusal(response, asRefused(error, log));
  };
}

function asRefused(error: unknown, log: (error: unknown) => void): Refused {
  if (error instanceof Refused) return error;
  if (error instanceof z.ZodError) return unclear(error);
  const { type, status, limit } = error as { type?: string; status?: number; limit?: number };
  if (type === 'entity.too.large') {
    const most = limit === undefined ? '' : `; at most ${Math.floor(limit / 1024)} kB are taken`;
    return new Refused(`The upload is too large${most}. A four-part exercise has some 100 kB.`, {
      kind: 'too large',
    });
  }
  if (type === 'encoding.unsupported') {
    return new Refused('Send the file as it is, or packed with gzip or deflate.', { kind: 'unknown kind' });
  }
  if (status !== undefined && status >= 400 && status < 500) {
    return new Refused('The request could not be read. Look at its address, headers and body.', {
      kind: 'unclear',
    });
  }
  log(error);
  return new Refused('Something went wrong in the service, not in what you sent. Try again.', {
    kind: 'fault',
  });
}

/** What does not fit in a request, part by part. */
export function unclear({ issues }: z.ZodError): Refused {
  const problems = issues.map(({ path, message }) => ({
    message: path.length === 0 ? message : `${path.join('.')}: ${message}`,
  }));
  return new Refused(problems.map(({ message }) => message).join('; '), { kind: 'unclear', problems });
}
