/** What the forms say, as exercises and briefs. */

import { type Brief, onlyGiven, parseDuration } from '../../src/brief/brief.ts';
import { HELPS } from '../../src/brief/helps.ts';
import { parseKeySignature } from '../../src/notation/index.ts';
import { refuse } from '../../src/refusal/refusal.ts';
import { countedBeat } from '../../src/report/sentences.ts';
import { VOICES } from '../../src/score/score.ts';
import { barLength, beatLength, type Metre, scaleTicks } from '../../src/score/time.ts';
import { emptyScore } from '../../src/writing/bars.ts';
import type { PageState } from '../state/page.ts';
import { workFromScore } from '../state/work.ts';
import type { Taken } from './open.ts';

/** Begins an exercise as the form says; what makes no sense there is told. */
export async function beginNew(form: FormData, take: (taken: Taken) => Promise<void>): Promise<void> {
  const metre = metreOf(String(form.get('metre')));
  const key = parseKeySignature(String(form.get('key'))) ?? { fifths: 0 };
  const upbeat = scaleTicks(beatLength(metre), Number(form.get('upbeat')) * 2, 2) ?? 0;
  if (upbeat >= barLength(metre)) {
    await take(refuse('The upbeat must be shorter than a bar.'));
    return;
  }
  const title = String(form.get('title') ?? '').trim();
  const score = emptyScore({
    title: title === '' ? 'New exercise' : title,
    key,
    metre,
    tempo: (Number(form.get('tempo')) || 72) * countedBeat(metre).crotchets,
    upbeat,
    bars: Math.min(200, Math.max(1, Number(form.get('bars')) || 8)),
  });
  await take({ ok: true, work: workFromScore(score) });
}

function metreOf(text: string): Metre {
  const [beats, unit] = text.split('/').map(Number);
  return { beats: beats ?? 4, unit: unit ?? 4 };
}

/** The open exercise as a brief, or a sentence saying what is wrong with the form. */
export function briefFromForm(form: FormData, state: PageState): Brief | string {
  const { score } = state.history.now;
  const given = Object.fromEntries(
    VOICES.map((voice) => {
      const choice = form.get(`given-${voice}`);
      return [voice, choice === 'all' ? true : choice === 'caret' ? state.caret.at : false];
    }),
  ) as unknown as Parameters<typeof onlyGiven>[1];
  const least = durationField(form, 'least');
  const together = durationField(form, 'together');
  if (least === null || together === null)
    return 'Lengths are written as minutes and seconds, such as 0:45 or 6:00.';
  return {
    score: onlyGiven(score, given),
    task: String(form.get('task') ?? '').trim(),
    profile: state.settings.profile,
    ...(least === undefined ? {} : { leastSeconds: least }),
    ...(together === undefined ? {} : { leastTogetherSeconds: together }),
    without: HELPS.filter((help) => form.getAll('without').includes(help)),
  };
}

/** Undefined where the field is empty, null where it makes no sense. */
function durationField(form: FormData, name: string): number | undefined | null {
  const text = String(form.get(name) ?? '').trim();
  return text === '' ? undefined : (parseDuration(text) ?? null);
}
