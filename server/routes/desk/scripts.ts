/** One script: looked at, decided about, marked. */
import { Router } from 'express';
import { giveMark, type Mark, madeAgain, rankRemarks } from '../../../src/desk/index.ts';
import { type Answered, ROUTES } from '../../../src/desk/wire.ts';
import { printVoiceText, readVoiceText } from '../../../src/musicxml/index.ts';
import { Refused } from '../../../src/refusal/refusal.ts';
import { carriedInto, carryOver } from '../../desk/carrying.ts';
import type { MarkingDesk } from '../../desk/marking-desk.ts';
import { openScript } from '../../desk/open-script.ts';
import { placeInQueue } from '../../desk/queue.ts';
import { missing, type Proposed } from '../../desk/records.ts';
import {
  linesOf,
  marksSeenBy,
  scoreOf,
  sinceDraftBefore,
  standingOf,
  suggestionsFor,
} from '../../desk/reports.ts';
import type { Desk } from '../../desk/store.ts';
import { markerOf } from './marker.ts';
import { type Asked, answer } from './serve.ts';

export function scriptRoutes(marking: MarkingDesk): Router {
  const { desk } = marking;
  const router = Router();
  viewRoutes(router, marking);
  decisionRoutes(router, desk);
  answer(router, ROUTES.mark, ({ params: { id, criterion }, body, request }) => ({
    marks: marked(desk, id, criterion, { ...body, ...markerOf(request) }),
    revision: body.revision + 1,
  }));
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

/** Looked at, and set right: whose it is, finished or not. */
function viewRoutes(router: Router, marking: MarkingDesk): void {
  const { desk } = marking;
  answer(router, ROUTES.script, ({ params, request }) => lookedAt(desk, params.id, markerOf(request).by));

  answer(router, ROUTES.changeScript, async ({ params: { id }, body }) => {
    const { revision: seen, candidate, draft, done } = body;
    const voices = body.voices === undefined ? undefined : voicesFor(desk, id, body.voices);
    desk.changeScript(id, seen, {
      ...(voices === undefined ? {} : { voices }),
      ...(candidate === undefined ? {} : { candidate }),
      ...(draft === undefined ? {} : { draft }),
      ...(done === undefined ? {} : { done }),
    });
    // Now it is known whose it is, and so what was decided about the draft before.
    if (candidate !== undefined || draft !== undefined) carryOver(desk, id);
    if (voices !== undefined) await marking.reviewAgain(desk.script(id).stack);
    const { facts: _facts, given: _given, ...script } = desk.script(id);
    return { script };
  });
}

/** Decisions of every kind: made, carried over, taken back. */
function decisionRoutes(router: Router, desk: Desk): void {
  answer(router, ROUTES.decide, ({ params: { id }, body: { revision: seen, decision, beside }, request }) => {
    const { stack, facts } = desk.script(id);
    const known = new Set(facts?.findings.map((finding) => finding.id));
    if (!findingsOf(decision).every((finding) => known.has(finding)))
      throw missing('This script has no such finding.');
    const proposed = { ...decision, ...markerOf(request), script: String(id) } as Proposed;
    return { decision: desk.decide(stack, id, seen, proposed, beside), revision: seen + 1 };
  });

  answer(router, ROUTES.carry, ({ params: { id }, body: { revision: seen, from, keep }, request }) => {
    const script = desk.script(id);
    const asked = carriedInto(desk, script)?.decisions.find(({ decision }) => decision.id === from);
    if (asked === undefined || asked.standing === 'left' || (keep && asked.standing === 'carried')) {
      throw missing('There is no such decision about the draft before to carry over.');
    }
    const decision = keep
      ? madeAgain(asked, String(id))
      : { kind: 'leave' as const, script: String(id), carriedFrom: from };
    const made = desk.decide(script.stack, id, seen, { ...decision, ...markerOf(request) } as Proposed);
    return { decision: made, revision: seen + 1 };
  });

  answer(router, ROUTES.decideForAll, ({ params: { id }, body: { revision: seen, decision }, request }) => {
    const made = desk.decide(desk.stack(id).id, undefined, seen, { ...decision, ...markerOf(request) });
    return { decision: made, revision: seen + 1 };
  });

  answer(router, ROUTES.undo, ({ params: { decision }, body: { revision: seen }, request }) => {
    const { stack, script } = desk.whereDecided(decision);
    const made = desk.decide(stack, script, seen, { kind: 'undo', decision, ...markerOf(request) });
    return { decision: made, revision: seen + 1 };
  });
}

/** The findings that a decision is about. */
function findingsOf(decision: Asked<typeof ROUTES.decide>['body']['decision']): readonly string[] {
  if (!('finding' in decision)) return [];
  return 'also' in decision ? [decision.finding, ...(decision.also ?? [])] : [decision.finding];
}

interface MarkAsked {
  readonly revision: number;
  readonly marks: number | null;
  readonly by?: string;
  readonly agreed?: true | undefined;
}

/** Gives a mark or takes it back; answers the marks that this marker sees standing. @throws {Refused} */
function marked(desk: Desk, id: number, criterion: string, asked: MarkAsked): readonly Mark[] {
  const { scheme, second } = desk.stack(desk.script(id).stack);
  const { by, marks, agreed } = asked;
  if (second !== undefined && by === undefined)
    throw new Refused('Two people mark this stack: write your initials at the top first.');
  const whose = { ...(by === undefined ? {} : { by }), ...(agreed ? { agreed } : {}) };
  if (marks === null) desk.mark(id, asked.revision, { takeBack: criterion, ...whose });
  else {
    const given = giveMark(scheme, criterion, marks, { at: desk.now().toISOString(), ...whose });
    if (!given.ok) throw new Refused(given.message);
    desk.mark(id, asked.revision, given.mark);
  }
  return marksSeenBy(desk, id, by).marks;
}

/** Voices as they were typed, if the script's file has such lines. @throws {Refused} */
function voicesFor(desk: Desk, id: number, text: string): string {
  if (text === '') return text;
  const read = readVoiceText(text);
  if (!read.ok) throw new Refused(read.message);
  const opened = openScript(desk.content(id), { own: read.voices });
  if (!opened.ok) throw new Refused(opened.message);
  return printVoiceText(read.voices);
}

/** Everything that is needed to mark one script. */
function lookedAt(desk: Desk, id: number, by: string | undefined): Answered<typeof ROUTES.script> {
  const standing = standingOf(desk, desk.script(id));
  const { facts, ...script } = standing.script;
  const stack = desk.stack(script.stack);
  const since = sinceDraftBefore(desk, standing);
  const seen = marksSeenBy(desk, id, by);
  return {
    script,
    place: placeInQueue(desk, script),
    stackRevision: stack.revision,
    title: facts?.title,
    key: facts?.key,
    strengths: facts?.strengths ?? [],
    score: scoreOf(desk, script),
    lines: linesOf(desk, script),
    findings: standing.findings,
    remarks: standing.remarks,
    marks: seen.marks,
    marksGiven: seen.given,
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
