/**
 * The browser that the page is tested in: Debian's Chromium, or the one that the variable CHROMIUM names.
 * Nothing is downloaded. Where there is none, tests skip and say so:
 *
 *     describe.skipIf(NO_CHROMIUM)('the page', () => {
 *       beforeAll(async () => { browser = await launchChromium(); });
 *       afterAll(() => browser.close());
 */
import { accessSync, constants } from 'node:fs';
import { type Browser, chromium } from 'playwright-core';

const USUAL_PLACES = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'];

/** The browser to run, or undefined where none is installed. */
export function chromiumPath(): string | undefined {
  const named = process.env.CHROMIUM;
  const places = named ? [named] : USUAL_PLACES;
  return places.find(isExecutable);
}

/**
 * Parts of the browser that a test never sees. The suggestions under the address line are pages of their own, made anew
 * for each window: half of the processor time of a short test. The others are those that playwright leaves out itself,
 * since of two such lists the browser heeds the last alone.
 */
const LEFT_OUT = [
  ...['WebUIOmniboxPopup', 'WebUIOmniboxAimPopup', 'WebUIOmniboxFullPopup'],
  ...['AvoidUnnecessaryBeforeUnloadCheckSync', 'DestroyProfileOnBrowserClose', 'HttpsUpgrades'],
  ...['HttpsFirstBalancedModeAutoEnable', 'LensOverlay', 'MediaRouter', 'PaintHolding'],
  ...['ThirdPartyStoragePartitioning', 'AvoidCorsURLLoaderRestartOnRedirect', 'OptimizationHints'],
  ...['NetworkTimeServiceQuerying', 'AimEnabled', 'PreconnectToSearch'],
];

/** True, having said why on stderr, where the browser tests cannot run. */
export const NO_CHROMIUM = chromiumPath() === undefined;
if (NO_CHROMIUM) {
  const where = process.env.CHROMIUM ?? USUAL_PLACES.join(', ');
  console.warn(
    `Browser tests are skipped: no Chromium at ${where}. Install one, or set CHROMIUM to its path.`,
  );
}

/**
 * Starts a browser with a profile of its own, which goes when the browser is closed. It asks nothing of the network
 * by itself, and fonts are drawn alike on every machine as far as flags can bring that about.
 */
export async function launchChromium(): Promise<Browser> {
  const executablePath = chromiumPath();
  if (executablePath === undefined) throw new Error('No Chromium is installed; check NO_CHROMIUM first.');
  return chromium.launch({
    executablePath,
    args: [
      // Containers and CI run as root, where Chromium's sandbox refuses to start.
      '--no-sandbox',
      `--disable-features=${LEFT_OUT.join(',')}`,
      '--disable-dev-shm-usage',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
      '--no-first-run',
      '--no-default-browser-check',
      '--font-render-hinting=none',
      '--autoplay-policy=no-user-gesture-required',
    ],
  });
}

function isExecutable(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
