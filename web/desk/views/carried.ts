/** What was decided about the draft before: what holds here too, and what the teacher is asked about. */
import { html, nothing, type TemplateResult } from 'lit';
import type { Carried, ScriptView } from '../../../src/desk/wire-shapes.ts';
import type { Actions } from '../actions.ts';
import { barInWords, beatInWords, placeIn } from '../places.ts';

export function carriedPart(view: ScriptView, actions: Actions): TemplateResult | typeof nothing {
  const { carried } = view;
  const shown = carried?.decisions.filter(({ standing }) => standing !== 'left') ?? [];
  if (carried === undefined || shown.length === 0) return nothing;
  const asked = shown.filter(({ standing }) => standing === 'asked').length;
  return html`<details class="carried" open>
    <summary>
      From draft ${carried.draft}:
      ${shown.length - asked} carried over${asked === 0 ? '' : html`, <strong>${asked} to decide</strong>`}
    </summary>
    <ul>
      ${shown.map((one) => carriedItem(one, view, actions))}
    </ul>
  </details>`;
}

function carriedItem(one: Carried, view: ScriptView, actions: Actions): TemplateResult {
  const { decision, finding, sure, standing } = one;
  const what = wordsFor(one, view);
  const answer = (keep: boolean): void =>
    void actions.carry(decision.id, keep, `${keep ? 'Carried over' : 'Left'}: ${what.replace(/\.$/, '')}.`);
  return html`<li class=${standing}>
    <span>
      ${finding === undefined ? what : html`<button type="button" class="quiet" @click=${() => actions.choose(finding)}>${what}</button>`}
      <small>${standing === 'carried' ? 'carried over' : sure ? 'the notes are the same' : reasonToAsk(one)}</small>
    </span>
    ${standing === 'asked' ? html`<button type="button" @click=${() => answer(true)}>Carry over</button>` : nothing}
    <button type="button" class="quiet" @click=${() => answer(false)}>${standing === 'asked' ? 'Leave' : 'Drop'}</button>
  </li>`;
}

function reasonToAsk({ decision }: Carried): string {
  return decision.kind === 'remark' ? 'does it still hold?' : 'the notes around it have changed';
}

/** `Overruled: Parallel fifths, bar 3 (as sung in class)`. */
function wordsFor({ decision, finding: id, from }: Carried, view: ScriptView): string {
  if (decision.kind === 'remark') return `Remark at ${placeIn(view, { from: from ?? 0 })}: ${decision.text}`;
  const finding = view.findings.find((one) => one.id === id);
  const place =
    finding === undefined
      ? 'a finding'
      : `${finding.name}, ${barInWords(finding.bar)}, beat ${beatInWords(finding.beat)}`;
  if (decision.kind === 'severity') return `Counts as a ${decision.severity}: ${place}`;
  return `Overruled: ${place}${decision.reason === undefined ? '' : ` (${decision.reason})`}`;
}
