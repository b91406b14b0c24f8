/** The page of one rule, as plain text of at most 80 columns. */
import { listed } from '../english/words.ts';
import { PROFILES } from '../profiles/list.ts';
import { type Example, type Parameter, type Rule, SEVERITIES } from '../rules/rule.ts';
import { WIDTH, wrap } from './wrap.ts';

/** A rule from top to bottom: what it says, why, hints, examples in our notation, settings, source. */
export function explainRule(rule: Rule): string {
  const lines = [
    rule.name,
    '='.repeat(rule.name.length),
    `${rule.id}, among ${rule.family}; taken as a ${rule.severity} unless a profile says otherwise.`,
    '',
    ...wrap(rule.statement, WIDTH),
    '',
    ...section('Why', [rule.why]),
    ...section(
      'Hints, one at a time',
      rule.hints.map((hint, i) => `${i + 1}. ${hint}`),
    ),
    ...rule.examples.wrong.flatMap((example) => printExample('Not like this', example)),
    ...rule.examples.right.flatMap((example) => printExample('But like this', example)),
    ...section(
      'What a profile may set',
      Object.entries(rule.parameters).map(
        ([name, parameter]) =>
          `${name} = ${String(parameter.value)}. ${parameter.statement}${limits(parameter)}`,
      ),
    ),
    ...section('Where handbooks disagree', disagreementAbout(rule)),
    ...section('Source', [rule.source]),
  ];
  return `${lines.join('\n').trimEnd()}\n`;
}

/** Who allows what, and how each house profile takes it; nothing where the books are of one mind. */
export function disagreementAbout({ id, severity, parameters, disagreement }: Rule): string[] {
  if (disagreement === undefined) return [];
  const stances = PROFILES.map(({ name, rules }) => {
    const set = rules[id];
    const as = set?.severity ?? severity;
    // A severity that a profile sets holds for every place; only without one do the parameters tell.
    const told = set?.severity === undefined ? { ...defaultsOf(parameters), ...set?.parameters } : {};
    const special = Object.entries(told)
      .filter(([, value]) => isSeverity(value) && value !== as)
      .map(([parameter, value]) => `${parameter} = ${value}`);
    const besides = special.length === 0 ? '' : ` (${listed(special)})`;
    return `${name} ${as === 'off' ? 'leaves it out' : `takes it as a ${as}${besides}`}`;
  });
  return [disagreement, `Of the profiles here ${listed(stances)}.`];
}

function defaultsOf(parameters: Rule['parameters']): Record<string, number | string> {
  return Object.fromEntries(Object.entries(parameters).map(([name, { value }]) => [name, value]));
}

function isSeverity(value: number | string): boolean {
  return SEVERITIES.some((severity) => severity === value);
}

function section(title: string, paragraphs: readonly string[]): string[] {
  return paragraphs.length === 0 ? [] : [title, ...paragraphs.flatMap((text) => wrap(text, WIDTH, '  ')), ''];
}

function printExample(title: string, example: Example): string[] {
  return [
    ...wrap(`${title}: ${example.caption}`, WIDTH),
    '',
    ...example.text
      .trim()
      .split('\n')
      .map((line) => `    ${line.trim()}`),
    '',
  ];
}

function limits(parameter: Parameter): string {
  switch (parameter.kind) {
    case 'range':
      return ` From ${parameter.least} to ${parameter.most}.`;
    case 'choice':
      return ` One of: ${parameter.choices.join(', ')}.`;
    case 'text':
      return '';
  }
}
