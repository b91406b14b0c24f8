/** `/api/desk`: the marking desk over HTTP. */
import { Router } from 'express';
import type { MarkingDesk } from '../../desk/marking-desk.ts';
import { PrintPasses } from '../../desk/print-passes.ts';
import { loopbackGuard, networkGuard, openSession } from './guard.ts';
import { reportRoutes } from './reports.ts';
import { scriptRoutes } from './scripts.ts';
import { stackRoutes } from './stacks.ts';

/** `passphraseHash` is given for a desk that is open to a network. */
export function deskRoutes(desk: MarkingDesk, passphraseHash?: string): Router {
  const router = Router();
  // What a desk says changes with every decision, and is nobody else's business.
  router.use((_request, response, next) => {
    response.setHeader('Cache-Control', 'no-store');
    next();
  });
  const passes = passphraseHash === undefined ? undefined : new PrintPasses(() => desk.desk.now().getTime());
  if (passphraseHash === undefined || passes === undefined) router.use(loopbackGuard(), openSession());
  else router.use(networkGuard(desk.desk, passphraseHash, passes));
  router.use(stackRoutes(desk), scriptRoutes(desk), reportRoutes(desk, passes));
  return router;
}
