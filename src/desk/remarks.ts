/** The teacher's own bank of remarks, which grows as one writes. */
import * as z from 'zod';

export const bankedRemarkSchema = z.object({
  text: z.string(),
  /** How often it was used. */
  uses: z.number().int().min(1),
  /** When it was used last, ISO 8601 in UTC. */
  lastUsed: z.iso.datetime(),
  /** How often it was used beside a finding of each rule. */
  rules: z.record(z.string(), z.number().int().min(1)),
});
export type BankedRemark = z.infer<typeof bankedRemarkSchema>;

/** Beyond so many, the least useful makes room. */
const MOST_REMARKS = 500;
/** A use counts half after so many days. */
const HALF_LIFE = 60;
const DAY = 86_400_000;

/**
 * The bank with a remark in it, or with one more use of it. Two remarks that differ in spaces or capitals only are
 * one; the latest wording is kept.
 *
 * @param rule the rule whose finding the remark was written beside, where it was
 */
export function rememberRemark(
  bank: readonly BankedRemark[],
  text: string,
  at: string,
  rule?: string,
): readonly BankedRemark[] {
  const written = text.replace(/\s+/g, ' ').trim();
  if (written === '') return bank;
  const known = bank.find((remark) => plain(remark.text) === plain(written));
  const rules = { ...known?.rules };
  if (rule !== undefined) rules[rule] = (Object.hasOwn(rules, rule) ? rules[rule]! : 0) + 1;
  const fresh = { text: written, uses: (known?.uses ?? 0) + 1, lastUsed: at, rules };
  const others = bank.filter((remark) => remark !== known);
  if (others.length < MOST_REMARKS) return [...others, fresh];
  const least = rankRemarks(others, { at }).at(-1);
  return [...others.filter((remark) => remark !== least), fresh];
}

/**
 * Remarks to offer, the likeliest first: those that were used beside the same rule, then by use, a recent use counting
 * more. What has been typed narrows them: every word must begin some word of the remark.
 */
export function rankRemarks(
  bank: readonly BankedRemark[],
  looking: { readonly at: string; readonly typed?: string; readonly rule?: string },
): BankedRemark[] {
  const words = plain(looking.typed ?? '')
    .split(' ')
    .filter((word) => word !== '');
  const now = Date.parse(looking.at);
  const worth = (remark: BankedRemark): number => {
    const days = Math.max(0, now - Date.parse(remark.lastUsed)) / DAY;
    const beside =
      looking.rule !== undefined && Object.hasOwn(remark.rules, looking.rule)
        ? remark.rules[looking.rule]!
        : 0;
    return (remark.uses + 3 * beside) * 0.5 ** (days / HALF_LIFE);
  };
  return bank
    .filter((remark) => {
      const own = plain(remark.text).split(' ');
      return words.every((word) => own.some((mine) => mine.startsWith(word)));
    })
    .map((remark) => ({ remark, worth: worth(remark) }))
    .sort((a, b) => b.worth - a.worth || (a.remark.text < b.remark.text ? -1 : 1))
    .map(({ remark }) => remark);
}

function plain(text: string): string {
  return text
    .toLowerCase()
    .replace(/[^\p{L}\p{N}#♯♭]+/gu, ' ')
    .trim();
}
