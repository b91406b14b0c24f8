/** What comes off the desk. All of it is read through a connection that can't write. */
import { once } from 'node:events';
import { type Response, Router } from 'express';
import { ROUTES } from '../../../src/desk/wire.ts';
import { annotatedScript } from '../../desk/annotated.ts';
import type { MarkingDesk } from '../../desk/marking-desk.ts';
import { differingScripts } from '../../desk/marks-given.ts';
import { everything, markBook, moderationOf, sheetOf } from '../../desk/reports.ts';
import { fileStem } from './file-stem.ts';
import { markerOf } from './marker.ts';
import { answer, send } from './serve.ts';

export function reportRoutes(marking: MarkingDesk): Router {
  const { reports: desk } = marking;
  const router = Router();

  answer(router, ROUTES.class, ({ params: { id } }) => marking.classPicture(desk.stack(id).id));

  answer(router, ROUTES.moderation, ({ params: { id }, query: { criterion, after, most }, request }) => {
    const { ranked, unmarked } = moderationOf(desk, desk.stack(id), criterion, markerOf(request).by);
    return {
      marked: ranked.length,
      after,
      ranked: ranked.slice(after, after + most),
      notMarked: unmarked.length,
      unmarked: unmarked.slice(0, most),
    };
  });

  answer(router, ROUTES.differences, ({ params: { id }, query: { after, most } }) => {
    const scripts = differingScripts(desk.db, desk.stack(id).id);
    return { total: scripts.length, after, scripts: scripts.slice(after, after + most) };
  });

  answer(router, ROUTES.likeness, async ({ params: { id }, query: { after, most } }) => {
    const { pairs, ...report } = await marking.likeness(desk.stack(id).id);
    return { ...report, total: pairs.length, after, pairs: pairs.slice(after, after + most) };
  });

  answer(router, ROUTES.sheet, ({ params: { id } }) => {
    const script = desk.script(id);
    return sheetOf(desk, desk.stack(script.stack), script);
  });

  send(router, ROUTES.annotated, ({ params: { id }, response }) => {
    const script = desk.script(id);
    response
      .attachment(`${fileStem(script.candidate ?? String(script.id))}-draft${script.draft}.musicxml`)
      .type('application/vnd.recordare.musicxml+xml')
      .send(Buffer.from(annotatedScript(desk, desk.stack(script.stack), script)));
  });

  send(router, ROUTES.markBook, async ({ params: { id }, response }) => {
    const stack = desk.stack(id);
    response.attachment(`${fileStem(stack.name)}.csv`).type('text/csv; charset=utf-8');
    await flow(response, markBook(desk, stack));
  });

  send(router, ROUTES.everything, async ({ params: { id }, response }) => {
    const stack = desk.stack(id);
    response.attachment(`${fileStem(stack.name)}.json`).type('application/json');
    await flow(response, everything(desk, stack));
  });

  return router;
}

/** Sends piece by piece, no faster than they are taken. */
async function flow(response: Response, pieces: Iterable<string>): Promise<void> {
  for (const piece of pieces) {
    if (response.destroyed) return;
    if (!response.write(piece)) await Promise.race([once(response, 'drain'), once(response, 'close')]);
  }
  response.end();
}
