/** The service as an Express application. It never listens: `main.ts` does, and tests needn't. */
import express, { type Express } from 'express';
import helmet from 'helmet';
import type { MarkingDesk } from './desk/marking-desk.ts';
import { notFound, problemHandler } from './problem.ts';
import { deskRoutes } from './routes/desk/routes.ts';
import { pageRoutes } from './routes/page.ts';
import { reviewRoutes } from './routes/reviews.ts';
import { ruleRoutes } from './routes/rules.ts';

/** What the application is made of; each part has its usual value. */
export interface Parts {
  /** The folder with the built page. */
  readonly page?: string;
  /** The largest upload, in bytes. */
  readonly mostBytes?: number;
  /** The marking desk; without it there are no routes to one. */
  readonly desk?: MarkingDesk;
  /** Needed where the desk is open to a network: see `hashPassphrase`. */
  readonly passphraseHash?: string;
  /** Where errors that nobody foresaw are written down. */
  readonly log?: (error: unknown) => void;
}

/** 2 MB: some twenty times a long exercise in MusicXML. */
export const MOST_BYTES = 2 * 1024 * 1024;

export function createApp(parts: Parts = {}): Express {
  const app = express();
  app.disable('x-powered-by');
  app.use(
    helmet({
      contentSecurityPolicy: {
        useDefaults: false,
        directives: {
          'default-src': ["'self'"],
          'script-src': ["'self'"],
          // The audio clock and the review run in workers; the clock's is made from a blob.
          'worker-src': ["'self'", 'blob:'],
          // No style in markup: the engraver sets its sizes through the DOM's own style objects, which this allows.
          'style-src': ["'self'"],
          'img-src': ["'self'", 'data:', 'blob:'],
          'font-src': ["'self'"],
          'connect-src': ["'self'"],
          'object-src': ["'none'"],
          'base-uri': ["'none'"],
          'form-action': ["'self'"],
          'frame-ancestors': ["'none'"],
        },
      },
      // The service speaks plain HTTP on this machine: asking for HTTPS would break it.
      strictTransportSecurity: false,
    }),
  );
  app.use('/api', reviewRoutes({ mostBytes: parts.mostBytes ?? MOST_BYTES }), ruleRoutes());
  if (parts.desk !== undefined) app.use('/api/desk', deskRoutes(parts.desk, parts.passphraseHash));
  app.use('/api', notFound);
  app.use(pageRoutes(parts.page));
  app.use(notFound);
  app.use(problemHandler(parts.log ?? console.error));
  return app;
}
