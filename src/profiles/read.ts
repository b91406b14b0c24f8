/**
 * A teacher's own profile, from parsed JSON:
 *
 * ```json
 * {
 *   "name": "year-12",
 *   "statement": "For the second term.",
 *   "basedOn": "chorale",
 *   "rules": {
 *     "exposed-octaves": "off",
 *     "voice-crossing": "fault",
 *     "hammered-note": { "severity": "query", "parameters": { "most": 6 } }
 *   }
 * }
 * ```
 *
 * `statement`, `basedOn` and `rules` may be left out. Everything that is wrong is told at once, each in a sentence.
 */
import * as z from 'zod';
import { type Outcome, refuseAll } from '../refusal/refusal.ts';
import { RULES } from '../rules/list.ts';
import type { Parameter, Rule } from '../rules/rule.ts';
import { DEFAULT_PROFILE, PROFILES, profileNamed } from './list.ts';
import type { Profile, RuleSetting } from './profile.ts';

export type ProfileReading = Outcome<{ readonly profile: Profile }>;

const SEVERITIES = ['fault', 'query', 'remark', 'off'] as const;
const MOST_RULES = 500;

const shipped = PROFILES.map((profile) => profile.name);
const quoted = (words: readonly string[]) => words.map((word) => `“${word}”`).join(', ');

const fileSchema = z.strictObject(
  {
    name: z
      .string({ error: 'The profile needs a “name”, in quotation marks.' })
      .regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, {
        error: 'The “name” must be small letters and digits, with hyphens between words: “year-12”.',
      })
      .max(60, { error: 'The “name” must be no longer than 60 letters.' })
      .refine((name) => !shipped.includes(name), {
        error: `The “name” must not be one of the names that are taken: ${quoted(shipped)}.`,
      }),
    statement: z
      .string({ error: 'The “statement” must be a sentence in quotation marks.' })
      .max(300, { error: 'The “statement” must be no longer than 300 letters.' })
      .optional(),
    basedOn: z
      .enum(shipped, { error: `“basedOn” must be the name of a house profile: ${quoted(shipped)}.` })
      .optional(),
    rules: z
      .record(z.string(), z.unknown(), {
        error: '“rules” must be an object in braces, with a rule’s name before each colon.',
      })
      .optional(),
  },
  {
    error: (issue) =>
      issue.code === 'unrecognized_keys'
        ? `The profile has an entry that is not known: ${quoted(issue.keys)}. It may have “name”, “statement”, “basedOn” and “rules”.`
        : 'A profile must be a JSON object in braces, with a “name” and “rules”.',
  },
);

/** Reads a profile from parsed JSON. Never throws. */
export function readProfile(data: unknown): ProfileReading {
  const file = fileSchema.safeParse(data);
  const given = isRecord(data) && isRecord(data.rules) ? Object.entries(data.rules) : [];
  const errors = file.success ? [] : file.error.issues.map((issue) => issue.message);
  if (given.length > MOST_RULES)
    errors.push(`“rules” has ${given.length} entries; ${MOST_RULES} are the most.`);
  const settings = given.slice(0, MOST_RULES).map(([id, value]) => readSetting(id, value));
  errors.push(...settings.flatMap((setting) => setting.errors));
  if (!file.success || errors.length > 0) return refuseAll(errors.map((message) => ({ message })));
  const { name, statement, basedOn } = file.data;
  const base = profileNamed(basedOn ?? '') ?? DEFAULT_PROFILE;
  const rules: Record<string, RuleSetting> = { ...base.rules };
  for (const { id, setting } of settings) rules[id] = merged(rules[id], setting);
  return {
    ok: true,
    profile: { name, statement: statement ?? `A profile of our own, based on “${base.name}”.`, rules },
  };
}

interface Setting {
  readonly id: string;
  readonly setting: RuleSetting;
  readonly errors: readonly string[];
}

function readSetting(id: string, value: unknown): Setting {
  const rule = RULES.find((r) => r.id === id);
  if (rule === undefined) return { id, setting: {}, errors: [unknownRule(id)] };
  if (typeof value === 'string') {
    const severity = SEVERITIES.find((s) => s === value);
    return severity === undefined
      ? { id, setting: {}, errors: [wrongSeverity(id, value)] }
      : { id, setting: { severity }, errors: [] };
  }
  if (!isRecord(value))
    return {
      id,
      setting: {},
      errors: [
        `“${id}” must be ${quoted(SEVERITIES)}, or an object in braces with “severity” and “parameters”; it is ${shown(value)}.`,
      ],
    };
  const errors: string[] = [];
  for (const key of Object.keys(value)) {
    if (key !== 'severity' && key !== 'parameters')
      errors.push(`“${id}” has an entry “${key}”; it may have “severity” and “parameters”.`);
  }
  const severity = SEVERITIES.find((s) => s === value.severity);
  if (value.severity !== undefined && severity === undefined) errors.push(wrongSeverity(id, value.severity));
  const parameters = readParameters(rule, value.parameters, errors);
  return {
    id,
    setting: { ...(severity === undefined ? {} : { severity }), ...(parameters ? { parameters } : {}) },
    errors,
  };
}

function readParameters(rule: Rule, value: unknown, errors: string[]): RuleSetting['parameters'] {
  if (value === undefined) return undefined;
  if (!isRecord(value)) {
    errors.push(`The “parameters” of “${rule.id}” must be an object in braces; they are ${shown(value)}.`);
    return undefined;
  }
  const parameters: Record<string, number | string> = {};
  for (const [name, set] of Object.entries(value)) {
    const parameter = Object.hasOwn(rule.parameters, name) ? rule.parameters[name] : undefined;
    if (parameter === undefined) {
      const names = Object.keys(rule.parameters);
      const has = names.length === 0 ? 'it has none' : `it has ${quoted(names)}`;
      errors.push(`“${rule.id}” has no parameter “${name}”; ${has}.`);
      continue;
    }
    const checked = accepted(parameter, set);
    if (checked === undefined)
      errors.push(
        `The parameter “${name}” of “${rule.id}” must be ${expected(parameter)}; it is ${shown(set)}.`,
      );
    else parameters[name] = checked;
  }
  return parameters;
}

/** The value if the parameter may have it. */
function accepted(parameter: Parameter, set: unknown): number | string | undefined {
  if (parameter.kind === 'range') {
    const inside = typeof set === 'number' && set >= parameter.least && set <= parameter.most;
    return inside ? set : undefined;
  }
  if (typeof set !== 'string' || set.length > 200) return undefined;
  if (parameter.kind === 'choice') return parameter.choices.includes(set) ? set : undefined;
  return new RegExp(parameter.form.pattern).test(set) ? set : undefined;
}

function expected(parameter: Parameter): string {
  switch (parameter.kind) {
    case 'range':
      return `a number from ${parameter.least} to ${parameter.most}`;
    case 'choice':
      return `one of ${quoted(parameter.choices)}`;
    case 'text':
      return `written like “${parameter.form.example}”`;
  }
}

function merged(base: RuleSetting | undefined, over: RuleSetting): RuleSetting {
  return {
    ...base,
    ...over,
    ...(base?.parameters || over.parameters
      ? { parameters: { ...base?.parameters, ...over.parameters } }
      : {}),
  };
}

function wrongSeverity(id: string, value: unknown): string {
  return `The severity of “${id}” must be one of ${quoted(SEVERITIES)}; it is ${shown(value)}.`;
}

function unknownRule(id: string): string {
  const near = RULES.map((rule) => ({ id: rule.id, distance: editDistance(id.slice(0, 60), rule.id) })).sort(
    (a, b) => a.distance - b.distance,
  )[0];
  const meant = near !== undefined && near.distance <= 4 ? ` Did you mean “${near.id}”?` : '';
  return `“${id.slice(0, 60)}” is not the name of a rule.${meant}`;
}

/** How many letters must be put in, left out or changed to make one word the other (Levenshtein's distance). */
function editDistance(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const change = row[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1);
      next.push(Math.min(change, row[j]! + 1, next[j - 1]! + 1));
    }
    row = next;
  }
  return row[b.length]!;
}

function shown(value: unknown): string {
  if (typeof value === 'string') return `“${value.slice(0, 60)}”`;
  if (value === null) return 'empty';
  if (Array.isArray(value)) return 'a list';
  return typeof value === 'object' ? 'an object' : String(value);
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
