/** A house profile: how severely each rule is taken, and what its parameters are. */
import type { Severity } from '../rules/rule.ts';

export interface RuleSetting {
  readonly severity?: Severity | 'off';
  readonly parameters?: Readonly<Record<string, number | string>>;
}

export interface Profile {
  /** Kebab case: `chorale`. */
  readonly name: string;
  /** One sentence: whom it is for. */
  readonly statement: string;
  /** Only what differs from the rules' own severities and defaults, by rule id. */
  readonly rules: Readonly<Record<string, RuleSetting>>;
}

export const CHORALE: Profile = {
  name: 'chorale',
  statement: 'The style of the four-part chorales: each rule as it stands.',
  rules: {},
};
