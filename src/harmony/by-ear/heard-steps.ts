/** Steps from triad to triad by the notes alone, in the keys near: a second witness beside `progression.ts`. */
import { phraseBreaks } from '../../score/motion.ts';
import { fifthsPlace, sameNoteName } from '../../score/pitch.ts';
import { remembered } from '../../score/remember.ts';
import { beatLength } from '../../score/time.ts';
import type { Analysis, Key } from '../analysis.ts';
import { sameKey } from '../key.ts';
import { degreeOf } from '../questions/degrees.ts';
import { homeKey } from '../questions/home-key.ts';
import { keyIndexAt, pitchAt } from '../questions/moments.ts';
import { belongsToKey } from '../questions/spelling.ts';
import { type Hearing, hearingAt } from './hearing.ts';
import { keysNearTo } from './keys-near.ts';

export interface HeardStep {
  /** Always a major key. */
  readonly key: Key;
  readonly from: Hearing;
  readonly to: Hearing;
  readonly fromDegree: number;
  readonly toDegree: number;
}

/**
 * Steps between plain triads of the scale in root position, from beat to beat inside a phrase. They are read in
 * every major key near; in the home key too where the reading is on a short outing from it, or begins elsewhere.
 * Worked out once.
 */
export const heardSteps: (analysis: Analysis) => readonly HeardStep[] = remembered(stepsOf);

function stepsOf(analysis: Analysis): readonly HeardStep[] {
  const { texture } = analysis;
  const breaks = phraseBreaks(texture);
  const beats = texture.slices.filter((slice) => slice.strength >= 2);
  return beats.flatMap((slice, i): HeardStep[] => {
    const earlier = beats[i - 1];
    if (earlier === undefined || breaks.has(slice.at)) return [];
    // What passes between the beats does not matter, as long as the bass stays for it.
    const [from, to] = [hearingAt(texture, earlier.at), hearingAt(texture, slice.at)];
    const bass = pitchAt(analysis, 'B', slice.at - 1);
    if (from === undefined || to === undefined || bass === undefined) return [];
    if (!inRootPosition(from) || !inRootPosition(to) || !sameNoteName(bass, from.members.root)) return [];
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
  const away = outFor(analysis, at) && !near.some((key) => sameKey(key, home));
  const keys = away ? [...near, home] : near;
  return keys.filter((key) => key.mode === 'major');
}

/** The reading is in the first of its keys, or in one that lasts no longer than two bars of four. */
function outFor(analysis: Analysis, at: number): boolean {
  const index = keyIndexAt(analysis, at);
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
