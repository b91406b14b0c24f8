/** A mark in words, said once: its first place in full, the others by what differs, what follows by name and place. */
import { capitalised, listed } from '../english/words.ts';
import type { Mark, Slip } from '../review/marks.ts';
import type { Finding } from '../review/review.ts';
import { placeAt, printPlace } from '../score/place.ts';
import { type Score, VOICE_WORDS } from '../score/score.ts';
import { printVoices } from './sentences.ts';

/** `bar 3, beat 2: Tenor and bass move in parallel fifths: D4–G3 to E4–A3.` and `Follows from it: large leap (tenor).` */
export interface PlaceInWords {
  readonly sentence: string;
  /** What follows from it, as a sentence; empty where nothing does. */
  readonly follows: string;
}

/** A sentence for each place of a mark. */
export function placesInWords(score: Score, { slips, severity }: Mark): PlaceInWords[] {
  const model = slips[0].finding;
  return slips.map((slip, index) => {
    const { finding } = slip;
    const lighter = finding.severity === severity ? '' : ` (${finding.severity})`;
    const place = `${printPlace(placeAt(score, finding.from))}${lighter}`;
    const differs = index === 0 ? undefined : whatDiffers(finding, model);
    const sentence =
      differs === undefined
        ? `${place}${whoOf(finding)}: ${finding.message}`
        : [place, ...(differs.voices === '' ? [] : [`, ${differs.voices}`]), ending(differs.words)].join('');
    return { sentence, follows: followsInWords(score, slip) };
  });
}

/** `Follows from it: parallel octaves (bar 3, beat 4, tenor and bass) and the same again (soprano and tenor).` */
function followsInWords(score: Score, { finding, follows }: Slip): string {
  if (follows.length === 0) return '';
  const places = new Map<string, string[]>();
  for (const each of follows) {
    const name = each.rule === finding.rule ? 'the same again' : each.rule.name.toLowerCase();
    const where = [
      ...(each.from === finding.from ? [] : [printPlace(placeAt(score, each.from))]),
      ...(each.voices.length === 4 ? [] : [printVoices(each.voices)]),
    ].join(', ');
    places.set(name, [...(places.get(name) ?? []), where]);
  }
  const parts = [...places].map(([name, all]) => {
    const told = [...new Set(all)].filter((where) => where !== '');
    return told.length === 0 ? name : `${name} (${told.join('; ')})`;
  });
  return `Follows from it: ${listed(parts)}.`;
}

/** `, tenor`, where the sentence doesn't say itself who sings. */
function whoOf({ voices, message }: Finding): string {
  const said = voices.every((voice) => message.toLowerCase().includes(VOICE_WORDS[voice]));
  return said || voices.length === 4 ? '' : `, ${printVoices(voices)}`;
}

function ending(words: string): string {
  return words === '' ? '.' : `: ${words}`;
}

interface Difference {
  /** Who sings, where that differs or the sentence says it. */
  readonly voices: string;
  /** What is new in the sentence: `I64`, `E4–A2 to D4–G2`. */
  readonly words: string;
}

/** A word that holds a note, a numeral or a number: what differs from place to place. */
const FACT = /\d|^[ivIV]+[o+]?[,;:.]?$|\b[A-G][♯♭#b]*\b/;

/**
 * What a sentence says that the first of its kind has not said; undefined where it is another sentence. Its own place
 * and voices stand before it in any case.
 */
function whatDiffers(finding: Finding, model: Finding): Difference | undefined {
  const [own, first] = [bare(finding), bare(model)];
  if (own.length !== first.length) return undefined;
  if (own.some((word, i) => word !== first[i] && !FACT.test(word))) return undefined;
  const voices = finding.voices.length === 4 ? '' : printVoices(finding.voices);
  const from = own.findIndex((word) => FACT.test(word));
  const facts = own.slice(from, own.findLastIndex((word) => FACT.test(word)) + 1);
  return { voices, words: from < 0 ? '' : `${facts.join(' ').replace(/[,;:.]$/, '')}.` };
}

const PLACE = /,? ?\b(?:at |in )?(?:bar [\w]+|the upbeat), beat (?:\d+[½¼¾⅓⅔]?(?: \d+\/\d+)?)/g;

/** The words of a message, without its place and with a sign in place of its voices. */
function bare({ message, voices }: Finding): string[] {
  const who = voices.map((voice) => VOICE_WORDS[voice]);
  const names = [printVoices(voices), ...who.map((word) => `the ${word}`), ...who];
  return [...names.map(capitalised), ...names]
    .reduce((text, name) => text.replaceAll(name, '‹›'), message.replace(PLACE, ''))
    .split(/\s+/)
    .filter((word) => word !== '');
}
