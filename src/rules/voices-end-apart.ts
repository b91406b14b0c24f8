import { capitalised } from '../english/words.ts';
import { placeAt, printPlace } from '../score/place.ts';
import { endOf, VOICES } from '../score/score.ts';
import type { Texture } from '../score/texture.ts';
import { defineRule, type Occurrence } from './rule.ts';
import { voiceList } from './wording.ts';

export const voicesEndApart = defineRule({
  id: 'voices-end-apart',
  name: 'Voices end apart',
  family: 'rhythm and notation',
  statement: 'All four voices leave the last chord together.',
  why: 'The last chord is where the hymn comes to rest; a voice that stops before the others makes it sound as if a singer had got lost.',
  hints: [
    'Look at the end of each voice and see which of them stops first.',
    'Hold the early voice for as long as the others sing.',
    'Notation: the final chord has the same length in all four voices.',
  ],
  source: 'E. Gould, Behind Bars, 2011, chapters on rhythm and metre (from memory): every part fills the bar',
  severity: 'fault',
  weight: 6,
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'The alto stops a beat before the others.',
        text: `key: F major
metre: 4/4
S: A4 G4 G4*2 | F4*4! |
A: F4 F4 E4*2 | C4*3 r |
T: C4 D4 C4*2 | A3*4! |
B: F3 Bb2 C3*2 | F2*4! |`,
      },
    ],
    right: [
      {
        caption: 'Four voices, one ending.',
        text: `key: F major
metre: 4/4
S: A4 G4 G4*2 | F4*4! |
A: F4 F4 E4*2 | C4*4! |
T: C4 D4 C4*2 | A3*4! |
B: F3 Bb2 C3*2 | F2*4! |`,
      },
    ],
  },
  check: ({ texture }) => endings(texture),
});

function endings(texture: Texture): Occurrence[] {
  const { score } = texture;
  // Where something is still to be written at the end, there is no ending to judge yet.
  const written = VOICES.every((voice) => score.voices[voice].at(-1)?.kind !== 'gap');
  const last = VOICES.flatMap((voice) => texture.tones[voice].at(-1) ?? []);
  if (!written || last.length < VOICES.length || endOf(score) === 0) return [];
  const latest = Math.max(...last.map((tone) => tone.until));
  const early = last.filter((tone) => tone.until < latest);
  if (early.length === 0) return [];
  const from = Math.min(...early.map((tone) => tone.until));
  const voices = early.map((tone) => tone.voice);
  const verb = voices.length === 1 ? 'stops' : 'stop';
  return [
    {
      voices,
      from: Math.min(...early.map((tone) => tone.at)),
      until: latest,
      tones: early,
      message: capitalised(
        `${voiceList(voices)} ${verb} at ${printPlace(placeAt(score, from))}, and the other voices sing on to the end of bar ${placeAt(score, latest - 1).bar.number}.`,
      ),
    },
  ];
}
