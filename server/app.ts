/** The service as an Express application. It never listens: `main.ts` does, and tests needn't. */
import express, { type Express } from 'express';
import helmet from 'helmet';
import type { MarkingDesk } from './desk/marking-desk.ts';
import { type ReviewPool, reviewPool } from './desk/pool.ts';
import { PrintPasses } from './desk/print-passes.ts';
import { notFound, problemHandler } from './problem.ts';
import { networkGuard } from './routes/desk/guard.ts';
import { deskRoutes } from './routes/desk/routes.ts';
import { pageRoutes } from './routes/page.ts';
import { reviewRoutes } from './routes/reviews.ts';
import { ruleRoutes } from './routes/rules.ts';
import { onlyByOwnName, refuseOtherSites } from './routes/sites.ts';

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
  /** Other machines can reach it, by names that we can't know. */
  readonly open?: boolean;
  /** Reviews for whoever asks; where there is a desk, its own. */
  readonly workers?: () => ReviewPool;
  /** Where errors that nobody foresaw are written down. */
  readonly log?: (error: unknown) => void;
}

/** 2 MB: some twenty times a long exercise in MusicXML. */
const MOST_BYTES = 2 * 1024 * 1024;

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
  if (!(parts.open ?? parts.passphraseHash !== undefined)) app.use(onlyByOwnName);
  app.use('/api', refuseOtherSites);
  const { desk, passphraseHash } = parts;
  const passes = passphraseHash === undefined ? undefined : new PrintPasses(() => Date.now());
  const guard =
    desk === undefined || passphraseHash === undefined || passes === undefined
      ? undefined
      : networkGuard(desk.desk, passphraseHash, passes);
  // Where a desk has a passphrase, all that costs work is behind it.
  if (guard !== undefined) app.use('/api/reviews', ...guard.gate);
  app.use('/api', reviewRoutes(workersOf(parts), parts.mostBytes ?? MOST_BYTES), ruleRoutes());
  if (desk !== undefined) app.use('/api/desk', deskRoutes(desk, guard, passes));
  app.use('/api', notFound);
  app.use(pageRoutes(parts.page));
  app.use(notFound);
  app.use(problemHandler(parts.log ?? console.error));
  return app;
}

function workersOf({ workers, desk }: Parts): () => ReviewPool {
  if (workers !== undefined) return workers;
  if (desk !== undefined) return desk.workers;
  let own: ReviewPool | undefined;
  return () => {
    own ??= reviewPool();
    return own;
  };
}
