/** Hearing the exercise: play, tempo, loop, and each voice louder, softer or alone. */

import { html, nothing, type TemplateResult } from 'lit';
import { beatsAMinute, countedBeat } from '../../src/report/sentences.ts';
import { firstMetre } from '../../src/score/place.ts';
import { VOICE_WORDS, VOICES, type VoiceName } from '../../src/score/score.ts';
import { tempoMarks } from '../../src/score/tempo.ts';
import { USUAL_TEMPO } from '../sound/timeline.ts';
import { withholds } from '../state/brief.ts';
import type { Mixer } from '../state/page.ts';
import type { Panel } from './context.ts';
import { PLAY, STOP } from './icons.ts';

export function transportView(panel: Panel): TemplateResult {
  const { state, commands } = panel;
  const { mixer, playing, stretch } = state;
  const words = html`<p class="caret-words"><span id="caret-words"></span> <span id="note-words" class="note-words"></span></p>`;
  if (withholds(state, 'playback'))
    return html`<section class="transport" aria-label="Hear">
      ${words}
      <p class="aside">Set without playback.</p>
    </section>`;
  return html`<section class="transport" aria-label="Hear">
    ${words}
    <button
      type="button"
      class="main-action play"
      title="Space on the stave, Ctrl Enter anywhere"
      @click=${commands.playOrStop}
    >
      ${playing ? html`${STOP} Stop` : html`${PLAY} ${stretch ? 'Play the stretch' : 'Play'}`}
    </button>
    <div class="pace wide">${paceControls(panel)}</div>
    <details class="menu mixer">
      <summary class="button">${mixerWords(mixer)}</summary>
      <div class="menu-body">
        <div class="pace narrow">${paceControls(panel)}</div>
        ${VOICES.map((voice) => voiceRow(panel, voice))}
        <p class="aside">${'requestMIDIAccess' in navigator ? html`<button type="button" class="quiet" @click=${commands.connectKeyboard}>Write from a MIDI keyboard</button>` : 'This browser offers no MIDI keyboard.'}</p>
      </div>
    </details>
  </section>`;
}

/** Tempo, loop and count-in: beside the button where there is room, in the menu on a phone. */
function paceControls({ state, actions, commands }: Panel): TemplateResult {
  const { mixer } = state;
  const own = state.history.now.score.tempo ?? USUAL_TEMPO;
  const metre = firstMetre(state.history.now.score);
  const beat = countedBeat(metre);
  const changes = tempoMarks(state.history.now.score).length > 1;
  return html`
    <label class="tempo" title=${changes ? 'At the beginning; where the exercise changes its tempo, the music does so in proportion' : nothing}
      >Tempo
      <input
        type="number"
        min="30"
        max="240"
        step="any"
        aria-label="Tempo, ${beat.name}s a minute"
        .value=${String(beatsAMinute(mixer.tempo ?? own, metre))}
        @change=${(event: Event) => {
          const value = Number((event.target as HTMLInputElement).value);
          const tempo = value === beatsAMinute(own, metre) ? undefined : value * beat.crotchets;
          if (value >= 30 && value <= 240) actions.setMixer({ tempo });
        }}
    /></label>
    <button type="button" @click=${actions.tapTempo} title="Tap in time: the tempo follows">Tap</button>
    <label class="check"
      ><input type="checkbox" .checked=${mixer.loop} @change=${() => actions.setMixer({ loop: !mixer.loop })} /> Loop</label
    >
    <label class="check"
      ><input
        type="checkbox"
        .checked=${mixer.countIn}
        @change=${() => actions.setMixer({ countIn: !mixer.countIn })}
      />
      Count in</label
    >
    <label class="check"
      ><input
        type="checkbox"
        .checked=${mixer.metronome}
        @change=${() => actions.setMixer({ metronome: !mixer.metronome })}
      />
      Metronome</label
    >
    <button type="button" @click=${commands.giveNotes} title="From the bass up, then together">Give the notes</button>
  `;
}

function voiceRow({ state, actions }: Panel, voice: VoiceName): TemplateResult {
  const { mixer } = state;
  const alone = mixer.alone.includes(voice);
  const muted = mixer.muted.includes(voice);
  const toggled = (voices: readonly VoiceName[]) =>
    voices.includes(voice) ? voices.filter((v) => v !== voice) : [...voices, voice];
  return html`<div class="voice-row" role="group" aria-label=${VOICE_WORDS[voice]}>
    <span class="voice-word">${VOICE_WORDS[voice]}</span>
    <input
      type="range"
      min="0"
      max="1"
      step="0.05"
      aria-label="Loudness of the ${VOICE_WORDS[voice]}"
      .value=${String(mixer.volume[voice])}
      @input=${(event: Event) =>
        actions.setMixer({
          volume: { ...mixer.volume, [voice]: Number((event.target as HTMLInputElement).value) },
        })}
    />
    <button
      type="button"
      class="toggle"
      aria-pressed=${alone}
      aria-label="${VOICE_WORDS[voice]} alone"
      @click=${() => actions.setMixer({ alone: toggled(mixer.alone) })}
    >
      Alone
    </button>
    <button
      type="button"
      class="toggle"
      aria-pressed=${muted}
      aria-label="${VOICE_WORDS[voice]} silent"
      @click=${() => actions.setMixer({ muted: toggled(mixer.muted) })}
    >
      Silent
    </button>
  </div>`;
}

function mixerWords({ alone, muted }: Mixer): string {
  if (alone.length === 0 && muted.length > 0)
    return `Without ${muted.map((voice) => VOICE_WORDS[voice]).join(', ')}`;
  if (alone.length === 0) return 'All voices';
  return `Only ${alone.map((voice) => VOICE_WORDS[voice]).join(', ')}`;
}
