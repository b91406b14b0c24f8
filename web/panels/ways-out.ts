/** How many single-note changes would clear a finding, and in which voice; only a teacher sees which they are. */
import { html, nothing, type TemplateResult } from 'lit';
import type { Finding } from '../../src/review/review.ts';
import { waysOutInWords } from '../../src/review/ways-out.ts';
import { printPitch } from '../../src/score/pitch.ts';
import { placeAt, printPlace } from '../../src/score/place.ts';
import { VOICE_WORDS } from '../../src/score/score.ts';
import { withholds } from '../state/brief.ts';
import type { PlainWaysOut } from '../worker/orders.ts';
import type { Panel } from './context.ts';

/** The rest of them says no more than the first few. */
const MOST_SHOWN = 12;

export function waysOutView(panel: Panel, finding: Finding): TemplateResult | typeof nothing {
  const { waysOut, settings, reviewed } = panel.state;
  if (finding.tones.length === 0 || withholds(panel.state, 'ways out')) return nothing;
  if (waysOut === undefined || waysOut.finding !== finding.id)
    return html`<p class="ways-out"><button type="button" @click=${() => panel.commands.findWaysOut(finding.id)}>Is there a way out?</button></p>`;
  if (waysOut.ways === 'asked') return html`<p class="ways-out aside">Trying every note…</p>`;
  const { ways } = waysOut;
  const score = reviewed?.review.score;
  return html`<div class="ways-out" role="status">
    <p>${waysOutInWords(ways)}</p>
    ${settings.teacher && score ? html`<ul>${ways.ways.slice(0, MOST_SHOWN).map((way) => html`<li>${wayWords(way, score)}</li>`)}</ul>` : nothing}
    ${settings.teacher && ways.total > MOST_SHOWN ? html`<p class="aside">and ${ways.total - MOST_SHOWN} more</p>` : nothing}
  </div>`;
}

function wayWords(
  { voice, at, was, pitch }: PlainWaysOut['ways'][number],
  score: Parameters<typeof placeAt>[0],
): string {
  return `${printPlace(placeAt(score, at))}, ${VOICE_WORDS[voice]}: ${printPitch(pitch)} for ${printPitch(was)}`;
}
