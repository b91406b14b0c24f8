/** Which line of the file sings which voice, and how to change it. */
import { html, nothing, type TemplateResult } from 'lit';
import type { FoundLine, VoiceAssignment } from '../../src/musicxml/index.ts';
import { VOICE_WORDS, VOICES, type VoiceName } from '../../src/score/score.ts';
import type { Panel } from './context.ts';

export function voicesForm({ state, commands }: Panel, open: boolean): TemplateResult | typeof nothing {
  const { source } = state.exercise;
  if (source === undefined) return nothing;
  const { assignment, name } = source;
  const lines = assignment.lines.filter((line) => line.notes > 0 || line.given !== undefined);
  const change = (event: Event): void => {
    const form = (event.target as HTMLElement).closest('fieldset')!;
    const chosen = [...form.querySelectorAll('select')].flatMap((select) =>
      select.value === '' ? [] : [[select.name as VoiceName, select.value] as const],
    );
    commands.giveVoices(exchanged(event.target as HTMLSelectElement, chosen, assignment.lines));
  };
  return html`<details class="voices-form" ?open=${open}>
    <summary>Voices in ${name}</summary>
    <p class="aside">${source.doubtful ? nothing : assignment.how} Changing a voice reads the file again; undo brings back what you wrote since.</p>
    <fieldset>
      <legend class="visually-hidden">Which line sings which voice?</legend>
      ${VOICES.map(
        (voice) => html`<label
          ><span class="voice-word">${VOICE_WORDS[voice]}</span>
          <select name=${voice} @change=${change}>
            <option value="" ?selected=${!lines.some((line) => line.given === voice)}>not written yet</option>
            ${lines.map(
              (line) =>
                html`<option value=${line.id} ?selected=${line.given === voice}>${lineWords(line)}</option>`,
            )}
          </select></label
        >`,
      )}
    </fieldset>
  </details>`;
}

/** A line chosen for one voice is taken from the voice that had it, which gets the other's in exchange. */
function exchanged(
  changed: HTMLSelectElement,
  chosen: readonly (readonly [VoiceName, string])[],
  lines: readonly FoundLine[],
): VoiceAssignment {
  const voices: Partial<Record<VoiceName, string>> = Object.fromEntries(chosen);
  const before = lines.find((line) => line.given === changed.name)?.id;
  for (const voice of VOICES) {
    if (voice === changed.name || voices[voice] !== changed.value || changed.value === '') continue;
    if (before === undefined) delete voices[voice];
    else voices[voice] = before;
  }
  return voices;
}

function lineWords({ name, notes, lowest, highest }: FoundLine): string {
  const range = lowest === undefined ? '' : `, ${lowest} to ${highest}`;
  return `${name} (${notes} notes${range})`;
}
