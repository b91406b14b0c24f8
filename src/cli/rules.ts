/** `partwise rules` and `partwise explain`. */

import pc from 'picocolors';
import { capitalised } from '../english/words.ts';
import { Refused } from '../refusal/refusal.ts';
import { explainRule } from '../report/explain.ts';
import { jsonRules } from '../report/rules.ts';
import { wrap } from '../report/wrap.ts';
import { RULES } from '../rules/list.ts';
import { FAMILIES } from '../rules/rule.ts';
import { EXIT } from './exit.ts';

const colour = pc.createColors(process.stdout.isTTY === true && pc.isColorSupported);

/** Lists every rule by family, with what it says. */
export function rulesCommand(options: { readonly json?: true }): number {
  if (options.json) {
    process.stdout.write(`${JSON.stringify(jsonRules())}\n`);
    return EXIT.fine;
  }
  const lines = FAMILIES.flatMap((family) => {
    const rules = RULES.filter((rule) => rule.family === family);
    if (rules.length === 0) return [];
    return [
      colour.bold(capitalised(family)),
      ...rules.flatMap((rule) => [`  ${rule.id} (${rule.severity})`, ...wrap(rule.statement, 80, '    ')]),
      '',
    ];
  });
  process.stdout.write(`${lines.join('\n')}\nMore about one of them: partwise explain RULE\n`);
  return EXIT.fine;
}

export function explainCommand(id: string): number {
  const rule = RULES.find((r) => r.id === id);
  if (rule === undefined) {
    const near = RULES.filter((r) => sharesWord(r.id, id)).map((r) => r.id);
    const advice =
      near.length > 0 ? `Did you mean: ${near.join(', ')}?` : 'See the list with: partwise rules';
    throw new Refused(`There is no rule called “${id}”. ${advice}`);
  }
  process.stdout.write(explainRule(rule));
  return EXIT.fine;
}

/** `fifths` and `paralel-fifths` both come near `parallel-fifths`. */
function sharesWord(id: string, asked: string): boolean {
  const words = asked.toLowerCase().split(/[\s_-]+/);
  return id.split('-').some((word) => words.some((w) => w.length > 3 && (w === word || `${w}s` === word)));
}
