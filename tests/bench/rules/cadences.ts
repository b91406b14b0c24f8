/** Plain definitions and plants of the family *cadences and phrases*. */
import type { Score, VoiceEvent } from '../../../src/score/score.ts';
import { transposed } from '../pupils/transpose.ts';
import { withEvents } from './edits.ts';
import {
  degree,
  fifths,
  harmonies,
  hasSeventh,
  isApplied,
  isFull,
  isMinor,
  isSettled,
  nameAt,
  namesIn,
  notesOf,
  overLabels,
  renamed,
  tonicOf,
} from './harmonic.ts';
import { ALL, type Plain, phraseEndsBetween, sounding } from './plain.ts';
import type { Label, Piece, Place, Planter } from './planter.ts';
import type { Random } from './random.ts';

/** The last two harmonies before a phrase end, in one key; the last of them may be the last of the piece. */
interface Close {
  readonly approach: Label;
  readonly goal: Label;
  readonly final: boolean;
}

function closes(plain: Plain, piece: Piece): readonly Close[] {
  const labels = harmonies(piece);
  return labels.flatMap((goal, i): Close[] => {
    const approach = labels[i - 1];
    const final = i === labels.length - 1;
    const ends = final || phraseEndsBetween(plain, goal.at, goal.until);
    const joined = approach !== undefined && approach.until === goal.at && approach.key === goal.key;
    return ends && joined && !phraseEndsBetween(plain, approach.at, goal.at)
      ? [{ approach, goal, final }]
      : [];
  });
}

function isPerfect({ approach, goal }: Close): boolean {
  return degree(approach) === 'V' && !isApplied(approach) && /^[Ii]$/.test(degree(goal)) && !hasSeventh(goal);
}

/** The names that sound are these and no others, all four voices being there. */
function sounds(plain: Plain, label: Label, names: readonly string[], needed: readonly string[]): boolean {
  const heard = namesIn(plain, label);
  return (
    isFull(plain, label.at) &&
    needed.every((name) => heard.has(name)) &&
    [...heard].every((name) => names.includes(name))
  );
}

function bassIn(plain: Plain, label: Label): Set<string> {
  return new Set(
    plain.voices.B.filter((note) => note.at < label.until && note.until > label.at).map((note) => note.name),
  );
}

function pair({ approach, goal }: Close): Place {
  return { at: approach.at, until: goal.until, voices: [] };
}

/** Changes at the phrase ends that are wanted. */
function atCloses(
  wanted: (close: Close) => boolean,
  change: (piece: Piece, close: Close) => Score | undefined,
): Planter['tries'] {
  return function* (piece, random) {
    for (const close of random.shuffled(closes(piece.plain, piece).filter(wanted))) {
      const score = change(piece, close);
      if (score !== undefined) yield score;
    }
  };
}

/** A note of the key counted in fifths from the tonic. */
function inKey(label: Label, place: number): string {
  return nameAt(fifths(tonicOf(label)) + place);
}

const inner = (close: Close) => !close.final;
/** Root position from beginning to end. */
const rooted = (plain: Plain, label: Label) => [...bassIn(plain, label)].every((name) => name === label.root);
const isFullClose = (plain: Plain, close: Close) =>
  isPerfect(close) &&
  rooted(plain, close.approach) &&
  rooted(plain, close.goal) &&
  sounding(plain, 'S', close.goal.until - 1)?.name === close.goal.root;

export const CADENCES: readonly Planter[] = [
  {
    rule: 'no-cadence',
    family: 'cadences and phrases',
    definition:
      'in major, the key being settled, a phrase inside the piece ends with mediant and tonic, both in root position',
    tries: atCloses(
      (close) => inner(close) && isPerfect(close) && !isMinor(close.goal),
      (piece, { approach }) =>
        renamed(piece, approach, (note) => {
          if (note.voice === 'B') return inKey(approach, 4);
          return [2, -1].some((place) => note.name === inKey(approach, place))
            ? inKey(approach, 4)
            : undefined;
        }),
    ),
    find: (plain, piece) =>
      closes(plain, piece)
        .filter((close) => inner(close) && isPerfect(close) && !isMinor(close.goal))
        .filter(({ approach }) => isSettled(piece, approach))
        .filter(({ approach, goal }) => {
          const [root, third, fifth] = [4, 1, 5].map((place) => inKey(approach, place)) as [
            string,
            string,
            string,
          ];
          const bass = [...bassIn(plain, approach)];
          return (
            sounds(plain, approach, [root, third, fifth], [root, third, fifth]) &&
            bass.every((name) => name === root) &&
            rooted(plain, goal)
          );
        })
        .map(pair),
    // The mediant before the tonic is out of place as well.
    alsoNamed: ['mediant-out-of-place'],
  },
  {
    rule: 'inverted-phrase-end',
    family: 'cadences and phrases',
    definition: 'a phrase inside the piece ends with the third of its last chord in the bass',
    tries: atCloses(
      (close) => inner(close) && notesOf(close.goal) !== undefined,
      (piece, { goal }) =>
        renamed(piece, goal, (note) => (note.voice === 'B' ? notesOf(goal)?.third : undefined)),
    ),
    find: (plain, piece) =>
      closes(plain, piece)
        .filter(inner)
        .filter(({ goal }) => {
          const notes = notesOf(goal);
          return (
            notes !== undefined &&
            [...bassIn(plain, goal)].every((name) => name === notes.third) &&
            namesIn(plain, goal).has(notes.root)
          );
        })
        .map(({ goal }) => ({ at: goal.at, until: goal.until, voices: ['B'] as const })),
  },
  {
    rule: 'weak-cadence',
    family: 'cadences and phrases',
    definition: 'the piece ends with dominant and tonic, one of them over its third',
    tries: atCloses(
      (close) => close.final && isPerfect(close),
      (piece, { approach, goal }) => {
        const label = piece.number.charCodeAt(2) % 2 === 0 ? approach : goal;
        return renamed(piece, label, (note) => (note.voice === 'B' ? notesOf(label)?.third : undefined));
      },
    ),
    find: (plain, piece) =>
      closes(plain, piece)
        .filter((close) => close.final && isPerfect(close))
        .filter(({ approach, goal }) =>
          [approach, goal].some((label) =>
            [...bassIn(plain, label)].every((name) => name === notesOf(label)?.third),
          ),
        )
        .map(pair),
    // A last chord over its third is also a phrase that ends on an inversion.
    alsoNamed: ['inverted-phrase-end'],
  },
  {
    rule: 'incomplete-last-chord',
    family: 'cadences and phrases',
    definition: 'the last chord, dominant and tonic in root position, lacks its third or its fifth',
    tries: (piece, random) =>
      overLabels(
        piece,
        random,
        (label, next) => next === undefined && notesOf(label) !== undefined,
        (label) => {
          const { root, third, fifth } = notesOf(label)!;
          const lost = random.below(2) === 0 ? third : fifth;
          return renamed(piece, label, (note) =>
            note.name === lost && note.voice !== 'B'
              ? lost === third && random.below(2) === 0
                ? fifth
                : root
              : undefined,
          );
        },
      ),
    find: (plain, piece) =>
      closes(plain, piece)
        .filter((close) => close.final)
        .filter(({ goal }) => {
          const notes = notesOf(goal);
          const names = namesIn(plain, goal);
          return (
            notes !== undefined &&
            names.has(notes.root) &&
            !(names.has(notes.third) && names.has(notes.fifth)) &&
            [...names].every((name) => Object.values(notes).includes(name))
          );
        })
        .map(({ goal }) => ({ at: goal.at, until: goal.until, voices: [] })),
    // Where the third is what is missing.
    alsoNamed: ['missing-third'],
  },
  {
    rule: 'ends-in-another-key',
    family: 'cadences and phrases',
    definition:
      'the last phrase closes by dominant and tonic on a note that is the tonic of no earlier close, nor of the beginning',
    tries: movedEnds,
    find: strangeEnd,
  },
  {
    rule: 'early-home-close',
    family: 'cadences and phrases',
    definition:
      'two phrases running, the last phrase not among them, end with a full perfect cadence in the key of the piece',
    tries: (piece, random) => copiedCloses(piece, random),
    find: (plain, piece) => {
      const all = closes(plain, piece);
      const home = all.at(-1)?.goal.key;
      const full = (close: Close | undefined) =>
        close !== undefined &&
        !close.final &&
        close.goal.key === home &&
        /^[Ii]$/.test(degree(close.goal)) &&
        isFullCloseByEar(plain, close);
      return phraseCloses(plain, all).flatMap((close, i, list): Place[] => {
        const before = list[i - 1];
        return full(close) && full(before)
          ? [{ at: before!.approach.at, until: close!.goal.until, voices: [] }]
          : [];
      });
    },
  },
  {
    rule: 'no-tierce',
    family: 'cadences and phrases',
    definition: 'a piece in minor ends with dominant and tonic, the tonic with its minor third',
    tries: atCloses(
      (close) => close.final && isPerfect(close) && isMinor(close.goal),
      (piece, { goal }) =>
        renamed(piece, goal, (note) => (note.name === inKey(goal, 4) ? inKey(goal, -3) : undefined)),
    ),
    find: (plain, piece) =>
      closes(plain, piece)
        .filter((close) => close.final && isPerfect(close) && isMinor(close.goal))
        .filter(
          ({ goal }) =>
            namesIn(plain, goal).has(inKey(goal, -3)) && !namesIn(plain, goal).has(inKey(goal, 4)),
        )
        .map(({ goal }) => ({ at: goal.at, until: goal.until, voices: [] })),
  },
  {
    rule: 'missing-predominant',
    family: 'cadences and phrases',
    definition:
      'in major, the key being settled, a perfect cadence whose dominant comes straight from the tonic in root position',
    tries: (piece, random) =>
      overLabels(
        piece,
        random,
        (label, next) =>
          !isMinor(label) && degree(label) === 'IV' && !isApplied(label) && degree(next ?? label) === 'V',
        (label) =>
          renamed(piece, label, (note) => {
            if (note.voice === 'B') return inKey(label, 0);
            if (note.name === inKey(label, -1)) return inKey(label, 4);
            return note.name === inKey(label, 3) ? inKey(label, 1) : undefined;
          }),
      ),
    find: (plain, piece) => {
      const labels = harmonies(piece);
      return closes(plain, piece).flatMap((close): Place[] => {
        const before = labels[labels.indexOf(close.approach) - 1];
        if (!isFullClose(plain, close) || isMinor(close.goal) || before?.key !== close.goal.key) return [];
        if (!isSettled(piece, close.approach)) return [];
        if (before.until !== close.approach.at || phraseEndsBetween(plain, before.at, before.until))
          return [];
        const [root, third, fifth] = [0, 4, 1].map((place) => inKey(before, place)) as [
          string,
          string,
          string,
        ];
        return sounds(plain, before, [root, third, fifth], [root, third]) &&
          [...bassIn(plain, before)].every((name) => name === root)
          ? [{ at: before.at, until: close.goal.until, voices: [] }]
          : [];
      });
    },
  },
];

/** The last phrase a tone lower, or higher. */
function* movedEnds({ plain, score }: Piece, random: Random): Generator<Score> {
  const from = plain.phraseEnds.findLast((end) => end < plain.end);
  if (from === undefined) return;
  for (const fifths of random.shuffled([-2, 2])) {
    const moved = transposed(score, fifths);
    const voices = ALL.map((voice) => [
      voice,
      score.voices[voice].map((event, i) => (event.at < from ? event : moved.voices[voice][i]!)),
    ]);
    yield { ...score, voices: Object.fromEntries(voices) as Score['voices'] };
  }
}

/** The full close at the end, where no phrase before closes on its tonic and the first does not begin in that key. */
function strangeEnd(plain: Plain, piece: Piece): readonly Place[] {
  const labels = harmonies(piece);
  const [first, last] = [labels[0], labels.at(-1)];
  const earlier = plain.phraseEnds.filter((end) => last !== undefined && end <= last.at);
  const [bass, before] = last
    ? [sounding(plain, 'B', last.until - 1), sounding(plain, 'B', last.at - 1)]
    : [];
  if (first === undefined || last === undefined || bass === undefined || earlier.length < 2) return [];
  const tonic = fifths(bass.name);
  const leading = ALL.some((voice) => sounding(plain, voice, last.at - 1)?.name === nameAt(tonic + 5));
  if (before?.name !== nameAt(tonic + 1) || !leading || !isFull(plain, last.at)) return [];
  const closing = earlier.flatMap((end) => labels.findLast((label) => label.at < end) ?? []);
  const known = [first, ...closing].some((label) => fifths(tonicOf(label)) === tonic);
  return known ? [] : [{ at: last.at, until: last.until, voices: [] }];
}

/** The close of each phrase in turn, a phrase without one being undefined. */
function phraseCloses(plain: Plain, all: readonly Close[]): (Close | undefined)[] {
  return plain.phraseEnds.map((end) => all.find(({ goal }) => goal.at < end && goal.until >= end));
}

/** Whatever the published analysis says of the unaltered music: the bass goes from fifth to tonic, tonic in the melody. */
function isFullCloseByEar(plain: Plain, { approach, goal }: Close): boolean {
  const [tonic, dominant, leading] = [0, 1, 5].map((place) => inKey(goal, place)) as [string, string, string];
  return (
    sounding(plain, 'B', approach.until - 1)?.name === dominant &&
    sounding(plain, 'B', goal.at)?.name === tonic &&
    sounding(plain, 'B', goal.until - 1)?.name === tonic &&
    sounding(plain, 'S', goal.until - 1)?.name === tonic &&
    ALL.some((voice) => sounding(plain, voice, approach.until - 1)?.name === leading)
  );
}

/** The full close of one phrase written over the close of the phrase that follows, where both are equally long. */
function* copiedCloses(piece: Piece, random: Random): Generator<Score> {
  const { plain, score } = piece;
  const list = phraseCloses(plain, closes(plain, piece));
  const home = closes(plain, piece).at(-1)?.goal.key;
  const pairs = list.flatMap((close, i) => {
    const [a, b] = [close, list[i + 1]];
    return a && b ? [[a, b] as const, [b, a] as const] : [];
  });
  for (const [from, to] of random.shuffled(pairs)) {
    if (from.goal.key !== home || !isFullCloseByEar(plain, from)) continue;
    const shift = to.approach.at - from.approach.at;
    if (to.goal.at - from.goal.at !== shift || to.goal.until - from.goal.until !== shift) continue;
    let altered: Score | undefined = score;
    for (const voice of ALL) {
      const copied = score.voices[voice].filter(
        (event) => event.at >= from.approach.at && event.at + event.duration <= from.goal.until,
      );
      const replaced = score.voices[voice].filter(
        (event) => event.at >= to.approach.at && event.at + event.duration <= to.goal.until,
      );
      if (lengthOf(copied) !== lengthOf(replaced) || copied[0] === undefined || replaced[0] === undefined) {
        altered = undefined;
        break;
      }
      let put = false;
      altered = withEvents(altered, voice, (event): readonly VoiceEvent[] => {
        if (!replaced.includes(event)) return [event];
        if (put) return [];
        put = true;
        return copied.map((e) => ({ ...e, at: e.at + shift }));
      });
    }
    if (altered !== undefined) yield altered;
  }
}

function lengthOf(events: readonly VoiceEvent[]): number {
  return events.reduce((sum, event) => sum + event.duration, 0);
}
