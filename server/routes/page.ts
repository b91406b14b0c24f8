/** The built page. */
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { Router } from 'express';
import sendStatic from 'express-static-gzip';
import { Refused } from '../../src/refusal/refusal.ts';

/** Serves the folder the page was built into; where it is missing, says how to build it. */
export function pageRoutes(folder: string | undefined): Router {
  const router = Router();
  if (folder === undefined) return router;
  router.use(
    // Sends the file that the build compressed, in a way that the browser takes, with `Vary` and a tag of its own.
    sendStatic(folder, {
      enableBrotli: true,
      orderPreference: ['br', 'gz'],
      serveStatic: {
        setHeaders: (response, path) => {
          // Built files carry a hash of their content in their names; pages and the service worker do not.
          const lasting = /[/\\]assets[/\\]/.test(path);
          response.setHeader('Cache-Control', lasting ? 'public, max-age=31536000, immutable' : 'no-cache');
        },
      },
    }),
  );
  router.get(['/', '/desk'], (_request, _response, next) => {
    if (existsSync(join(folder, 'index.html'))) {
      next();
      return;
    }
    throw new Refused(
      'The page is not built yet. Build it with `npm run build`, then load this address again. Or run `npm start`, which does both.',
      { kind: 'unready' },
    );
  });
  return router;
}
