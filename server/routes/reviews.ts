/** `POST /api/reviews`: an exercise in, its review and the score to draw out. */
import express, { type Request, type RequestHandler, type Response, Router } from 'express';
import * as z from 'zod';
import type { FileKind } from '../../src/open/open.ts';
import { Refused } from '../../src/refusal/refusal.ts';
import { Busy, Overdue, type ReviewPool } from '../desk/pool.ts';
import { parseQuery, profileName } from './query.ts';

/** The media types an exercise of each kind may come in. */
const MEDIA_TYPES: Readonly<Record<FileKind, readonly string[]>> = {
  text: ['text/plain'],
  musicxml: ['application/vnd.recordare.musicxml+xml', 'application/xml', 'text/xml'],
  mxl: ['application/vnd.recordare.musicxml', 'application/zip'],
  abc: ['text/vnd.abc'],
};
const ACCEPTED = Object.values(MEDIA_TYPES).flat();

const querySchema = z.strictObject({
  /** What the person calls the file; given back in the review. */
  file: z.string().min(1).max(300).default('exercise'),
  profile: profileName,
});

/** Requests being read, waiting or worked on at once. More are told to come again before anything of them is read. */
const MOST_AT_ONCE = 64;
/** Bytes of answers that nobody has taken yet, all together. */
const MOST_UNREAD = 64 * 1024 * 1024;

export function reviewRoutes(workers: () => ReviewPool, mostBytes: number): Router {
  const router = Router();
  const flow = new Flow();
  router.post(
    '/reviews',
    refuseOtherTypes,
    flow.admit,
    express.raw({ type: ACCEPTED, limit: mostBytes }),
    async (request, response) => {
      const { file, profile } = parseQuery(querySchema, request.query);
      const kind = mediaKind(request);
      const result = await workers()
        .exercise({
          file,
          content: bodyOf(request),
          profile: profile.name,
          ...(kind === undefined ? {} : { kind }),
        })
        .catch((error: unknown) => {
          if (error instanceof Busy) throw busy(response);
          if (error instanceof Overdue) throw new Refused(error.message, { kind: 'unusable' });
          throw error;
        });
      if (!result.ok) throw new Refused(result.refusal.message, { ...result.refusal, kind: 'unreadable' });
      flow.send(response, result.answer);
    },
  );
  return router;
}

/** Keeps what is held in memory for all requests together within bounds. */
class Flow {
  private atOnce = 0;
  private unread = 0;

  readonly admit: RequestHandler = (_request, response, next) => {
    if (this.atOnce >= MOST_AT_ONCE || this.unread > MOST_UNREAD) throw busy(response);
    this.atOnce++;
    let held = true;
    const release = (): void => {
      if (held) this.atOnce--;
      held = false;
    };
    // Answered, whether the answer has been taken or not; or gone before.
    response.once('prefinish', release);
    response.once('close', release);
    next();
  };

  send(response: Response, answer: Uint8Array): void {
    this.unread += answer.length;
    response.once('close', () => {
      this.unread -= answer.length;
    });
    response.type('application/json').setHeader('Content-Length', answer.length).end(answer);
  }
}

function busy(response: Response): Refused {
  response.setHeader('Retry-After', '2');
  return new Refused('The service has more to review than it can begin now. Try again in a few seconds.', {
    kind: 'unready',
  });
}

function mediaKind(request: Request): FileKind | undefined {
  const type = request.headers['content-type']?.split(';')[0]?.trim().toLowerCase();
  const kinds = Object.keys(MEDIA_TYPES) as FileKind[];
  return type === undefined ? undefined : kinds.find((kind) => MEDIA_TYPES[kind].includes(type));
}

function refuseOtherTypes(request: Request, _response: unknown, next: () => void): void {
  if (mediaKind(request) === undefined) {
    throw new Refused(
      `Send an exercise as text/plain (our notation), application/vnd.recordare.musicxml+xml or application/vnd.recordare.musicxml; this was ${request.headers['content-type'] ?? 'sent without a content type'}.`,
      { kind: 'unknown kind', more: { accepted: ACCEPTED } },
    );
  }
  next();
}

function bodyOf(request: Request): Uint8Array {
  const body: unknown = request.body;
  return body instanceof Uint8Array ? body : new Uint8Array();
}
