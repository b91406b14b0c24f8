/** Steps from triad to triad by the notes alone, in the keys near: a second witness beside `progression.ts`. */
import { phraseBreaks } from '../score/motion.ts';
import { fifthsPlace } from '../score/pitch.ts';
import { beatLength } from '../score/time.ts';
import type { Analysis, Key } from './analysis.ts';
import { type Hearing, hearings } from './hearing.ts';
import { homeKey, keysNearTo } from './keysNear.ts';
import { sameKey } from './progression.ts';
import { degreeOf } from './questions.ts';
import { belongsToKey } from './spelling.ts';

export interface HeardStep {
  /** Always a major key. */
  readonly key: Key;
  readonly from: Hearing;
  readonly to: Hearing;
  readonly fromDegree: number;
  readonly toDegree: number;
}

/**
 * Steps between plain triads of the scale in root position, a beat or more apart, inside a phrase. They are read in
 * every major key near; in the home key too where the reading is on a short outing from it, or begins elsewhere.
 */
export function heardSteps(analysis: Analysis): readonly HeardStep[] {
  const { texture } = analysis;
  const breaks = phraseBreaks(texture);
  const all = hearings(texture);
  return all.flatMap((to, i): HeardStep[] => {
    const from = all[i - 1];
    if (from === undefined || breaks.has(to.at)) return [];
    const beat = beatLength(to.slices[0]!.bar.metre);
    if (from.until < to.at - beat / 2 || to.at - from.at < beat || to.slices[0]!.strength < 2) return [];
    if (!inRootPosition(from) || !inRootPosition(to)) return [];
    return keysFor(analysis, from).flatMap((key): HeardStep[] => {
      const [fromDegree, toDegree] = [degreeIn(from, key), degreeIn(to, key)];
      return fromDegree === undefined || toDegree === undefined
        ? []
        : [{ key, from, to, fromDegree, toDegree }];
    });
  });
}

function keysFor(analysis: Analysis, { at }: Hearing): readonly Key[] {
  const near = keysNearTo(analysis, at);
  const home = homeKey(analysis);
  const keys =
    home !== undefined && outFor(analysis, at) && !near.some((key) => sameKey(key, home))
      ? [...near, home]
      : near;
  return keys.filter((key) => key.mode === 'major');
}

/** The reading is in the first of its keys, or in one that lasts no longer than two bars of four. */
function outFor(analysis: Analysis, at: number): boolean {
  const index = analysis.keys.findIndex((region) => at >= region.from && at < region.until);
  const region = analysis.keys[index];
  if (region === undefined) return false;
  const beat = beatLength(analysis.texture.score.bars[0]!.metre);
  return index === 0 || region.until - region.from <= 8 * beat;
}

function inRootPosition({ bass, members }: Hearing): boolean {
  return fifthsPlace(bass) === fifthsPlace(members.root);
}

function degreeIn({ members }: Hearing, key: Key): number | undefined {
  const { degree, alteration } = degreeOf(members.root, key);
  const own = [members.root, members.third, members.fifth].every((name) => belongsToKey(name, key));
  return alteration === 0 && own ? degree : undefined;
}
