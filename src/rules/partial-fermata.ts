import { placeAt, printPlace } from '../score/place.ts';
import { VOICES, type VoiceName } from '../score/score.ts';
import { lastBegun, stretchesWithin } from '../score/search.ts';
import type { Texture, Tone } from '../score/texture.ts';
import type { Ticks } from '../score/time.ts';
import { defineRule, type Occurrence } from './rule.ts';
import { inOrder, voiceList } from './wording.ts';

export const partialFermata = defineRule({
  id: 'partial-fermata',
  name: 'Fermata in some voices only',
  family: 'rhythm and notation',
  statement: 'A fermata stands in all four voices.',
  why: 'Each singer reads one line: whoever has no fermata goes on while the others hold the chord.',
  hints: [
    'Look at the end of the phrase, voice by voice, and see who has the fermata.',
    'Put it over the note that each voice sings when the phrase comes to rest.',
    'Notation: a pause concerns every part, and is written in every part.',
  ],
  source: 'E. Gould, Behind Bars, 2011, on pauses in several parts at once (from memory)',
  severity: 'query',
  weight: 1,
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'The soprano has no fermata at the end of the phrase.',
        text: `key: D major
metre: 4/4
S: F#4 G4 F#4 E4 | D4*4 |
A: D4 D4 D4 C#4 | D4*4! |
T: A3 B3 A3 G3 | F#3*4! |
B: D3 G2 A2 A2 | D3*4! |`,
      },
    ],
    right: [
      {
        caption: 'All four voices pause together.',
        text: `key: D major
metre: 4/4
S: F#4 G4 F#4 E4 | D4*4! |
A: D4 D4 D4 C#4 | D4*4! |
T: A3 B3 A3 G3 | F#3*4! |
B: D3 G2 A2 A2 | D3*4! |`,
      },
    ],
  },
  check: ({ texture }) => pauses(texture),
});

interface Pause {
  readonly from: Ticks;
  until: Ticks;
  readonly with: Set<VoiceName>;
}

function pauses(texture: Texture): Occurrence[] {
  const places = pausesOf(texture);
  const all = new Set(places.flatMap((pause) => [...pause.with]));
  // A given melody often has the only fermatas there are: say once, at the first, what all the rest have in common.
  const never = VOICES.filter((voice) => !all.has(voice) && texture.tones[voice].length > 0);
  const occurrences: Occurrence[] = [];
  for (const pause of places) {
    const first = pause === places[0];
    const missing = VOICES.flatMap((voice) => {
      if (pause.with.has(voice) || (never.includes(voice) && !first)) return [];
      const tone = toneUnder(texture, voice, pause);
      return tone === undefined ? [] : [tone];
    });
    if (missing.length === 0) continue;
    const have = VOICES.filter((voice) => pause.with.has(voice));
    const lack = missing.map((tone) => tone.voice);
    const throughout = places.length > 1 && lack.every((voice) => never.includes(voice));
    const at = printPlace(placeAt(texture.score, pause.from));
    occurrences.push({
      // Closed scores often print one fermata a staff, or one in all: only a melody without one leaves it in doubt.
      severity: throughout || !lack.includes('S') ? 'remark' : 'query',
      voices: lack,
      from: pause.from,
      until: pause.until,
      tones: inOrder(missing),
      message: throughout
        ? `Only ${voiceList(have)} ${have.length === 1 ? 'has' : 'have'} fermatas, here and at the other phrase ends; ${voiceList(lack)} should have them too.`
        : `The fermata at ${at} stands in ${voiceList(have)}, but not in ${voiceList(lack)}.`,
    });
  }
  return occurrences;
}

/** Fermatas that sound together make one pause. */
function pausesOf(texture: Texture): Pause[] {
  const marks = VOICES.flatMap((voice) =>
    texture.score.voices[voice]
      .filter((event) => event.kind !== 'gap' && event.fermata)
      .map((event) => ({ voice, from: event.at, until: event.at + event.duration })),
  ).sort((a, b) => a.from - b.from);
  const found: Pause[] = [];
  for (const mark of marks) {
    const open = found.at(-1);
    if (open !== undefined && mark.from < open.until) {
      open.until = Math.max(open.until, mark.until);
      open.with.add(mark.voice);
    } else found.push({ from: mark.from, until: mark.until, with: new Set([mark.voice]) });
  }
  return found;
}

/** The last tone a voice sings under a pause; none where it rests or is not written to the pause's end. */
function toneUnder(texture: Texture, voice: VoiceName, pause: Pause): Tone | undefined {
  const events = texture.score.voices[voice];
  const first = Math.max(
    0,
    lastBegun(events, pause.from, ({ at }) => at),
  );
  for (let i = first; i < events.length && events[i]!.at < pause.until; i++)
    if (events[i]!.kind === 'gap') return undefined;
  return stretchesWithin(texture.tones[voice], pause.from, pause.until).at(-1);
}
