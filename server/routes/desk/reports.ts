/** What comes off the desk. All of it is read through a connection that can't write. */
import { once } from 'node:events';
import { type Response, Router } from 'express';
import { z } from 'zod';
import { annotatedScript } from '../../desk/annotated.ts';
import type { MarkingDesk } from '../../desk/marking-desk.ts';
import { chromium, printToPdf } from '../../desk/pdf.ts';
import {
  classPictureOf,
  everything,
  likenessReport,
  markBook,
  moderationOf,
  sheetOf,
} from '../../desk/reports.ts';
import { Problem } from '../../problem.ts';
import { parseQuery } from '../query.ts';
import { withId } from './answers.ts';

/** `secured`: a passphrase is asked for, which the browser that prints PDFs does not have. */
export function reportRoutes(marking: MarkingDesk, secured: boolean): Router {
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

  router.get('/stacks/:id/sheets.pdf', async (request, response) => {
    const stack = stackOf(request.params);
    const browser = secured ? undefined : chromium();
    if (browser === undefined) {
      throw new Problem(
        501,
        'No PDF from here',
        secured
          ? 'The desk makes PDFs only where it is not open to a network: open the sheets and use your browser’s own print to PDF.'
          : 'No Chromium was found on this machine: open the sheets and use your browser’s own print to PDF.',
      );
    }
    const address = `http://127.0.0.1:${request.socket.localPort}/desk/#/stack/${stack.id}/sheets`;
    response
      .attachment(`${fileStem(stack.name)}-sheets.pdf`)
      .type('application/pdf')
      .send(Buffer.from(await oneAtATime(() => printToPdf(browser, address))));
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

let printing: Promise<unknown> = Promise.resolve();

/** A browser takes half a gigabyte: one is enough. */
function oneAtATime<T>(run: () => Promise<T>): Promise<T> {
  const mine = printing.then(run, run);
  printing = mine.catch(() => {});
  return mine;
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
