/** Errors as `application/problem+json` (RFC 9457). */
import type { ErrorRequestHandler, RequestHandler, Response } from 'express';

/** An answer to a request that can't be met: `detail` is for the person and says what to do. */
export class Problem extends Error {
  constructor(
    readonly status: number,
    readonly title: string,
    readonly detail: string,
    /** Further members of the problem document (RFC 9457, 3.2). */
    readonly more: Readonly<Record<string, unknown>> = {},
  ) {
    super(detail);
  }
}

export function sendProblem(response: Response, problem: Problem): void {
  const { status, title, detail, more } = problem;
  response
    .status(status)
    .type('application/problem+json')
    .send(JSON.stringify({ type: 'about:blank', title, status, detail, ...more }));
}

export const notFound: RequestHandler = (request, _response) => {
  throw new Problem(404, 'Not found', `There is nothing at ${request.path}.`);
};

/** Last in line. What we did not foresee is logged here and answered plainly: no message of ours leaks out. */
export function problemHandler(log: (error: unknown) => void): ErrorRequestHandler {
  return (error, _request, response, next) => {
    if (response.headersSent) {
      next(error);
      return;
    }
    sendProblem(response, asProblem(error, log));
  };
}

function asProblem(error: unknown, log: (error: unknown) => void): Problem {
  if (error instanceof Problem) return error;
  const { type, status, limit } = error as { type?: string; status?: number; limit?: number };
  if (type === 'entity.too.large') {
    const most = limit === undefined ? '' : `; at most ${Math.floor(limit / 1024)} kB are taken`;
    return new Problem(
      413,
      'Too large',
      `The upload is too large${most}. A four-part exercise has some 100 kB.`,
    );
  }
  if (type === 'encoding.unsupported') {
    return new Problem(415, 'Unknown encoding', 'Send the file as it is, or packed with gzip or deflate.');
  }
  if (status !== undefined && status >= 400 && status < 500) {
    return new Problem(
      status,
      'Bad request',
      'The request could not be read. Look at its address, headers and body.',
    );
  }
  log(error);
  return new Problem(
    500,
    'Fault of ours',
    'Something went wrong in the service, not in what you sent. Try again.',
  );
}
