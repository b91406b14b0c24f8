/** The rules as data for the service and `partwise rules --json`: all but their functions. */
import { RULES } from '../rules/list.ts';
import type { Rule } from '../rules/rule.ts';

export type JsonRule = Omit<Rule, 'check'>;

export function jsonRules(): JsonRule[] {
  return RULES.map(({ check: _check, ...texts }) => texts);
}
