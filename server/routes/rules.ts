/** `GET /api/rules`: every rule with its texts. */
import { Router } from 'express';
import { jsonRules } from '../../src/report/rules.ts';

export function ruleRoutes(): Router {
  const router = Router();
  router.get('/rules', (_request, response) => {
    response.json({ rules: jsonRules() });
  });
  return router;
}
