/** A page printed to PDF by the Chromium that is installed, if one is. */
import { execFile } from 'node:child_process';
import { accessSync, constants } from 'node:fs';
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import { promisify } from 'node:util';

const run = promisify(execFile);

const NAMES = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable'];
const ELSEWHERE = [
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
];
/** Thirty sheets take some ten seconds. */
const MOST_MILLISECONDS = 180_000;

/** The browser's path; undefined where none is installed. The variable CHROMIUM names one that lies elsewhere. */
export function chromium(): string | undefined {
  const named = process.env.CHROMIUM;
  const folders = (process.env.PATH ?? '').split(delimiter).filter((folder) => folder !== '');
  const places = named
    ? [named]
    : [...folders.flatMap((folder) => NAMES.map((name) => join(folder, name))), ...ELSEWHERE];
  return places.find((place) => {
    try {
      accessSync(place, constants.X_OK);
      return true;
    } catch {
      return false;
    }
  });
}

/** Loads the address with a profile of its own, waits until the page is at rest, and prints it. */
export async function printToPdf(browser: string, address: string): Promise<Uint8Array> {
  const folder = await mkdtemp(join(tmpdir(), 'partwise-pdf-'));
  try {
    const out = join(folder, 'out.pdf');
    await run(
      browser,
      [
        '--headless',
        `--user-data-dir=${join(folder, 'profile')}`,
        `--print-to-pdf=${out}`,
        '--no-pdf-header-footer',
        // The page's clock runs ahead only while nothing is being fetched: this is how long it may take to draw.
        '--virtual-time-budget=60000',
        '--disable-background-networking',
        '--no-first-run',
        '--disable-dev-shm-usage',
        // Chromium's sandbox refuses to start for the superuser, as in a container.
        ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
        address,
      ],
      { timeout: MOST_MILLISECONDS, maxBuffer: 10 * 1024 * 1024 },
    );
    return await readFile(out);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}
