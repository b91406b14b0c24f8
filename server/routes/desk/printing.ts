/** Sheets as PDF: one file for all, or one for each candidate, printed by the browser of this machine. */
import { type Request, type Response, Router } from 'express';
import { Zip, ZipPassThrough } from 'fflate';
import { printSheetOptions, readSheetOptions } from '../../../src/desk/sheet-options.ts';
import { ROUTES } from '../../../src/desk/wire.ts';
import { Refused } from '../../../src/refusal/refusal.ts';
import type { MarkingDesk } from '../../desk/marking-desk.ts';
import { chromium, printToPdf } from '../../desk/pdf.ts';
import type { PrintPasses } from '../../desk/print-passes.ts';
import { latestEntries } from '../../desk/queue.ts';
import type { ScriptEntry } from '../../desk/records.ts';
import { fileStem } from './file-stem.ts';
import { send } from './serve.ts';

/** `passes` are needed where the desk asks for a passphrase, which the browser that prints PDFs does not have. */
export function printingRoutes({ reports: desk }: MarkingDesk, passes: PrintPasses | undefined): Router {
  const router = Router();

  send(router, ROUTES.sheetsPdf, async ({ params: { id }, query, request, response }) => {
    const stack = desk.stack(id);
    const { after, parts, scripts } = query;
    const options = printSheetOptions(readSheetOptions(parts, scripts));
    const pdf = await asPdf(`/stack/${stack.id}/sheets/${after}/${options}`, request, passes);
    response
      .attachment(`${fileStem(stack.name)}-sheets.pdf`)
      .type('application/pdf')
      .send(Buffer.from(pdf));
  });

  send(router, ROUTES.sheetsZip, async ({ params: { id }, query, request, response }) => {
    const stack = desk.stack(id);
    const { after, most, parts, scripts } = query;
    const options = readSheetOptions(parts, scripts);
    const entries =
      options.scripts.length > 0
        ? options.scripts.map((script) => desk.script(script)).filter((script) => script.stack === stack.id)
        : latestEntries(desk, stack.id, most, after);
    refuseWithoutBrowser();
    response.attachment(`${fileStem(stack.name)}-sheets.zip`).type('application/zip');
    await zipped(response, entries, (entry) =>
      asPdf(
        `/stack/${stack.id}/sheets/0/${printSheetOptions({ parts: options.parts, scripts: [entry.id] })}`,
        request,
        passes,
      ),
    );
  });

  return router;
}

/** Sends each candidate's file as it is printed. */
async function zipped(
  response: Response,
  entries: readonly ScriptEntry[],
  print: (entry: ScriptEntry) => Promise<Uint8Array>,
): Promise<void> {
  const zip = new Zip((error, piece) => {
    if (error) response.destroy(error);
    else response.write(piece);
  });
  for (const entry of entries) {
    if (response.destroyed) return;
    // A PDF is packed already.
    const file = new ZipPassThrough(
      `${fileStem(entry.candidate ?? `script-${entry.id}`)}-draft${entry.draft}.pdf`,
    );
    const pdf = await print(entry);
    zip.add(file);
    file.push(pdf, true);
  }
  zip.end();
  response.end();
}

/** @throws {Refused} where this machine can't print */
function refuseWithoutBrowser(): string {
  const browser = chromium();
  if (browser !== undefined) return browser;
  throw new Refused(
    'No Chromium was found on this machine: open the sheets and use your browser’s own print to PDF.',
    { kind: 'unable' },
  );
}

/** The page at a place, printed. */
async function asPdf(place: string, request: Request, passes: PrintPasses | undefined): Promise<Uint8Array> {
  const browser = refuseWithoutBrowser();
  // The address by which this request came is one at which we answer.
  const host = hostOf(request.socket.localAddress ?? '127.0.0.1');
  const service = `http://${host}:${request.socket.localPort}`;
  // The pass is issued when the browser's turn has come: it is not good for long.
  return oneAtATime(() =>
    printToPdf(
      browser,
      passes === undefined ? `${service}/desk/#${place}` : `${service}/api/desk/print/${passes.issue(place)}`,
    ),
  );
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
