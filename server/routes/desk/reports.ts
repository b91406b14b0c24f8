/** What comes off the desk. All of it is read through a connection that can't write. */
import { once } from 'node:events';
import { type Request, type Response, Router } from 'express';
import { ROUTES } from '../../../src/desk/wire.ts';
import { Refused } from '../../../src/refusal/refusal.ts';
import { annotatedScript } from '../../desk/annotated.ts';
import type { MarkingDesk } from '../../desk/marking-desk.ts';
import { differingScripts } from '../../desk/marks-given.ts';
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
import { markerOf } from './marker.ts';
import { answer, send } from './serve.ts';

/** `passes` are needed where the desk asks for a passphrase, which the browser that prints PDFs does not have. */
export function reportRoutes(marking: MarkingDesk, passes: PrintPasses | undefined): Router {
  const { reports: desk } = marking;
  const router = Router();

  answer(router, ROUTES.class, ({ params: { id } }) => classPictureOf(desk, desk.stack(id)));

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

  answer(router, ROUTES.likeness, ({ params: { id } }) => likenessReport(desk, desk.stack(id)));

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

  send(router, ROUTES.sheetsPdf, async ({ params: { id }, query: { after }, request, response }) => {
    const stack = desk.stack(id);
    const pdf = await sheetsAsPdf(`/stack/${stack.id}/sheets/${after}`, request, passes);
    response
      .attachment(`${fileStem(stack.name)}-sheets.pdf`)
      .type('application/pdf')
      .send(pdf);
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

/** The page at a place, printed by the browser of this machine. */
async function sheetsAsPdf(
  place: string,
  request: Request,
  passes: PrintPasses | undefined,
): Promise<Buffer> {
  const browser = chromium();
  if (browser === undefined) {
    throw new Refused(
      'No Chromium was found on this machine: open the sheets and use your browser’s own print to PDF.',
      { kind: 'unable' },
    );
  }
  // The address by which this request came is one at which we answer.
  const host = hostOf(request.socket.localAddress ?? '127.0.0.1');
  const service = `http://${host}:${request.socket.localPort}`;
  // The pass is issued when the browser's turn has come: it is not good for long.
  const pdf = await oneAtATime(() =>
    printToPdf(
      browser,
      passes === undefined ? `${service}/desk/#${place}` : `${service}/api/desk/print/${passes.issue(place)}`,
    ),
  );
  return Buffer.from(pdf);
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
async function flow(response: Response, pieces: Iterable<string>): Promise<void> {
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
