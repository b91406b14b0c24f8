/** What comes off the desk. All of it is read through a connection that can't write. */
import { once } from 'node:events';
import { type Response, Router } from 'express';
import { z } from 'zod';
import { Refused } from '../../../src/refusal/refusal.ts';
import { annotatedScript } from '../../desk/annotated.ts';
import type { MarkingDesk } from '../../desk/marking-desk.ts';
import { chromium, printToPdf } from '../../desk/pdf.ts';
import type { PrintPasses } from '../../desk/print-passes.ts';
import {
  classPictureOf,
  everything,
  likenessReport,
  markBook,
  moderationOf,
  sheetOf,
} from '../../desk/reports.ts';
import { parseQuery } from '../query.ts';
import { pageSchema, withId } from './answers.ts';

/** `passes` are needed where the desk asks for a passphrase, which the browser that prints PDFs does not have. */
export function reportRoutes(marking: MarkingDesk, passes: PrintPasses | undefined): Router {
  const { reports: desk } = marking;
  const router = Router();
  const stackOf = (params: unknown) => desk.stack(parseQuery(withId, params).id);

  router.get('/stacks/:id/class', (request, response) => {
    response.json(classPictureOf(desk, stackOf(request.params)));
  });

  router.get('/stacks/:id/moderation', (request, response) => {
    const { criterion, after, most } = parseQuery(
      pageSchema.extend({ criterion: z.string().max(40).optional() }),
      request.query,
    );
    const { ranked, unmarked } = moderationOf(desk, stackOf(request.params), criterion);
    response.json({
      marked: ranked.length,
      after,
      ranked: ranked.slice(after, after + most),
      notMarked: unmarked.length,
      unmarked: unmarked.slice(0, most),
    });
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
      .send(Buffer.from(annotatedScript(desk, desk.stack(script.stack), script)));
  });

  router.get('/stacks/:id/sheets.pdf', async (request, response) => {
    const stack = stackOf(request.params);
    const { after } = parseQuery(pageSchema, request.query);
    const browser = chromium();
    if (browser === undefined) {
      throw new Refused(
        'No Chromium was found on this machine: open the sheets and use your browser’s own print to PDF.',
        { kind: 'unable' },
      );
    }
    const place = `/stack/${stack.id}/sheets/${after}`;
    // The address by which this request came is one at which we answer.
    const host = hostOf(request.socket.localAddress ?? '127.0.0.1');
    const service = `http://${host}:${request.socket.localPort}`;
    // The pass is issued when the browser's turn has come: it is not good for long.
    const pdf = await oneAtATime(() =>
      printToPdf(
        browser,
        passes === undefined
          ? `${service}/desk/#${place}`
          : `${service}/api/desk/print/${passes.issue(place)}`,
      ),
    );
    response
      .attachment(`${fileStem(stack.name)}-sheets.pdf`)
      .type('application/pdf')
      .send(Buffer.from(pdf));
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

/** IPv4 addresses come dressed as IPv6, and IPv6 addresses without their brackets. */
function hostOf(address: string): string {
  const plain = address.replace(/^::ffff:(?=\d+\.)/, '');
  return plain.includes(':') ? `[${plain}]` : plain;
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
