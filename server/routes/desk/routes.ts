/** `/api/desk`: the marking desk over HTTP. */
import { Router } from 'express';
import type { MarkingDesk } from '../../desk/marking-desk.ts';
import type { PrintPasses } from '../../desk/print-passes.ts';
import { type Guard, openSession } from './guard.ts';
import { printingRoutes } from './printing.ts';
import { reportRoutes } from './reports.ts';
import { scriptRoutes } from './scripts.ts';
import { stackRoutes } from './stacks.ts';

const DESK_MILLISECONDS = 10 * 60_000;

/** `guard` and `passes` are given for a desk that is open to a network. */
export function deskRoutes(desk: MarkingDesk, guard?: Guard, passes?: PrintPasses): Router {
  const router = Router();
  // What a desk says changes with every decision, and is nobody else's business.
  router.use((_request, response, next) => {
    response.setHeader('Cache-Control', 'no-store');
    next();
  });
  if (guard === undefined) router.use(openSession());
  else router.use(guard.door);
  // Reviewing a stack again, or printing it, may take minutes in which nothing goes over the line.
  router.use((request, _response, next) => {
    request.setTimeout(DESK_MILLISECONDS);
    next();
  });
  router.use(stackRoutes(desk), scriptRoutes(desk), reportRoutes(desk), printingRoutes(desk, passes));
  return router;
}
