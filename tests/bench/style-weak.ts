/**
 * Weak work made from real chorales: the tune stays, the lower voices are stripped to one chord a beat (`block`), with
 * the bass on roots (`roots`), or with nothing but I, IV and V (`primary`).
 */
import { analyse } from '../../src/harmony/analyse.ts';
import type { Analysis, Key } from '../../src/harmony/analysis.ts';
import { degreeOf } from '../../src/harmony/questions/degrees.ts';
import { homeKey } from '../../src/harmony/questions/home-key.ts';
import { memberOf } from '../../src/harmony/questions/members.ts';
import { chordAt } from '../../src/harmony/questions/moments.ts';
import { keyFacts } from '../../src/harmony/tonal.ts';
import { type NoteName, type Pitch, semitone } from '../../src/score/pitch.ts';
import type { Note, Score, VoiceEvent, VoiceName } from '../../src/score/score.ts';
import { type Tone, textureOf } from '../../src/score/texture.ts';
import type { Beat } from '../../src/style/measure.ts';
import { musicOf } from '../../src/style/music.ts';

export const WEAKNESSES = ['block', 'roots', 'primary'] as const;
export type Weakness = (typeof WEAKNESSES)[number];

type LowerVoice = Exclude<VoiceName, 'S'>;

/** The chorale made weak, analysed anew. */
export function weakened(analysis: Analysis, weakness: Weakness): Analysis {
  const { score } = analysis.texture;
  const { beats } = musicOf(analysis);
  const lower = (voice: LowerVoice) => voiceOf(analysis, beats, voice, weakness);
  const weak: Score = {
    ...score,
    voices: { S: score.voices.S, A: lower('A'), T: lower('T'), B: lower('B') },
  };
  return analyse(textureOf(weak));
}

function voiceOf(
  analysis: Analysis,
  beats: readonly Beat[],
  voice: LowerVoice,
  weakness: Weakness,
): VoiceEvent[] {
  const { S } = analysis.texture.score.voices;
  const events: VoiceEvent[] = [];
  let at = 0;
  let last: Pitch | undefined;
  for (const beat of beats) {
    if (beat.from > at) events.push({ kind: 'rest', at, duration: beat.from - at });
    const plain = stripped(analysis, beat, voice);
    const pitch = plain && changed(analysis, beat, { voice, plain, last, weakness });
    const fermata = S.some(
      (event) => event.kind !== 'gap' && event.fermata && event.at >= beat.from && event.at < beat.until,
    );
    const marks = fermata ? { fermata: true as const } : {};
    const place = { at: beat.from, duration: beat.until - beat.from, ...marks };
    const event: Note | VoiceEvent = pitch ? { kind: 'note', ...place, pitch } : { kind: 'rest', ...place };
    events.push(event);
    if (pitch) last = pitch;
    at = beat.until;
  }
  return events;
}

/** What a voice sings on a beat with its ornaments taken away. */
function stripped(analysis: Analysis, beat: Beat, voice: LowerVoice): Pitch | undefined {
  const tones = analysis.texture.tones[voice].filter(
    (tone) => tone.at < beat.until && tone.until > beat.from,
  );
  const chord = chordAt(analysis, beat.from);
  const belongs = (tone: Tone) => chord === undefined || memberOf(chord, tone.pitch) !== undefined;
  return (tones.find(belongs) ?? tones[0])?.pitch;
}

function changed(
  analysis: Analysis,
  beat: Beat,
  about: {
    readonly voice: LowerVoice;
    readonly plain: Pitch;
    readonly last: Pitch | undefined;
    readonly weakness: Weakness;
  },
): Pitch {
  const { voice, plain, last, weakness } = about;
  const near = last ?? plain;
  if (weakness === 'block') return plain;
  if (weakness === 'roots') {
    const chord = chordAt(analysis, beat.from);
    return voice === 'B' && chord !== undefined ? nearest(chord.root, near) : plain;
  }
  const members = primaryTriad(analysis, beat);
  if (voice === 'B') return nearest(members[0]!, near);
  return members.map((name) => nearest(name, plain)).sort((a, b) => apart(a, plain) - apart(b, plain))[0]!;
}

const apart = (a: Pitch, b: Pitch) => Math.abs(semitone(a) - semitone(b));

/** The note of this name nearest to a pitch, in the bass's compass where it is low. */
function nearest(name: NoteName, to: Pitch): Pitch {
  return [-1, 0, 1]
    .map((by) => ({ ...name, octave: to.octave + by }))
    .sort((a, b) => apart(a, to) - apart(b, to))[0]!;
}

/** I, IV or V of the home key, whichever the tune's note belongs to; the dominant of minor has its leading note. */
function primaryTriad(analysis: Analysis, beat: Beat): readonly NoteName[] {
  const key: Key = homeKey(analysis);
  const { scale, harmonic } = keyFacts(key);
  const triad = (degree: number) =>
    [0, 2, 4].map((up) => (degree === 5 ? harmonic : scale)[(degree - 1 + up) % 7]!);
  const tone = analysis.texture.tones.S.find(({ at, until }) => at <= beat.from && until > beat.from);
  const degree = tone ? degreeOf(tone.pitch, key).degree : 1;
  const ends = analysis.phrases.some((phrase) => phrase.until === beat.until);
  if (degree === 5 || degree === 1) return triad(degree === 5 && !ends ? 5 : degree === 5 ? 1 : ends ? 1 : 4);
  return triad({ 2: 5, 3: 1, 4: 4, 6: 4, 7: 5 }[degree] ?? 1);
}
