/** Which line of the file sings which voice, and how to change it. */
import { html, nothing, type TemplateResult } from 'lit';
import type { FoundLine, VoiceAssignment } from '../../src/musicxml/index.ts';
import { VOICES, type VoiceName } from '../../src/score/score.ts';
import type { Panel } from './context.ts';
import { linesToChoose, voiceChoices } from './voice-choices.ts';

export function voicesForm({ state, commands }: Panel, open: boolean): TemplateResult | typeof nothing {
  const { source } = state.exercise;
  if (source === undefined) return nothing;
  const { assignment, name } = source;
  const lines = linesToChoose(assignment.lines);
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
      ${voiceChoices(lines, change)}
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
