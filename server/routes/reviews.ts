/** `POST /api/reviews`: an exercise in, its review and the score to draw out. */
import express, { type Request, Router } from 'express';
import { z } from 'zod';
import { type FileKind, openScore } from '../../src/open/open.ts';
import { Refused } from '../../src/refusal/refusal.ts';
import { jsonReview } from '../../src/report/json.ts';
import { reviewScore } from '../../src/review/review.ts';
import { parseQuery, profileName } from './query.ts';

/** The media types an exercise may come in, and what our reader makes of each. */
const MEDIA_TYPES: Readonly<Record<string, FileKind>> = {
  'text/plain': 'text',
  'application/vnd.recordare.musicxml+xml': 'musicxml',
  'application/xml': 'musicxml',
  'text/xml': 'musicxml',
  'application/vnd.recordare.musicxml': 'mxl',
  'application/zip': 'mxl',
};

const querySchema = z.strictObject({
  /** What the person calls the file; given back in the review. */
  file: z.string().min(1).max(300).default('exercise'),
  profile: profileName,
});

export function reviewRoutes({ mostBytes }: { readonly mostBytes: number }): Router {
  const router = Router();
  router.post(
    '/reviews',
    refuseOtherTypes,
    express.raw({ type: Object.keys(MEDIA_TYPES), limit: mostBytes }),
    (request, response) => {
      const { file, profile } = parseQuery(querySchema, request.query);
      const opened = openScore(bodyOf(request), mediaKind(request));
      if (!opened.ok) throw new Refused(opened.message, { ...opened, kind: 'unreadable' });
      const review = reviewScore(opened.score, profile);
      response.json({ review: jsonReview(file, review), score: opened.score });
    },
  );
  return router;
}

function mediaKind(request: Request): FileKind | undefined {
  const type = request.headers['content-type']?.split(';')[0]?.trim().toLowerCase();
  return type !== undefined && Object.hasOwn(MEDIA_TYPES, type) ? MEDIA_TYPES[type] : undefined;
}

function refuseOtherTypes(request: Request, _response: unknown, next: () => void): void {
  if (mediaKind(request) === undefined) {
    throw new Refused(
      `Send an exercise as text/plain (our notation), application/vnd.recordare.musicxml+xml or application/vnd.recordare.musicxml; this was ${request.headers['content-type'] ?? 'sent without a content type'}.`,
      { kind: 'unknown kind', more: { accepted: Object.keys(MEDIA_TYPES) } },
    );
  }
  next();
}

function bodyOf(request: Request): Uint8Array {
  const body: unknown = request.body;
  return body instanceof Uint8Array ? body : new Uint8Array();
}
