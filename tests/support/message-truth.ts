/**
 * Whether what a message says is so: its named notes, voices, members and claims held against the notes that sound,
 * by definitions of this file's own. What a rule weighs is its affair; what it states as a fact must be one.
 */
import type { Finding, Review } from '../../src/review/review.ts';
import {
  type NoteName,
  parseNoteName,
  printPitch,
  STEPS,
  sameNoteName,
  stepIndex,
} from '../../src/score/pitch.ts';
import { placeAt, printPlace } from '../../src/score/place.ts';
import { VOICE_WORDS, VOICES, type VoiceName } from '../../src/score/score.ts';
import { type Slice, type Tone, toneIn, writtenPitch } from '../../src/score/texture.ts';
import { barLength } from '../../src/score/time.ts';

const NOTE = '[A-G](?:#{1,2}|b{1,2})?';
const PITCH = `${NOTE}\\d`;
const VOICE = Object.values(VOICE_WORDS).join('|');

/** One sentence for each thing stated that is not so. */
export function untruths(review: Review): string[] {
  return review.findings.flatMap((finding) => {
    const context = { review, finding, slices: slicesOf(review, finding) };
    const wrong = CLAIMS.flatMap((claim) => claim(context));
    const place = printPlace(placeAt(review.score, finding.from));
    return wrong.map((what) => `${place}, ${finding.rule.id}: ${what} in “${finding.message}”`);
  });
}

interface Context {
  readonly review: Review;
  readonly finding: Finding;
  /** What sounds in the place told of. */
  readonly slices: readonly Slice[];
}

type Claim = (context: Context) => string[];

const CLAIMS: readonly Claim[] = [
  voicesSingWhatTheyAreSaidTo,
  notesAreSungSomewhere,
  missingThirdsAreMissing,
  missingMembersOfTheLastChordAreMissing,
  rootsThatNobodySings,
  doublingsAreDoubled,
  sevenths,
  rootsInTheBass,
  sixFours,
];

function slicesOf({ analysis }: Review, { from, until }: Finding): Slice[] {
  return analysis.texture.slices.filter((slice) => slice.at < until && slice.until > from);
}

/** `F#4 in the alto`, `alto F#4`: that voice has that note there, or in the bar before or after. */
function voicesSingWhatTheyAreSaidTo({ review, finding }: Context): string[] {
  const named = [
    ...matches(finding.message, `(${PITCH}) in the (${VOICE})`).map(([pitch, voice]) => [pitch, voice]),
    ...matches(finding.message, `(${VOICE}) (${PITCH})`).map(([voice, pitch]) => [pitch, voice]),
  ];
  return named.flatMap(([pitch, word]) => {
    const voice = VOICES.find((v) => VOICE_WORDS[v] === word)!;
    return sings(review, finding, pitch!, [voice]) ? [] : [`the ${word} does not sing ${pitch}`];
  });
}

/** Every pitch that is named at all is sung there by one of the voices concerned, or by any where none is. */
function notesAreSungSomewhere({ review, finding }: Context): string[] {
  return matches(finding.message, `\\b(${PITCH})\\b`).flatMap(([pitch]) => {
    // What a voice sings with ease is not what it sings.
    if (finding.rule.id === 'voice-range' || sings(review, finding, pitch!, VOICES)) return [];
    return [`nobody sings ${pitch}`];
  });
}

function sings({ analysis }: Review, finding: Finding, pitch: string, voices: readonly VoiceName[]): boolean {
  const bar = barLength(analysis.texture.score.bars[0]!.metre);
  return voices.some((voice) =>
    analysis.texture.tones[voice].some(
      (tone) =>
        tone.until > finding.from - bar &&
        tone.at < finding.until + bar &&
        printPitch(writtenPitch(tone)) === pitch,
    ),
  );
}

function missingThirdsAreMissing({ finding, slices }: Context): string[] {
  return matches(finding.message, `chord on (${NOTE}) has no third`).flatMap(([root]) =>
    sounds(slices, letter(root!, 2)) ? [`a third above ${root} sounds`] : [],
  );
}

function missingMembersOfTheLastChordAreMissing({ review, finding, slices }: Context): string[] {
  return matches(finding.message, 'The last chord has no ([a-z, ]+?):').flatMap(([what]) => {
    const root = review.analysis.chords.findLast((chord) => chord.at < finding.until)?.root;
    if (root === undefined) return ['there is no last chord'];
    const steps = { root: 0, third: 2, fifth: 4 };
    return (['root', 'third', 'fifth'] as const).flatMap((member) =>
      what!.includes(member) && sounds(slices, letterOf(root, steps[member])) ? [`its ${member} sounds`] : [],
    );
  });
}

function rootsThatNobodySings({ finding, slices }: Context): string[] {
  return matches(finding.message, `nobody sings (${NOTE})\\b`).flatMap(([name]) => {
    const note = parseNoteName(name!);
    const sung = tonesOf(slices).some((tone) => note !== undefined && sameNoteName(tone.pitch, note));
    return sung ? [`somebody sings ${name}`] : [];
  });
}

/** `… is doubled: F#4 in the alto and F#3 in the tenor`: at one moment two voices have the note. */
function doublingsAreDoubled({ finding, slices }: Context): string[] {
  if (!/is doubled/.test(finding.message)) return [];
  const [first] = finding.tones;
  if (first === undefined) return ['nothing is named'];
  const together = slices.some(
    (slice) =>
      VOICES.filter((voice) => {
        const tone = toneIn(slice, voice);
        return tone !== undefined && tone.pitch.step === first.pitch.step;
      }).length > 1,
  );
  return together ? [] : ['no two voices have it at once'];
}

/** A seventh stands over its root, or where the root is left out over the chord's third. */
function sevenths({ review, finding }: Context): string[] {
  const [named] = matches(finding.message, `(${PITCH}) in the (?:${VOICE}) is the seventh of the chord`);
  if (named === undefined) return [];
  const written = finding.tones.find((tone) => printPitch(tone.pitch) === named[0]);
  // As it is meant, where it was written with the wrong letter.
  const tone = review.analysis.texture.tones[written?.voice ?? 'S'].find(({ id }) => id === written?.id);
  if (tone === undefined) return ['the seventh is none of the notes concerned'];
  const bar = barLength(review.score.bars[0]!.metre);
  const around = review.analysis.texture.slices.filter(
    (slice) => slice.at < tone.until && slice.until > Math.min(tone.at, finding.from - bar / 4),
  );
  return sounds(around, letterOf(tone.pitch, 1)) || sounds(around, letterOf(tone.pitch, 3))
    ? []
    : ['neither root nor third sounds with it'];
}

function rootsInTheBass({ finding, slices }: Context): string[] {
  return matches(finding.message, `has its root, (${NOTE}), in the bass`).flatMap(([name]) => {
    const note = parseNoteName(name!)!;
    const held = slices.some((slice) => {
      const bass = toneIn(slice, 'B');
      return bass !== undefined && sameNoteName(bass.pitch, note);
    });
    return held ? [] : [`the bass does not sing ${name}`];
  });
}

/** A six-four has a fourth above the bass that sounds, a sixth, or both. */
function sixFours({ finding, slices }: Context): string[] {
  if (!/six-four/.test(finding.rule.id)) return [];
  const held = slices.some((slice) => {
    const bass = toneIn(slice, 'B');
    return (
      bass !== undefined &&
      (sounds([slice], letterOf(bass.pitch, 3)) || sounds([slice], letterOf(bass.pitch, 5)))
    );
  });
  return held ? [] : ['no fourth and no sixth sounds above the bass'];
}

function tonesOf(slices: readonly Slice[]): Tone[] {
  return slices.flatMap((slice) => VOICES.flatMap((voice) => toneIn(slice, voice) ?? []));
}

function sounds(slices: readonly Slice[], step: string): boolean {
  return tonesOf(slices).some((tone) => tone.pitch.step === step);
}

function letter(name: string, up: number): string {
  return letterOf(parseNoteName(name)!, up);
}

function letterOf({ step }: Pick<NoteName, 'step'>, up: number): string {
  return STEPS[(stepIndex(step) + up) % STEPS.length]!;
}

function matches(text: string, pattern: string): string[][] {
  return [...text.matchAll(new RegExp(pattern, 'g'))].map((match) => match.slice(1));
}
