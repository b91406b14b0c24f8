/** What comes off the desk. All of it is read through a connection that can't write. */
import { once } from 'node:events';
import { type Response, Router } from 'express';
import { z } from 'zod';
import { annotatedScript } from '../../desk/annotated.ts';
import type { MarkingDesk } from '../../desk/marking-desk.ts';
import {
  classPictureOf,
  everything,
  likenessReport,
  markBook,
  moderationOf,
  sheetOf,
} from '../../desk/reports.ts';
import { parseQuery } from '../query.ts';
import { withId } from './answers.ts';

export function reportRoutes(marking: MarkingDesk): Router {
  const { reports: desk } = marking;
  const router = Router();
  const stackOf = (params: unknown) => desk.stack(parseQuery(withId, params).id);

  router.get('/stacks/:id/class', (request, response) => {
    response.json(classPictureOf(desk, stackOf(request.params)));
  });

  router.get('/stacks/:id/moderation', (request, response) => {
    const { criterion } = parseQuery(z.object({ criterion: z.string().max(40).optional() }), request.query);
    response.json(moderationOf(desk, stackOf(request.params), criterion));
  });

  router.get('/stacks/:id/likeness', (request, response) => {
    response.json(likenessReport(desk, stackOf(request.params)));
  });

  router.get('/scripts/:id/sheet', (request, response) => {
    const script = desk.script(parseQuery(withId, request.params).id);
    response.json(sheetOf(desk, desk.stack(script.stack), script));
  });

  router.get('/scripts/:id/annotated.musicxml', (request, response) => {
    const script = desk.script(parseQuery(withId, request.params).id);
    response
      .attachment(`${fileStem(script.candidate ?? String(script.id))}-draft${script.draft}.musicxml`)
      .type('application/vnd.recordare.musicxml+xml')
      .send(annotatedScript(desk, desk.stack(script.stack), script));
  });

  router.get('/stacks/:id/mark-book.csv', async (request, response) => {
    const stack = stackOf(request.params);
    response.attachment(`${fileStem(stack.name)}.csv`).type('text/csv; charset=utf-8');
    await send(response, markBook(desk, stack));
  });

  router.get('/stacks/:id/everything.json', async (request, response) => {
    const stack = stackOf(request.params);
    response.attachment(`${fileStem(stack.name)}.json`).type('application/json');
    await send(response, everything(desk, stack));
  });

  return router;
}

/** Sends piece by piece, no faster than they are taken. */
async function send(response: Response, pieces: Iterable<string>): Promise<void> {
  for (const piece of pieces) {
    if (response.destroyed) return;
    if (!response.write(piece)) await Promise.race([once(response, 'drain'), once(response, 'close')]);
  }
  response.end();
}

/** A name that is safe as a file's on any system. */
function fileStem(name: string): string {
  return name.replaceAll(/[^\p{L}\p{N}_-]+/gu, '-').slice(0, 60) || 'stack';
}
