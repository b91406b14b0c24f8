/** The worksheet beside the files that are given out: a PDF where this machine can print one, else how to come by it. */
import { WIDTH, wrap } from '../report/wrap.ts';

export interface PrintedWorksheet {
  /** To be written with the other files; empty where it could not be printed. */
  readonly files: Readonly<Record<string, Uint8Array>>;
  /** What to tell of it. */
  readonly lines: readonly string[];
}

/** @param hash the exercises, packed as in a pupil's link; `page` is where the desk is opened */
export async function printedWorksheet(hash: string, page: string): Promise<PrintedWorksheet> {
  const { worksheetPdf } = await import('../../server/main.ts');
  const printed = await worksheetPdf(hash);
  if (printed.ok)
    return {
      files: { 'worksheet.pdf': printed.pdf },
      lines: wrap('worksheet.pdf is to be printed, on A4, with room to write.', WIDTH),
    };
  return {
    files: {},
    lines: [
      ...wrap(`There is no worksheet.pdf: ${printed.message}. Print the worksheet from the desk:`, WIDTH),
      `${page}desk/#/${hash}`,
    ],
  };
}
