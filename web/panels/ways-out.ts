/** How many single-note changes would clear a finding, and in which voice; only a teacher sees which they are. */
import { html, nothing, type TemplateResult } from 'lit';
import { withSigns } from '../../src/report/sentences.ts';
import type { Finding } from '../../src/review/review.ts';
import { waysOutInWords } from '../../src/review/ways-out-words.ts';
import { printPitch } from '../../src/score/pitch.ts';
import { placeAt, printPlace } from '../../src/score/place.ts';
import { VOICE_WORDS } from '../../src/score/score.ts';
import { withholds } from '../state/brief.ts';
import type { PlainWaysOut } from '../worker/orders.ts';
import type { Panel } from './context.ts';

/** The rest of them says no more than the first few. */
const MOST_SHOWN = 12;

/** True where a finding has notes to try others in place of, and the exercise allows that help. */
export function hasWaysOut(panel: Panel, finding: Finding): boolean {
  return finding.tones.length > 0 && !withholds(panel.state, 'ways out');
}

/** The last hint: how many ways out there proved to be; until they are counted, what the chord has in reach. */
export function lastHint(panel: Panel, finding: Finding, inReach: string): string {
  const { waysOut } = panel.state;
  if (waysOut?.finding !== finding.id || !hasWaysOut(panel, finding)) return inReach;
  return waysOut.ways === 'asked' ? `${inReach} Trying every note…` : waysOutInWords(waysOut.ways);
}

/** `told`: the last hint says how many there are, and they need not be said again. */
export function waysOutView(panel: Panel, finding: Finding, told: boolean): TemplateResult | typeof nothing {
  const { waysOut, settings, reviewed } = panel.state;
  if (!hasWaysOut(panel, finding)) return nothing;
  if (waysOut === undefined || waysOut.finding !== finding.id)
    return html`<p class="ways-out"><button type="button" @click=${() => panel.commands.findWaysOut(finding.id)}>Is there a way out?</button></p>`;
  if (told && (waysOut.ways === 'asked' || !settings.teacher)) return nothing;
  if (waysOut.ways === 'asked') return html`<p class="ways-out aside">Trying every note…</p>`;
  const { ways } = waysOut;
  const score = reviewed?.review.score;
  return html`<div class="ways-out" role="status">
    ${told ? nothing : html`<p>${waysOutInWords(ways)}</p>`}
    ${settings.teacher && score ? html`<ul>${ways.ways.slice(0, MOST_SHOWN).map((way) => html`<li>${wayWords(way, score)}</li>`)}</ul>` : nothing}
    ${settings.teacher && ways.total > MOST_SHOWN ? html`<p class="aside">and ${ways.total - MOST_SHOWN} more</p>` : nothing}
  </div>`;
}

function wayWords(
  { voice, at, was, pitch }: PlainWaysOut['ways'][number],
  score: Parameters<typeof placeAt>[0],
): string {
  const place = printPlace(placeAt(score, at));
  return withSigns(`${place}, ${VOICE_WORDS[voice]}: ${printPitch(pitch)} for ${printPitch(was)}`);
}
