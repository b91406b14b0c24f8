/** Plain definitions and plants of the family *rhythm and notation*. */
import { buildScore, type DraftBar, type DraftEvent } from '../../../src/score/build.ts';
import { STEPS } from '../../../src/score/pitch.ts';
import type { Bar, Score, VoiceEvent, VoiceName } from '../../../src/score/score.ts';
import { scaleAt, withEvents, withPitch } from './edits.ts';
import { beatAt, harmonies, notesOf, weight } from './harmonic.ts';
import { ALL, barOf, following, nameOf, type Plain, phraseEndsBetween, QUARTER, sounding } from './plain.ts';
import type { Piece, Place, Planter } from './planter.ts';
import type { Random } from './random.ts';

/** The bars of a score as a reader would have met them, so that one of them can be written otherwise. */
function draftBars(score: Score): DraftBar[] {
  return score.bars.map((bar) => ({
    number: bar.number,
    metre: bar.metre,
    key: bar.key,
    ...(bar.duration < fullLength(bar) ? { short: bar.duration } : {}),
    voices: Object.fromEntries(
      ALL.map((voice) => [voice, { events: eventsIn(score, voice, bar), closed: true }]),
    ),
  }));
}

function fullLength(bar: Bar): number {
  return (bar.metre.beats * 4 * QUARTER) / bar.metre.unit;
}

function eventsIn(score: Score, voice: VoiceName, bar: Bar): DraftEvent[] {
  return score.voices[voice]
    .filter((event) => event.at >= bar.at && event.at < bar.at + bar.duration)
    .map(({ at: _at, ...event }) => event);
}

/** One bar of one voice with a note made longer or shorter by a beat or half a beat. */
function* misfits({ score, plain }: Piece, random: Random): Generator<Score> {
  const bars = draftBars(score);
  for (const index of random.shuffled(score.bars.map((bar) => bar.index).slice(1, -1))) {
    const voice = random.shuffled(ALL)[0]!;
    const part = bars[index]!.voices[voice];
    const longer = random.below(2) === 0;
    const place = part?.events.findIndex((event) => event.kind === 'note' && event.duration >= QUARTER) ?? -1;
    if (part === undefined || place < 0 || score.bars[index]!.duration < fullLength(score.bars[index]!))
      continue;
    const by = beatAt(plain, score.bars[index]!.at) / 2;
    const events = part.events.map((event, i) =>
      i === place ? { ...event, duration: event.duration + (longer ? by : -by) } : event,
    );
    yield buildScore({
      title: score.title,
      bars: bars.map((bar, i) =>
        i === index ? { ...bar, voices: { ...bar.voices, [voice]: { events, closed: true } } } : bar,
      ),
    });
  }
}

/** One note with another a third below it in the same voice. */
function* dividedNotes({ score }: Piece, random: Random): Generator<Score> {
  const notes = ALL.flatMap((voice) =>
    score.voices[voice].flatMap((event) => (event.kind === 'note' ? [{ voice, event }] : [])),
  );
  for (const { voice, event } of random.shuffled(notes)) {
    const under = scaleAt(score, event.at)[(STEPS.indexOf(event.pitch.step) + 5) % 7]!;
    const octave = event.pitch.octave - (STEPS.indexOf(event.pitch.step) < 2 ? 1 : 0);
    const spare = { pitch: { ...under, octave }, into: 0, duration: event.duration };
    yield withEvents(score, voice, (one) => [one === event ? { ...event, beside: [spare] } : one]);
  }
}

/** The last note of one voice cut short, with a rest after it. */
function* shortEndings({ score, plain }: Piece, random: Random): Generator<Score> {
  for (const voice of random.shuffled(ALL)) {
    const last = score.voices[voice].at(-1);
    const cut = last === undefined ? 0 : Math.min(last.duration / 2, beatAt(plain, last.at));
    if (last?.kind !== 'note' || !Number.isInteger(cut)) continue;
    yield withEvents(score, voice, (event) =>
      event === last
        ? [
            { ...last, duration: last.duration - cut },
            { kind: 'rest', at: last.at + last.duration - cut, duration: cut },
          ]
        : [event],
    );
  }
}

/** All four voices on the beat before a barline given the notes that they have after it. */
function* earlyHarmonies({ score, plain }: Piece, random: Random): Generator<Score> {
  for (const bar of random.shuffled(score.bars.slice(1))) {
    const beat = beatAt(plain, bar.at - 1);
    let altered = score;
    for (const voice of ALL) {
      const before = sounding(plain, voice, bar.at - 1);
      const after = sounding(plain, voice, bar.at);
      if (before?.at === bar.at - beat && before.until === bar.at && after?.at === bar.at)
        altered = withPitch(altered, before, after.pitch);
      else break;
    }
    yield altered;
  }
}

/** One event without its fermata. */
function* lostFermatas({ score }: Piece, random: Random): Generator<Score> {
  const marks = ALL.flatMap((voice) =>
    score.voices[voice]
      .filter((event) => event.kind === 'note' && event.fermata)
      .map((event) => ({ voice, event })),
  );
  for (const { voice, event } of random.shuffled(marks)) {
    yield withEvents(score, voice, (e) => {
      if (e !== event || e.kind === 'gap') return [e];
      const { fermata: _fermata, ...plain } = e;
      return [plain];
    });
  }
}

/** Every note that fills a beat, in the voices wanted, made a rest or a gap. */
function* silences(
  { score, plain }: Piece,
  random: Random,
  voices: readonly VoiceName[],
  kind: 'rest' | 'gap',
): Generator<Score> {
  for (const at of random.shuffled(plain.beats.slice(1, -2))) {
    const until = at + beatAt(plain, at);
    let altered = score;
    for (const voice of voices) {
      const inside = score.voices[voice].filter(
        (event) => event.at >= at && event.at + event.duration <= until,
      );
      const tied = score.voices[voice].some(
        (event) => event.kind === 'note' && event.tied && event.at + event.duration === at,
      );
      if (tied || inside.reduce((sum, event) => sum + event.duration, 0) !== until - at) {
        altered = score;
        break;
      }
      altered = withEvents(altered, voice, (event): readonly VoiceEvent[] =>
        inside.includes(event) ? [{ kind, at: event.at, duration: event.duration }] : [event],
      );
    }
    if (altered !== score) yield altered;
  }
}

/** Stretches in which these voices have this kind of event and nothing else. */
function stretches(plain: Plain, voice: VoiceName, kind: 'rest' | 'gap'): Place[] {
  const places: { at: number; until: number; voices: VoiceName[] }[] = [];
  for (const event of plain.score.voices[voice]) {
    if (event.kind !== kind) continue;
    const last = places.at(-1);
    if (last?.until === event.at) last.until += event.duration;
    else places.push({ at: event.at, until: event.at + event.duration, voices: [voice] });
  }
  return places;
}

export const NOTATION: readonly Planter[] = [
  {
    rule: 'bar-length',
    family: 'rhythm and notation',
    definition: 'a voice has half a beat too many or too few in a bar',
    tries: misfits,
    find: (plain) =>
      plain.score.bars.flatMap((bar) =>
        bar.misfits.map(({ voice }) => ({ at: bar.at, until: bar.at + bar.duration, voices: [voice] })),
      ),
  },
  {
    rule: 'divided-voice',
    family: 'rhythm and notation',
    definition: 'a voice has a second note at the same time',
    tries: dividedNotes,
    find: (plain) =>
      ALL.flatMap((voice) =>
        plain.score.voices[voice].flatMap((event) =>
          event.kind === 'note' && event.beside !== undefined
            ? [{ at: event.at, until: event.at + event.duration, voices: [voice] }]
            : [],
        ),
      ),
  },
  {
    rule: 'voices-end-apart',
    family: 'rhythm and notation',
    definition: 'the last notes of the four voices do not stop at the same time',
    tries: shortEndings,
    find: (plain) => {
      const last = ALL.flatMap((voice) => plain.voices[voice].at(-1) ?? []);
      const end = Math.max(...last.map((note) => note.until));
      return last
        .filter((note) => note.until < end)
        .map((note) => ({ at: note.at, until: end, voices: [note.voice] }));
    },
  },
  {
    rule: 'harmony-held-over',
    family: 'rhythm and notation',
    definition:
      'the last beat of a bar, inside a phrase, has the four notes of the next bar already, and came with them',
    tries: earlyHarmonies,
    find: (plain) =>
      plain.score.bars.slice(1).flatMap((bar): Place[] => {
        const beat = beatAt(plain, bar.at - 1);
        const at = bar.at - beat;
        if (at <= 0 || phraseEndsBetween(plain, at - 1, bar.at + 1) || weight(plain, at) !== 1) return [];
        const heard = (moment: number) => ALL.map((voice) => sounding(plain, voice, moment)?.name).join(' ');
        const early = heard(at);
        if (early.includes('undefined') || heard(bar.at - 1) !== early || heard(bar.at) !== early) return [];
        const before = new Set(heard(at - 1).split(' '));
        const isNew = new Set(early.split(' ').filter((name) => !before.has(name))).size >= 2;
        return isNew ? [{ at, until: bar.at + beat, voices: [] }] : [];
      }),
  },
  {
    rule: 'partial-fermata',
    family: 'rhythm and notation',
    definition: 'three voices have a fermata and the fourth, on a note that sounds with theirs, has none',
    tries: lostFermatas,
    find: (plain) =>
      plain.moments.flatMap((at): Place[] => {
        const notes = ALL.flatMap((voice) => sounding(plain, voice, at) ?? []);
        const without = notes.filter((note) => !note.fermata);
        const only = without.length === 1 ? without[0] : undefined;
        const begins =
          notes.length === 4 && notes.every((note) => note.at <= at) && notes.some((note) => note.at === at);
        return only && begins ? [{ at, until: only.until, voices: [only.voice] }] : [];
      }),
  },
  {
    rule: 'empty-beat',
    family: 'rhythm and notation',
    definition: 'a beat inside a phrase on which all four voices rest',
    tries: (piece, random) => silences(piece, random, ALL, 'rest'),
    find: (plain) =>
      plain.beats.flatMap((at): Place[] => {
        const until = at + beatAt(plain, at);
        const silent = ALL.every((voice) =>
          plain.voices[voice].every((note) => note.at >= until || note.until <= at),
        );
        const inside = at > 0 && until < plain.end && !plain.phraseEnds.includes(at);
        return silent && inside ? [{ at, until, voices: [] }] : [];
      }),
  },
  {
    rule: 'unfinished',
    family: 'rhythm and notation',
    definition: 'a voice that is not written, or rests, for a beat or more while the others sing',
    tries: (piece, random) =>
      silences(piece, random, [random.shuffled(ALL)[0]!], random.below(2) === 0 ? 'gap' : 'rest'),
    find: (plain) =>
      ALL.flatMap((voice) =>
        (['gap', 'rest'] as const).flatMap((kind) =>
          stretches(plain, voice, kind).filter(
            ({ at, until }) =>
              until - at >= beatAt(plain, at) &&
              ALL.some((other) => other !== voice && sounding(plain, other, at) !== undefined),
          ),
        ),
      ),
  },
  {
    rule: 'accidental-slip',
    family: 'rhythm and notation',
    definition:
      'a note of a beat or more without the sharp or flat of the signature, where its chord has the note of the signature, that does not lead on by semitone',
    // In minor a natural can be the sixth degree raised by mistake.
    alsoNamed: ['minor-scale-degrees'],
    tries: (piece, random) => forgotten(piece, random),
    find: (plain, piece) =>
      harmonies(piece).flatMap((label) => {
        const notes = notesOf(label);
        const names: readonly (string | undefined)[] = notes === undefined ? [] : Object.values(notes);
        return ALL.flatMap((voice) =>
          plain.voices[voice]
            .filter((note) => note.at >= label.at && note.until <= label.until && note.pitch.alteration === 0)
            .filter((note) => {
              const signed = scaleAt(plain.score, note.at).find(({ step }) => step === note.pitch.step)!;
              const next = following(plain, note);
              if (next === undefined || Math.abs(next.midi - note.midi) === 1) return false;
              if (note.until - note.at < beatAt(plain, note.at)) return false;
              return signed.alteration !== 0 && names.includes(nameOf(signed)) && !names.includes(note.name);
            })
            .map((note): Place => ({ at: note.at, until: note.until, voices: [voice] })),
        );
      }),
  },
];

/** One note of the signature's sharps or flats written without. */
function* forgotten({ score, plain }: Piece, random: Random): Generator<Score> {
  const notes = ALL.flatMap((voice) => plain.voices[voice].filter((note) => note.pitch.alteration !== 0));
  for (const note of random.shuffled(notes)) {
    const signed = barOf(plain, note.at)?.key.fifths ?? 0;
    if (signed !== 0) yield withPitch(score, note, { ...note.pitch, alteration: 0 });
  }
}
