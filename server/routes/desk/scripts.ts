/** One script: looked at, decided about, marked. */
import { Router } from 'express';
import { z } from 'zod';
import { decisionSchema, giveMark, madeAgain, rankRemarks } from '../../../src/desk/index.ts';
import { Refused } from '../../../src/refusal/refusal.ts';
import { carriedInto, carryOver } from '../../desk/carrying.ts';
import type { MarkingDesk } from '../../desk/marking-desk.ts';
import { placeInQueue } from '../../desk/queue.ts';
import { missing, type Proposed } from '../../desk/records.ts';
import { scoreOf, sinceDraftBefore, standingOf, suggestionsFor } from '../../desk/reports.ts';
import type { Desk } from '../../desk/store.ts';
import { parseQuery } from '../query.ts';
import { json, revision, withId } from './answers.ts';

const [agree, overrule, overruleForAll, severity, remark] = decisionSchema.options;
const unmade = { id: true, at: true } as const;
/** A decision about one script; the desk adds id and time, and the address says which script. */
const ofScript = z.discriminatedUnion('kind', [
  agree.omit({ ...unmade, script: true }),
  overrule.omit({ ...unmade, script: true, carriedFrom: true }),
  severity.omit({ ...unmade, script: true, carriedFrom: true }),
  remark.omit({ ...unmade, script: true, carriedFrom: true }),
]);
const decideSchema = z.strictObject({
  revision,
  decision: ofScript,
  /** The rule whose finding a remark is written beside. */
  beside: z.string().max(100).optional(),
});
/** The answer to a decision about the draft before: it holds for this one too, or is left. */
const carriedSchema = z.strictObject({ revision, from: z.string().min(1).max(100), keep: z.boolean() });
const forAllSchema = z.strictObject({ revision, decision: overruleForAll.omit(unmade) });
const changeSchema = z.strictObject({
  revision,
  candidate: z
    .string()
    .trim()
    .max(40)
    .regex(/^[\p{L}\p{N} ._/-]*$/u, 'a candidate number is letters and digits')
    .optional(),
  draft: z.number().int().min(1).max(99).optional(),
  done: z.boolean().optional(),
});
const markSchema = z.strictObject({ revision, marks: z.number().nullable() });

export function scriptRoutes({ desk }: MarkingDesk): Router {
  const router = Router();

  router.get('/scripts/:id', (request, response) => {
    response.json(lookedAt(desk, parseQuery(withId, request.params).id));
  });

  router.patch('/scripts/:id', json, (request, response) => {
    const { id } = parseQuery(withId, request.params);
    const { revision: seen, candidate, draft, done } = parseQuery(changeSchema, request.body);
    desk.changeScript(id, seen, {
      ...(candidate === undefined ? {} : { candidate }),
      ...(draft === undefined ? {} : { draft }),
      ...(done === undefined ? {} : { done }),
    });
    // Now it is known whose it is, and so what was decided about the draft before.
    if (candidate !== undefined || draft !== undefined) carryOver(desk, id);
    const { facts: _facts, given: _given, ...script } = desk.script(id);
    response.json({ script });
  });

  router.post('/scripts/:id/decisions', json, (request, response) => {
    const { id } = parseQuery(withId, request.params);
    const { revision: seen, decision, beside } = parseQuery(decideSchema, request.body);
    const { stack, facts } = desk.script(id);
    if ('finding' in decision && !facts?.findings.some((finding) => finding.id === decision.finding)) {
      throw missing('This script has no such finding.');
    }
    const made = desk.decide(stack, id, seen, { ...decision, script: String(id) } as Proposed, beside);
    response.status(201).json({ decision: made, revision: seen + 1 });
  });

  router.post('/scripts/:id/carried', json, (request, response) => {
    const { id } = parseQuery(withId, request.params);
    const { revision: seen, from, keep } = parseQuery(carriedSchema, request.body);
    const script = desk.script(id);
    const asked = carriedInto(desk, script)?.decisions.find(({ decision }) => decision.id === from);
    if (asked === undefined || asked.standing === 'left' || (keep && asked.standing === 'carried')) {
      throw missing('There is no such decision about the draft before to carry over.');
    }
    const answer = keep
      ? madeAgain(asked, String(id))
      : { kind: 'leave' as const, script: String(id), carriedFrom: from };
    const made = desk.decide(script.stack, id, seen, answer as Proposed);
    response.status(201).json({ decision: made, revision: seen + 1 });
  });

  router.post('/stacks/:id/decisions', json, (request, response) => {
    const { id } = parseQuery(withId, request.params);
    const { revision: seen, decision } = parseQuery(forAllSchema, request.body);
    const made = desk.decide(desk.stack(id).id, undefined, seen, decision);
    response.status(201).json({ decision: made, revision: seen + 1 });
  });

  router.post('/decisions/:decision/undo', json, (request, response) => {
    const { decision } = parseQuery(z.object({ decision: z.string().min(1).max(100) }), request.params);
    const { revision: seen } = parseQuery(z.strictObject({ revision }), request.body);
    const { stack, script } = desk.whereDecided(decision);
    const made = desk.decide(stack, script, seen, { kind: 'undo', decision });
    response.status(201).json({ decision: made, revision: seen + 1 });
  });

  router.put('/scripts/:id/marks/:criterion', json, (request, response) => {
    const { id, criterion } = parseQuery(withId.extend({ criterion: z.string().max(40) }), request.params);
    const { revision: seen, marks } = parseQuery(markSchema, request.body);
    if (marks === null) desk.mark(id, seen, { takeBack: criterion });
    else {
      const { scheme } = desk.stack(desk.script(id).stack);
      const given = giveMark(scheme, criterion, marks, { at: desk.now().toISOString() });
      if (!given.ok) throw new Refused(given.message);
      desk.mark(id, seen, given.mark);
    }
    response.json({ marks: desk.marks(id), revision: seen + 1 });
  });

  router.get('/remarks', (request, response) => {
    const looking = parseQuery(
      z.object({ typed: z.string().max(500).optional(), rule: z.string().max(100).optional() }),
      request.query,
    );
    const ranked = rankRemarks(desk.bank(), {
      at: desk.now().toISOString(),
      ...(looking.typed === undefined ? {} : { typed: looking.typed }),
      ...(looking.rule === undefined ? {} : { rule: looking.rule }),
    });
    response.json({ remarks: ranked.slice(0, 20).map(({ text, uses }) => ({ text, uses })) });
  });

  return router;
}

/** Everything that is needed to mark one script. */
export function lookedAt(desk: Desk, id: number): object {
  const standing = standingOf(desk, desk.script(id));
  const { facts, ...script } = standing.script;
  const stack = desk.stack(script.stack);
  const since = sinceDraftBefore(desk, standing);
  return {
    script,
    place: placeInQueue(desk, script),
    stackRevision: stack.revision,
    title: facts?.title,
    key: facts?.key,
    strengths: facts?.strengths ?? [],
    score: scoreOf(desk, script),
    findings: standing.findings,
    remarks: standing.remarks,
    marks: standing.marks,
    suggestions: suggestionsFor(stack, standing),
    since:
      since === undefined
        ? undefined
        : {
            summary: since.summary,
            mended: since.mended.map(({ name, bar }) => ({ name, bar })),
            stillThere: since.stillThere.map(({ after }) => after.id),
            fresh: since.fresh.map(({ id: finding }) => finding),
          },
    carried: carriedInto(desk, standing.script),
  };
}
