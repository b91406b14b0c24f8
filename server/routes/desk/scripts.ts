/** One script: looked at, decided about, marked. */
import { Router } from 'express';
import { giveMark, madeAgain, rankRemarks } from '../../../src/desk/index.ts';
import { type Answered, ROUTES } from '../../../src/desk/wire.ts';
import { Refused } from '../../../src/refusal/refusal.ts';
import { carriedInto, carryOver } from '../../desk/carrying.ts';
import type { MarkingDesk } from '../../desk/marking-desk.ts';
import { placeInQueue } from '../../desk/queue.ts';
import { missing, type Proposed } from '../../desk/records.ts';
import { scoreOf, sinceDraftBefore, standingOf, suggestionsFor } from '../../desk/reports.ts';
import type { Desk } from '../../desk/store.ts';
import { answer } from './serve.ts';

export function scriptRoutes({ desk }: MarkingDesk): Router {
  const router = Router();

  answer(router, ROUTES.script, ({ params }) => lookedAt(desk, params.id));

  answer(router, ROUTES.changeScript, ({ params: { id }, body }) => {
    const { revision: seen, candidate, draft, done } = body;
    desk.changeScript(id, seen, {
      ...(candidate === undefined ? {} : { candidate }),
      ...(draft === undefined ? {} : { draft }),
      ...(done === undefined ? {} : { done }),
    });
    // Now it is known whose it is, and so what was decided about the draft before.
    if (candidate !== undefined || draft !== undefined) carryOver(desk, id);
    const { facts: _facts, given: _given, ...script } = desk.script(id);
    return { script };
  });

  answer(router, ROUTES.decide, ({ params: { id }, body: { revision: seen, decision, beside } }) => {
    const { stack, facts } = desk.script(id);
    if ('finding' in decision && !facts?.findings.some((finding) => finding.id === decision.finding)) {
      throw missing('This script has no such finding.');
    }
    const made = desk.decide(stack, id, seen, { ...decision, script: String(id) } as Proposed, beside);
    return { decision: made, revision: seen + 1 };
  });

  answer(router, ROUTES.carry, ({ params: { id }, body: { revision: seen, from, keep } }) => {
    const script = desk.script(id);
    const asked = carriedInto(desk, script)?.decisions.find(({ decision }) => decision.id === from);
    if (asked === undefined || asked.standing === 'left' || (keep && asked.standing === 'carried')) {
      throw missing('There is no such decision about the draft before to carry over.');
    }
    const decision = keep
      ? madeAgain(asked, String(id))
      : { kind: 'leave' as const, script: String(id), carriedFrom: from };
    const made = desk.decide(script.stack, id, seen, decision as Proposed);
    return { decision: made, revision: seen + 1 };
  });

  answer(router, ROUTES.decideForAll, ({ params: { id }, body: { revision: seen, decision } }) => {
    const made = desk.decide(desk.stack(id).id, undefined, seen, decision);
    return { decision: made, revision: seen + 1 };
  });

  answer(router, ROUTES.undo, ({ params: { decision }, body: { revision: seen } }) => {
    const { stack, script } = desk.whereDecided(decision);
    const made = desk.decide(stack, script, seen, { kind: 'undo', decision });
    return { decision: made, revision: seen + 1 };
  });

  answer(router, ROUTES.mark, ({ params: { id, criterion }, body: { revision: seen, marks } }) => {
    if (marks === null) desk.mark(id, seen, { takeBack: criterion });
    else {
      const { scheme } = desk.stack(desk.script(id).stack);
      const given = giveMark(scheme, criterion, marks, { at: desk.now().toISOString() });
      if (!given.ok) throw new Refused(given.message);
      desk.mark(id, seen, given.mark);
    }
    return { marks: desk.marks(id), revision: seen + 1 };
  });

  answer(router, ROUTES.remarks, ({ query: { typed, rule } }) => {
    const ranked = rankRemarks(desk.bank(), {
      at: desk.now().toISOString(),
      ...(typed === undefined ? {} : { typed }),
      ...(rule === undefined ? {} : { rule }),
    });
    return { remarks: ranked.slice(0, 20).map(({ text, uses }) => ({ text, uses })) };
  });

  return router;
}

/** Everything that is needed to mark one script. */
function lookedAt(desk: Desk, id: number): Answered<typeof ROUTES.script> {
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
