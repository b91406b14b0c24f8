/**
 * A review as it crosses from one thread to the other: rules and tones by their ids, and no texture, since copying
 * those costs more than working them out anew.
 */
import type { Analysis, Ornament } from '../../src/harmony/analysis.ts';
import type { Finding, Review } from '../../src/review/review.ts';
import { RULES } from '../../src/rules/list.ts';
import { type Score, VOICES } from '../../src/score/score.ts';
import { type Tone, textureOf } from '../../src/score/texture.ts';

type PlainFinding = Omit<Finding, 'rule' | 'tones'> & {
  readonly rule: string;
  readonly tones: readonly string[];
};
type PlainOrnament = Omit<Ornament, 'tone' | 'preparation' | 'resolution'> & {
  readonly tone: string;
  readonly preparation?: string;
  readonly resolution?: string;
};
export type PlainReview = Omit<Review, 'score' | 'findings' | 'analysis'> & {
  readonly findings: readonly PlainFinding[];
  readonly analysis: Omit<Analysis, 'texture' | 'ornaments'> & {
    readonly ornaments: readonly PlainOrnament[];
  };
};

export function plainReview({ score: _score, findings, analysis, ...rest }: Review): PlainReview {
  const { texture: _texture, ornaments, ...harmony } = analysis;
  return {
    ...rest,
    findings: findings.map(({ rule, tones, ...finding }) => ({
      ...finding,
      rule: rule.id,
      tones: tones.map((tone) => tone.id),
    })),
    analysis: {
      ...harmony,
      ornaments: ornaments.map(({ tone, preparation, resolution, ...ornament }) => ({
        ...ornament,
        tone: tone.id,
        ...(preparation && { preparation: preparation.id }),
        ...(resolution && { resolution: resolution.id }),
      })),
    },
  };
}

/** The review of `score` that was made plain; its tones are those of a texture worked out here. */
export function wholeReview(plain: PlainReview, score: Score): Review {
  const texture = textureOf(score);
  const tones = new Map<string, Tone>();
  for (const voice of VOICES) for (const tone of texture.tones[voice]) tones.set(tone.id, tone);
  const rules = new Map(RULES.map((rule) => [rule.id, rule]));
  return {
    ...plain,
    score,
    findings: plain.findings.flatMap((finding) => {
      const rule = rules.get(finding.rule);
      return rule === undefined ? [] : [{ ...finding, rule, tones: found(finding.tones, tones) }];
    }),
    analysis: {
      ...plain.analysis,
      texture,
      ornaments: plain.analysis.ornaments.flatMap((ornament) => {
        const { tone: id, preparation, resolution, ...rest } = ornament;
        const tone = tones.get(id);
        const before = preparation === undefined ? undefined : tones.get(preparation);
        const after = resolution === undefined ? undefined : tones.get(resolution);
        return tone === undefined
          ? []
          : [{ ...rest, tone, ...(before && { preparation: before }), ...(after && { resolution: after }) }];
      }),
    },
  };
}

function found(ids: readonly string[], tones: ReadonlyMap<string, Tone>): Tone[] {
  return ids.flatMap((id) => tones.get(id) ?? []);
}
