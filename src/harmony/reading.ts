/** First, plain reading: a chord for each beat by coverage, a key for each phrase by its notes. */
import { fifthsPlace } from '../score/pitch.ts';
import { VOICES } from '../score/score.ts';
import { type Texture, toneIn } from '../score/texture.ts';
import type { Ticks } from '../score/time.ts';
import type { Phrase } from './analysis.ts';
import { CHORD_TYPES, memberIndex, TYPE } from './chordTypes.ts';

/** One harmony of a reading, in numbers: places on the line of fifths and an index into CHORD_TYPES. */
export interface Harmony {
  readonly at: Ticks;
  readonly until: Ticks;
  readonly tonic: number;
  readonly mode: 'major' | 'minor';
  readonly root: number;
  readonly type: number;
  readonly inversion: 0 | 1 | 2 | 3;
  /** The next best reading, where it is close. */
  readonly other?: Pick<Harmony, 'tonic' | 'mode' | 'root' | 'type' | 'inversion'>;
}

export function readHarmonies(texture: Texture, phrases: readonly Phrase[]): Harmony[] {
  const out: Harmony[] = [];
  for (const phrase of phrases) {
    const inside = texture.slices.filter((s) => s.at >= phrase.from && s.at < phrase.until);
    const weights = new Map<number, number>();
    for (const s of inside)
      for (const v of VOICES) {
        const t = toneIn(s, v);
        if (t) weights.set(fifthsPlace(t.pitch), (weights.get(fifthsPlace(t.pitch)) ?? 0) + s.until - s.at);
      }
    const signature = inside[0]?.bar.key.fifths ?? 0;
    let best = { tonic: signature, mode: 'major' as 'major' | 'minor', score: Number.NEGATIVE_INFINITY };
    for (let tonic = signature - 4; tonic <= signature + 7; tonic++)
      for (const mode of ['major', 'minor'] as const) {
        const scale = mode === 'major' ? [-1, 0, 1, 2, 3, 4, 5] : [-4, -3, -1, 0, 1, 2, 5];
        let score = 0;
        for (const [place, weight] of weights) if (scale.includes(place - tonic)) score += weight;
        score += 1.5 * ((weights.get(tonic) ?? 0) + 0.6 * (weights.get(tonic + 1) ?? 0));
        score += 0.4 * (weights.get(tonic + 5) ?? 0);
        if (score > best.score) best = { tonic, mode, score };
      }
    let group: typeof inside = [];
    const flush = () => {
      const first = group[0];
      if (!first) return;
      const held = new Map<number, number>();
      let bassPlace: number | undefined;
      for (const s of group)
        for (const v of VOICES) {
          const t = toneIn(s, v);
          if (!t) continue;
          const w = (s.until - s.at) * (s === first ? 1.5 : 1);
          held.set(fifthsPlace(t.pitch), (held.get(fifthsPlace(t.pitch)) ?? 0) + w);
          if (v === 'B' && bassPlace === undefined) bassPlace = fifthsPlace(t.pitch);
        }
      if (held.size > 0) {
        let top: { root: number; type: number; score: number } | undefined;
        for (const type of [TYPE.M!, TYPE.m!, TYPE.o!, TYPE.M7!, TYPE.m7!, TYPE['ø7']!, TYPE.o7!])
          for (let root = best.tonic - 4; root <= best.tonic + 8; root++) {
            let score = 0;
            for (const [place, w] of held) score += memberIndex(root, type, place) >= 0 ? w : -w;
            for (const o of CHORD_TYPES[type]!.offsets) if (!held.has(root + o)) score -= 4000;
            if (bassPlace === root) score += 1500;
            if (!top || score > top.score) top = { root, type, score };
          }
        const inversion = Math.max(0, memberIndex(top!.root, top!.type, bassPlace ?? top!.root)) as
          | 0
          | 1
          | 2
          | 3;
        const previous = out.at(-1);
        const until = group.at(-1)!.until;
        if (
          previous &&
          previous.until === first.at &&
          previous.root === top!.root &&
          previous.type === top!.type &&
          previous.inversion === inversion &&
          previous.tonic === best.tonic &&
          previous.mode === best.mode
        )
          out[out.length - 1] = { ...previous, until };
        else
          out.push({
            at: first.at,
            until,
            tonic: best.tonic,
            mode: best.mode,
            root: top!.root,
            type: top!.type,
            inversion,
          });
      }
      group = [];
    };
    for (const s of inside) {
      if (s.strength >= 2) flush();
      group.push(s);
    }
    flush();
  }
  return out;
}
