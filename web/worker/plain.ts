/**
 * A review as it crosses from one thread to the other: rules and tones by their ids, and no texture, since copying
 * those costs more than working them out anew.
 */
import type { Analysis, Ornament } from '../../src/harmony/analysis.ts';
import type { Finding, Review } from '../../src/review/review.ts';
import type { NearFindings } from '../../src/review/with-near.ts';
import type { RuleWords } from '../../src/rules/rule.ts';
import { type Score, VOICES } from '../../src/score/score.ts';
import { type Texture, type Tone, textureOf } from '../../src/score/texture.ts';

type PlainFinding = Omit<Finding, 'rule' | 'tones'> & {
  readonly rule: string;
  readonly tones: readonly string[];
};
type PlainOrnament = Omit<Ornament, 'tone' | 'preparation' | 'resolution'> & {
  readonly tone: string;
  readonly preparation?: string;
  readonly resolution?: string;
};
export type PlainNear = Omit<NearFindings, 'findings'> & { readonly findings: readonly PlainFinding[] };
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
    findings: findings.map(plainFinding),
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

export function plainNear({ findings, ...stretch }: NearFindings): PlainNear {
  return { ...stretch, findings: findings.map(plainFinding) };
}

function plainFinding({ rule, tones, ...finding }: Finding): PlainFinding {
  return { ...finding, rule: rule.id, tones: tones.map((tone) => tone.id) };
}

export type RulesById = ReadonlyMap<string, RuleWords>;

export function rulesById(rules: readonly RuleWords[]): RulesById {
  return new Map(rules.map((rule) => [rule.id, rule]));
}

/** What was found around a place of `score`. */
export function wholeNear({ findings, ...stretch }: PlainNear, score: Score, rules: RulesById): NearFindings {
  return { ...stretch, findings: wholeFindings(findings, tonesById(textureOf(score)), rules) };
}

/** The review of `score` that was made plain; its tones are those of a texture worked out here. */
export function wholeReview(plain: PlainReview, score: Score, rules: RulesById): Review {
  const texture = textureOf(score);
  const tones = tonesById(texture);
  return {
    ...plain,
    score,
    findings: wholeFindings(plain.findings, tones, rules),
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

function tonesById(texture: Texture): ReadonlyMap<string, Tone> {
  return new Map(VOICES.flatMap((voice) => texture.tones[voice].map((tone) => [tone.id, tone] as const)));
}

function wholeFindings(
  findings: readonly PlainFinding[],
  tones: ReadonlyMap<string, Tone>,
  rules: RulesById,
): Finding[] {
  return findings.flatMap((finding) => {
    const rule = rules.get(finding.rule);
    return rule === undefined ? [] : [{ ...finding, rule, tones: found(finding.tones, tones) }];
  });
}

function found(ids: readonly string[], tones: ReadonlyMap<string, Tone>): Tone[] {
  return ids.flatMap((id) => tones.get(id) ?? []);
}
