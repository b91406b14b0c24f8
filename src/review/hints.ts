/**
 * Hints that close in on one place, made of its own facts: what to look at and listen for; which note is free to
 * move, and how far the other voices leave it room; and how many notes of the chord it can reach, by step or by leap.
 * None says which note to write, and the given voices are never the ones to change. Pure.
 */
import { capitalised, counted, listed, withArticle } from '../english/words.ts';
import type { Analysis } from '../harmony/analysis.ts';
import { membersOf } from '../harmony/questions/members.ts';
import { chordAt } from '../harmony/questions/moments.ts';
import { rangesIn, voiceRange } from '../rules/voice-range.ts';
import { intervalBetween, intervalName } from '../score/interval.ts';
import { type Pitch, printPitch, semitone, staffPlace } from '../score/pitch.ts';
import { placeAt, printPlace } from '../score/place.ts';
import { VOICE_WORDS, VOICES, type VoiceName } from '../score/score.ts';
import { sliceAt, type Tone, toneIn } from '../score/texture.ts';
import type { Finding } from './finding.ts';

export type Hints = readonly [string, string, string];

/** Rules whose remedy moves no note: which other notes it could be is beside the point. */
const NOT_MOVED: readonly string[] = [
  'divided-voice',
  'bar-length',
  'empty-beat',
  'partial-fermata',
  'voices-end-apart',
];

/** Voices that are given where nothing else is known: the melody is. */
const MOSTLY_GIVEN: readonly VoiceName[] = ['S'];

export function hintsFor(
  analysis: Analysis,
  finding: Finding,
  given: readonly VoiceName[] = MOSTLY_GIVEN,
): Hints {
  const { rule, tones } = finding;
  const look = `${placed(analysis, finding)}. ${finding.hint ?? rule.hints[0]}`;
  if (tones.length === 0 || NOT_MOVED.includes(rule.id)) return [look, rule.hints[1], rule.hints[2]];
  const free = freeTone(analysis, finding, given);
  if (free === undefined)
    return [look, `All that is concerned here is given, so it may stay. ${rule.hints[1]}`, rule.hints[2]];
  const room = roomOf(analysis, free);
  return [
    look,
    `${rule.hints[1]} ${roomWords(free, room, finding, given)}`,
    reachWords(analysis, free, room),
  ];
}

/** `Bar 3, beat 2: tenor D4–E4 and bass G2–A2`. */
function placed(analysis: Analysis, { from, tones, voices }: Finding): string {
  const place = capitalised(printPlace(placeAt(analysis.texture.score, from)));
  const lines = voices.map((voice) => {
    const sung = tones.filter((tone) => tone.voice === voice).map(({ pitch }) => printPitch(pitch));
    return [VOICE_WORDS[voice], sung.join('–')].filter((word) => word !== '').join(' ');
  });
  return lines.length === 0 ? place : `${place}: ${listed(lines)}`;
}

/** Inner voices are moved more easily than the bass, which carries the harmony. */
const EASIEST: readonly VoiceName[] = ['T', 'A', 'B', 'S'];

/** Rules whose matter lies in the bass, whichever notes they name. */
const IN_THE_BASS: readonly string[] = [
  'stray-six-four',
  'weak-six-four',
  'inverted-phrase-end',
  'diminished-root-position',
  'repeated-bass',
];

/** The last of the finding's notes in the voice that is moved most easily; where all are given, another note there. */
function freeTone(
  analysis: Analysis,
  { rule, tones, from }: Finding,
  given: readonly VoiceName[],
): Tone | undefined {
  const order = IN_THE_BASS.includes(rule.id) ? (['B', ...EASIEST] as const) : EASIEST;
  const voice = order.find((each) => !given.includes(each) && tones.some((tone) => tone.voice === each));
  if (voice !== undefined) return tones.findLast((tone) => tone.voice === voice);
  // A fault of the given melody's own line can't be mended by another voice.
  if (rule.family === 'melody' && new Set(tones.map((tone) => tone.voice)).size === 1) return undefined;
  const slice = sliceAt(analysis.texture, from);
  return (
    slice && EASIEST.filter((each) => !given.includes(each)).flatMap((each) => toneIn(slice, each) ?? [])[0]
  );
}

/** The notes between which a voice can move at a moment; absent where no voice sings there. */
interface Room {
  readonly above?: Tone;
  readonly below?: Tone;
}

function roomOf({ texture }: Analysis, tone: Tone): Room {
  const slice = sliceAt(texture, tone.at);
  const rank = VOICES.indexOf(tone.voice);
  const sung = (voices: readonly VoiceName[]) =>
    slice === undefined ? [] : voices.flatMap((voice) => toneIn(slice, voice) ?? []);
  const above = sung(VOICES.slice(0, rank)).at(-1);
  const below = sung(VOICES.slice(rank + 1))[0];
  return { ...(above && { above }), ...(below && { below }) };
}

function roomWords(tone: Tone, room: Room, { tones }: Finding, given: readonly VoiceName[]): string {
  const ways = [
    room.above === undefined ? '' : wayWords('up', tone, room.above),
    room.below === undefined ? '' : wayWords('down', tone, room.below),
  ].filter((words) => words !== '');
  const stays = VOICES.filter((voice) => given.includes(voice) && tones.some((each) => each.voice === voice));
  const kept =
    stays.length === 0 ? '' : ` The ${listed(stays.map((voice) => VOICE_WORDS[voice]))} may stay as given.`;
  const where = `the ${VOICE_WORDS[tone.voice]}’s ${printPitch(tone.pitch)}`;
  return `Free to move here is ${where}${ways.length === 0 ? '' : `: ${listed(ways)}`}.${kept}`;
}

/** `up there is room of a third before it meets the alto`. */
function wayWords(way: 'up' | 'down', tone: Tone, other: Tone): string {
  const inside =
    way === 'up'
      ? semitone(other.pitch) - semitone(tone.pitch)
      : semitone(tone.pitch) - semitone(other.pitch);
  const met = `the ${VOICE_WORDS[other.voice]}`;
  if (inside <= 0)
    return `${way} it has no room, since ${met} ${inside === 0 ? 'has the same note' : 'has crossed it'}`;
  return `${way} there is ${withArticle(intervalName(intervalBetween(tone.pitch, other.pitch)))} before it meets ${met}`;
}

/** How many other notes of the chord lie in the room, and which of them by step from the note before. */
function reachWords(analysis: Analysis, tone: Tone, room: Room): string {
  const who = `the ${VOICE_WORDS[tone.voice]}`;
  const chord = chordAt(analysis, tone.at);
  if (chord === undefined) return `Try ${who} on other notes here, and listen to each with the other voices.`;
  const { texture } = analysis;
  const slice = tone.at === 0 ? undefined : sliceAt(texture, tone.at - 1);
  const before = slice && toneIn(slice, tone.voice);
  const inReach = membersOf(chord)
    .flatMap((name) => [-1, 0, 1].map((by): Pitch => ({ ...name, octave: tone.pitch.octave + by })))
    .filter((pitch) => isInReach(pitch, tone, room));
  if (inReach.length === 0)
    return `The chord as it stands offers ${who} no other note between its neighbours: another voice, or another chord, has to give way.`;
  const offers = `The chord as it stands offers ${who} ${counted(inReach.length, 'other note')} within an octave and between its neighbours`;
  if (before === undefined) return `${offers}. Sing each with the other voices before you choose.`;
  const steps = inReach.filter((pitch) => Math.abs(staffPlace(pitch) - staffPlace(before.pitch)) <= 1).length;
  const leaps = inReach.length - steps;
  const how = [steps > 0 ? `${steps} by step or by staying` : '', leaps > 0 ? `${leaps} by leap` : ''].filter(
    (part) => part !== '',
  );
  return `${offers}, from the note before: ${listed(how)}. Another chord offers others.`;
}

/** Read once: it is asked of every note tried. */
const COMFORTABLE = rangesIn(String(voiceRange.parameters.comfortable?.value));

function isInReach(pitch: Pitch, tone: Tone, { above, below }: Room): boolean {
  const height = semitone(pitch);
  const range = COMFORTABLE[tone.voice];
  if (height === semitone(tone.pitch) || Math.abs(staffPlace(pitch) - staffPlace(tone.pitch)) > 7)
    return false;
  if (range !== undefined && (height < semitone(range[0]) || height > semitone(range[1]))) return false;
  return (
    (above === undefined || height <= semitone(above.pitch)) &&
    (below === undefined || height >= semitone(below.pitch))
  );
}
