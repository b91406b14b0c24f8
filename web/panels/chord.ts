/** The chord at the caret: its notes, what it does in the key, and how each voice's note belongs. */
import { html, nothing, type TemplateResult } from 'lit';
import { capitalised } from '../../src/english/words.ts';
import type { Chord, SecondReading } from '../../src/harmony/analysis.ts';
import { MEMBERS, memberOf, membersOf } from '../../src/harmony/questions/members.ts';
import { chordAt } from '../../src/harmony/questions/moments.ts';
import { ornamentOf } from '../../src/harmony/questions/ornaments.ts';
import { isSureOfKey } from '../../src/harmony/questions/seconds.ts';
import { chordLabel, numeral, printKey } from '../../src/harmony/words/labels.ts';
import { cadenceWords, functionOf, ornamentWords } from '../../src/harmony/words/words.ts';
import { secondInWords } from '../../src/report/chords.ts';
import { withSigns } from '../../src/report/sentences.ts';
import type { Review } from '../../src/review/review.ts';
import { printNoteName, printPitch } from '../../src/score/pitch.ts';
import { barAt, placeAt, printPlace } from '../../src/score/place.ts';
import { VOICE_WORDS, VOICES, type VoiceName } from '../../src/score/score.ts';
import { sliceAt } from '../../src/score/texture.ts';
import { withholds } from '../state/brief.ts';
import type { Panel } from './context.ts';
import { WITHHELD } from './seen.ts';

export function chordPanel(panel: Panel): TemplateResult {
  const { reviewed, caret, settings } = panel.state;
  if (withholds(panel.state, 'numerals')) return html`<p class="empty">${WITHHELD}</p>`;
  const { review } = reviewed ?? {};
  const chord = review && chordAt(review.analysis, caret.at);
  if (review === undefined || chord === undefined)
    return html`
      ${review ? steps(panel, review, undefined) : nothing}
      <p class="empty">
        No chord is heard at the caret. One is read where at least two voices sound; put the caret there.
      </p>
    `;
  const cadence = review.analysis.cadences.find((c) => c.goal === chord.index || c.approach === chord.index);
  return html`
    ${steps(panel, review, chord)}
    <h2 class="chord-name">
      <span class="numeral">${chordLabel(chord, settings.labels, barAt(review.score, chord.at).key.fifths) || numeral(chord.roman, chord.key)}</span>
      <span>${isSureOfKey(chord) ? '' : 'probably '}in ${withSigns(printKey(chord.key))}</span>
    </h2>
    <p class="chord-function">${capitalised(functionOf(chord))}.</p>
    <p>${capitalised(printPlace(placeAt(review.score, chord.at)))}. Its notes: ${notesOf(chord)}.</p>
    <table class="belonging">
      <caption>
        What each voice has at the caret
      </caption>
      <tbody>
        ${VOICES.map((voice) => voiceRow(review, chord, voice, caret.at))}
      </tbody>
    </table>
    ${
      cadence === undefined
        ? nothing
        : html`<p>
            It ${cadence.goal === chord.index ? 'closes' : 'prepares'} a ${cadenceWords(cadence).name} in
            ${withSigns(printKey(cadence.key))} (elsewhere: ${cadenceWords(cadence).otherName}).
          </p>`
    }
    ${secondsAt(review, chord).map(
      (second) => html`<p class="aside">
          ${capitalised(secondInWords(review, second, settings.labels))}. People might hear it either way.
        </p>`,
    )}
  `;
}

/** The second readings that the chord is part of. */
function secondsAt({ analysis }: Review, { index }: Chord): readonly SecondReading[] {
  return analysis.seconds.filter(({ chords }) => chords.some((chord) => chord.index === index));
}

function steps({ actions, state }: Panel, review: Review, chord: Chord | undefined): TemplateResult {
  const { chords } = review.analysis;
  const before = chords.findLast((c) => (chord ? c.index < chord.index : c.at < state.caret.at));
  const after = chords.find((c) => (chord ? c.index > chord.index : c.at > state.caret.at));
  const go = (name: string, to: Chord | undefined) =>
    html`<button
      type="button"
      ?disabled=${to === undefined}
      @click=${() => to && actions.setCaret(state.caret.voice, to.at)}
    >
      ${name}
    </button>`;
  return html`<div class="chord-steps">${go('Chord before', before)} ${go('Next chord', after)}</div>`;
}

function notesOf(chord: Chord): string {
  return membersOf(chord)
    .map((name, i) => `${withSigns(printNoteName(name))} (${MEMBERS[i]})`)
    .join(', ');
}

function voiceRow(review: Review, chord: Chord, voice: VoiceName, at: number): TemplateResult {
  const part = sliceAt(review.analysis.texture, at)?.parts[voice];
  const tone = part?.kind === 'tone' ? part.tone : undefined;
  const what =
    tone === undefined ? (part?.kind === 'rest' ? 'rest' : 'not written') : withSigns(printPitch(tone.pitch));
  return html`<tr>
    <th scope="row">${VOICE_WORDS[voice]}</th>
    <td class="pitch">${what}</td>
    <td>${tone === undefined ? '' : belonging(review, chord, tone, at)}</td>
  </tr>`;
}

function belonging(
  { analysis }: Review,
  chord: Chord,
  tone: Parameters<typeof ornamentOf>[1],
  at: number,
): string {
  const ornament = ornamentOf(analysis, tone, at);
  const member = memberOf(chord, tone.pitch);
  if (ornament === undefined) return member ?? 'foreign to the chord';
  const figures = ornament.figures === undefined ? '' : ` ${ornament.figures}`;
  const resolution =
    ornament.resolution === undefined
      ? ''
      : `, resolving to ${withSigns(printPitch(ornament.resolution.pitch))}`;
  return `dissonant: ${ornamentWords(ornament.kind)}${figures}${resolution}`;
}
