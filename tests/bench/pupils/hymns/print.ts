/** Hymn tunes in our notation: bars laid out, typed as their tune says. */
import { readNotation } from '../../../../src/notation/index.ts';
import { byVoice, endOf, type Score, VOICES, type VoiceName } from '../../../../src/score/score.ts';
import type { Ticks } from '../../../../src/score/time.ts';
import type { HymnTune } from './hymn-tune.ts';

/** A tune as somebody types it, no phrase marked, and where its lines end. */
export interface TypedHymn {
  readonly name: string;
  readonly text: string;
  readonly score: Score;
  /** Ends of the lines of text but the last, in ticks. */
  readonly ends: readonly Ticks[];
}

/** Some voices of a tune; the others are not there, as where a tune alone is pasted. */
export function typedHymn(tune: HymnTune, voices: readonly VoiceName[] = VOICES): TypedHymn {
  const marked = printTune(tune, voices);
  const { score, problems } = readNotation(marked);
  if (problems.length > 0) throw new Error(`${tune.name}: ${problems[0]!.message}`);
  const ends = score.voices.S.flatMap((event) =>
    event.kind === 'note' && event.phrase === 'ends' ? [event.at + event.duration] : [],
  );
  const sung = score.voices.S.findLast(({ kind }) => kind === 'note')!;
  const last = sung.at + sung.duration;
  if (endOf(score) < last || ends.at(-1) !== last) throw new Error(`${tune.name}: its last line has no end.`);
  return {
    name: tune.name,
    text: marked.replaceAll("'", ''),
    score: withoutPhraseMarks(score),
    ends: ends.slice(0, -1),
  };
}

function withoutPhraseMarks(score: Score): Score {
  return {
    ...score,
    voices: byVoice((voice) =>
      score.voices[voice].map((event) => {
        if (event.kind !== 'note') return event;
        const { phrase: _phrase, ...plain } = event;
        return plain;
      }),
    ),
  };
}

/** In our notation, its phrases marked. */
function printTune(tune: HymnTune, voices: readonly VoiceName[]): string {
  const [, key, beats, unit, upbeat] = /^(.*) (\d+)\/(\d+) (\S+)$/.exec(tune.head)!;
  const bar = Number(beats);
  const short = fraction(upbeat!);
  const rests = tune.typed?.includes('rests') === true && short > 0;
  const lines = VOICES.filter((voice) => voices.includes(voice) && tune[voice] !== undefined).map((voice) => {
    const sounds = [
      ...(rests ? [`r*${printed(bar - short)}`] : []),
      ...(tune[voice]!.match(/\([^)]*\)\S*|\S+/g) ?? []),
    ];
    return `${voice}: ${barred(sounds, bar, rests || short === 0 ? bar : short, tune)}`;
  });
  const head = [
    `key: ${key}`,
    `metre: ${beats}/${unit}`,
    ...(rests || short === 0 ? [] : [`upbeat: ${upbeat}`]),
  ];
  return [...head, ...lines, ''].join('\n');
}

function barred(sounds: readonly string[], bar: number, first: number, tune: HymnTune): string {
  const out: string[] = [];
  let left = first;
  for (const sound of sounds) {
    const [, head, times, parts, mark] = /^(\(.*|[^*/']+)(?:\*([\d]+))?(?:\/(\d+))?('?)$/.exec(sound) ?? [];
    if (head === undefined) throw new Error(`${tune.name}: ${sound}`);
    let length = Number(times ?? 1) / Number(parts ?? 1);
    let name = head;
    while (length > left) {
      out.push(name + lengthOf(left), '|');
      length -= left;
      name = head === 'r' ? 'r' : '=';
      left = bar;
    }
    out.push(name + lengthOf(length) + mark);
    left -= length;
    if (left === 0) {
      out.push('|');
      left = bar;
    }
  }
  if (left < bar && tune.typed?.includes('filled')) out.push(`r${lengthOf(left)}`, '|');
  return out.join(' ');
}

function lengthOf(beats: number): string {
  return beats === 1 ? '' : beats === 0.5 ? '/2' : `*${printed(beats)}`;
}

function printed(beats: number): string {
  return Number.isInteger(beats) ? String(beats) : `${beats * 2}/2`;
}

function fraction(text: string): number {
  const [whole, part] = text.split('/').map(Number);
  return whole! / (part ?? 1);
}
