/** Scores for property tests, as fast-check makes them, and the plain form in which two scores are compared. */
import fc from 'fast-check';
import { buildScore, type DraftBar, type DraftEvent } from '../../src/score/build.ts';
import { type Pitch, STEPS } from '../../src/score/pitch.ts';
import type { KeySignature, Score, VoiceName } from '../../src/score/score.ts';
import { beatLength, type Metre } from '../../src/score/time.ts';

const pitch: fc.Arbitrary<Pitch> = fc.record({
  step: fc.constantFrom(...STEPS),
  alteration: fc.integer({ min: -2, max: 2 }),
  octave: fc.integer({ min: 0, max: 9 }),
});

const key: fc.Arbitrary<KeySignature> = fc.oneof(
  fc.record({ fifths: fc.integer({ min: -7, max: 7 }) }),
  fc.record({
    fifths: fc.integer({ min: -7, max: 7 }),
    mode: fc.constantFrom('major' as const, 'minor' as const),
  }),
);

const metre: fc.Arbitrary<Metre> = fc.constantFrom(
  { beats: 4, unit: 4 },
  { beats: 3, unit: 4 },
  { beats: 3, unit: 2 },
  { beats: 6, unit: 8 },
  { beats: 2, unit: 2 },
);

/** A beat's worth or more: whole beats, dotted pairs, quavers, triplets, semiquavers. */
function rhythm(beat: number): fc.Arbitrary<number[]> {
  return fc.constantFrom(
    [beat],
    [beat * 2],
    [beat / 2, beat / 2],
    [(beat * 3) / 2, beat / 2],
    [beat / 3, beat / 3, beat / 3],
    [(beat * 3) / 4, beat / 4],
    [beat / 4, beat / 4, beat / 2],
  );
}

function event(duration: number): fc.Arbitrary<DraftEvent> {
  return fc.oneof(
    {
      weight: 8,
      arbitrary: fc
        .record({ pitch, fermata: fc.boolean(), tied: fc.boolean() })
        .map((n) => ({ kind: 'note' as const, duration, ...n })),
    },
    { weight: 1, arbitrary: fc.boolean().map((fermata) => ({ kind: 'rest' as const, duration, fermata })) },
    { weight: 1, arbitrary: fc.constant({ kind: 'gap' as const, duration }) },
  );
}

/** One voice's bar: right, short, too long or missing; closed or not. */
function voiceBar(m: Metre): fc.Arbitrary<{ events: DraftEvent[]; closed: boolean }> {
  return fc
    .record({ cells: fc.array(rhythm(beatLength(m)), { maxLength: m.beats + 1 }), closed: fc.constant(true) })
    .chain(({ cells, closed }) =>
      fc.tuple(...cells.flat().map(event)).map((events) => ({ events: holdTies(events), closed })),
    );
}

/** Makes the note after a tie have its pitch, half of the time there is one. */
function holdTies(events: DraftEvent[]): DraftEvent[] {
  return events.map((e, i) => {
    const before = events[i - 1];
    return e.kind === 'note' && before?.kind === 'note' && before.tied && before.pitch
      ? { ...e, pitch: before.pitch }
      : e;
  });
}

function bar(m: Metre, k: KeySignature, first: boolean): fc.Arbitrary<DraftBar> {
  const upbeat = first ? fc.option(fc.constant(beatLength(m)), { nil: undefined }) : fc.constant(undefined);
  return fc
    .record({
      voices: fc.record(
        { S: voiceBar(m), A: voiceBar(m), T: voiceBar(m), B: voiceBar(m) },
        { requiredKeys: [] },
      ),
      upbeat,
      number: fc.option(fc.constantFrom('7', '12a', 'X1'), { nil: undefined, freq: 8 }),
      ending: fc.option(fc.constantFrom('1', '1, 2'), { nil: undefined, freq: 8 }),
      tempo: fc.option(fc.integer({ min: 5, max: 1000 }), { nil: undefined, freq: 4 }),
      repeatStart: fc.boolean(),
      repeatEnd: fc.boolean(),
    })
    .map(({ upbeat: short, number, ending, tempo, voices, repeatStart, repeatEnd }) => ({
      metre: m,
      key: k,
      voices: voices as Partial<Record<VoiceName, { events: DraftEvent[]; closed: boolean }>>,
      repeatStart,
      repeatEnd,
      ...(short === undefined || m.beats < 2 ? {} : { short }),
      ...(number === undefined ? {} : { number }),
      ...(ending === undefined ? {} : { ending }),
      ...(tempo === undefined ? {} : { tempo }),
    }));
}

/** Any score the reader of the notation could have made, misfits and gaps included. */
export const anyScore: fc.Arbitrary<Score> = fc
  .array(fc.record({ m: metre, k: key }), { minLength: 1, maxLength: 3 })
  .chain((sections) =>
    fc.tuple(
      ...sections.map(({ m, k }, s) =>
        fc
          .integer({ min: 1, max: 4 })
          .chain((n) => fc.tuple(...Array.from({ length: n }, (_, i) => bar(m, k, s === 0 && i === 0)))),
      ),
    ),
  )
  .chain((sections) =>
    fc.record({
      title: fc.string().map((t) => t.replace(/\s+/g, ' ').trim()),
      tempo: fc.option(fc.integer({ min: 10, max: 400 }), { nil: undefined }),
      bars: fc.constant(sections.flat()),
    }),
  )
  .map(({ title, tempo, bars }) => buildScore({ title, bars, ...(tempo === undefined ? {} : { tempo }) }));

/** A score without what is no music: readers' remarks. */
export function music(score: Score): Omit<Score, 'remarks'> {
  const { remarks: _remarks, ...rest } = score;
  return rest;
}
