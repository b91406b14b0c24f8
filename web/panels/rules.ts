/** The rule browser: what each rule says and why, with a wrong and a right example engraved. */
import { html, nothing, type TemplateResult } from 'lit';
import { capitalised, withArticle } from '../../src/english/words.ts';
import { readNotation } from '../../src/notation/index.ts';
import { CHORALE } from '../../src/profiles/profile.ts';
import { disagreementAbout } from '../../src/report/explain.ts';
import { reviewScore } from '../../src/review/review.ts';
import { completed } from '../../src/rules/example.ts';
import { RULES } from '../../src/rules/list.ts';
import { type Example, FAMILIES, type Rule } from '../../src/rules/rule.ts';
import { ALL_LAYERS, markedFinding, marksOf } from '../engrave/index.ts';
import type { Panel } from './context.ts';
import { type Drawn, engraved } from './engraved.ts';

export function rulesView({ state }: Panel): TemplateResult {
  const chosen = RULES.find((rule) => rule.id === state.rule);
  return html`<div class="view rules">
    <nav class="rule-list" aria-label="Rules" ?data-chosen=${chosen !== undefined}>
      <h1>Rules</h1>
      <p class="aside">
        ${RULES.length} rules. They advise; your teacher and the examining body’s own criteria decide.
      </p>
      ${FAMILIES.map((family) => familyList(family, chosen))}
    </nav>
    <article class="rule" aria-live="off">
      ${chosen === undefined ? html`<p class="empty">Choose a rule to read what it says, why, and how it looks.</p>` : ruleArticle(chosen)}
    </article>
  </div>`;
}

function familyList(family: string, chosen: Rule | undefined): TemplateResult | typeof nothing {
  const rules = RULES.filter((rule) => rule.family === family);
  if (rules.length === 0) return nothing;
  return html`<h2>${capitalised(family)}</h2>
    <ul>
      ${rules.map(
        (rule) =>
          html`<li><a href="#rules/${rule.id}" aria-current=${rule === chosen ? 'true' : nothing}>${rule.name}</a></li>`,
      )}
    </ul>`;
}

function ruleArticle(rule: Rule): TemplateResult {
  return html`
    <p class="back"><a href="#rules/">All rules</a></p>
    <h1 tabindex="-1">${rule.name}</h1>
    <p class="aside">${capitalised(rule.family)}. ${capitalised(withArticle(rule.severity))}, unless a profile says otherwise.</p>
    <p class="statement">${rule.statement}</p>
    <p>${rule.why}</p>
    ${rule.examples.wrong.map((example) => exampleView(rule, example, 'wrong'))}
    ${rule.examples.right.map((example) => exampleView(rule, example, 'right'))}
    <p class="aside">${SIGNS}</p>
    <h2>Hints, one at a time</h2>
    <ol class="plain-list">
      ${rule.hints.map((hint) => html`<li>${hint}</li>`)}
    </ol>
    ${parametersOf(rule)}
    ${disagreementView(rule)}
    <h2>Source</h2>
    <p>${rule.source}</p>
  `;
}

function disagreementView(rule: Rule): TemplateResult | typeof nothing {
  const sentences = disagreementAbout(rule);
  return sentences.length === 0
    ? nothing
    : html`<h2>Where handbooks disagree</h2>
        ${sentences.map((sentence) => html`<p>${sentence}</p>`)}`;
}

const SIGNS =
  'In the examples a number stands over the place that the rule is about, and its notes are coloured. Under the staves stand the chords: capitals for major, small letters for minor, ° for diminished, + for augmented. Small figures count from the bass: none for the root in the bass, 6 for the third, 64 for the fifth; 7, 65, 43 and 42 say the same of a seventh chord. A chord after a stroke is the one it leads to: V/V leads to V.';

/** Reviewing an example costs milliseconds, but each redraw of the page would do it again. */
const drawnExamples = new Map<Example, Drawn>();

function exampleView(rule: Rule, example: Example, kind: 'wrong' | 'right'): TemplateResult {
  let drawn = drawnExamples.get(example);
  if (drawn === undefined) {
    drawn = drawExample(rule, example);
    drawnExamples.set(example, drawn);
  }
  return html`<figure class="example ${kind}">
    <figcaption><strong>${kind === 'wrong' ? 'Not like this' : 'But like this'}:</strong> ${example.caption}</figcaption>
    ${engraved(drawn, `${kind === 'wrong' ? 'Wrong' : 'Right'} example: ${example.caption}`)}
    <details>
      <summary>As text</summary>
      <pre tabindex="0">${example.text.trim()}</pre>
    </details>
  </figure>`;
}

function drawExample(rule: Rule, example: Example): Drawn {
  const score = completed(readNotation(example.text).score, example);
  const review = reviewScore(score, CHORALE);
  // All that this rule finds, even where it would follow from a slip of another: here it is what is explained.
  const findings = review.findings
    .filter((finding) => finding.rule.id === rule.id)
    .map((finding, i) => markedFinding(finding, String(i + 1)));
  return {
    score,
    marks: { ...marksOf(review), findings },
    layers: { ...ALL_LAYERS, keys: false, ornaments: true, figuredBass: example.figures !== undefined },
  };
}

function parametersOf(rule: Rule): TemplateResult | typeof nothing {
  const parameters = Object.entries(rule.parameters);
  if (parameters.length === 0) return nothing;
  return html`<h2>What a profile may set</h2>
    <dl class="parameters">
      ${parameters.map(
        ([name, { value, statement }]) => html`<dt><code>${name}</code> = ${String(value)}</dt>
          <dd>${statement}</dd>`,
      )}
    </dl>`;
}
