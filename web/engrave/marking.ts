/** The marks as they are shown, with what is worked out from them once: the room of their labels, each system's share. */
import type { Ticks } from '../../src/score/time.ts';
import type { PlannedBar } from './bars.ts';
import type { EngravingInput, Marks } from './input.ts';
import { labelRooms, plainNumeral } from './lanes.ts';
import { type MarkSettings, shownFindings } from './placing.ts';
import type { LabelRooms } from './spacing.ts';
import type { SystemPlan } from './systems.ts';
import type { Measure } from './words.ts';

type Marked = Pick<EngravingInput, 'marks' | 'layers' | 'chordLabel'>;

export interface Marking {
  readonly settings: MarkSettings;
  /** The room that a bar's labels want. */
  readonly rooms: (bar: PlannedBar) => LabelRooms;
  /** Moments at which a letter stands at an inner voice's note, in order. */
  readonly letters: readonly Ticks[];
  /** What a system's marks are made from, as text: equal where nothing would look different. */
  readonly keyOf: (plan: SystemPlan) => string;
  /** True where these are still the marks to show, shown likewise. */
  readonly isOf: (input: Marked) => boolean;
}

export function createMarking(input: Marked, measure: Measure): Marking {
  const { marks, layers, chordLabel } = input;
  const settings: MarkSettings = { marks, layers, label: chordLabel ?? plainNumeral, measure };
  const keys = new WeakMap<SystemPlan, string>();
  return {
    settings,
    rooms: labelRooms(marks, layers, settings.label, measure),
    letters: layers.ornaments ? lettersOf(marks) : [],
    keyOf(plan) {
      const key = keys.get(plan) ?? shareOf(plan, settings);
      keys.set(plan, key);
      return key;
    },
    isOf: (other) => other.marks === marks && other.layers === layers && other.chordLabel === chordLabel,
  };
}

function lettersOf({ ornaments }: Marks): Ticks[] {
  return ornaments
    .filter(({ voice }) => voice === 'A' || voice === 'T')
    .map(({ at }) => at)
    .sort((a, b) => a - b);
}

function shareOf({ bars }: SystemPlan, { marks, layers, label }: MarkSettings): string {
  const last = bars.at(-1);
  const [from, until] = [bars[0]?.at ?? 0, last ? last.at + last.duration : 0];
  const touches = (a: Ticks, b: Ticks) => a < until && b > from;
  return JSON.stringify([
    layers,
    marks.chords
      .filter((chord) => touches(chord.at, chord.until))
      .map((chord) => [chord.at, label(chord), layers.figuredBass ? [chord.members, chord.bass] : 0]),
    marks.keys.filter((region) => touches(region.from, region.until)),
    marks.seconds.filter((second) => touches(second.from, second.until)),
    marks.ornaments
      .filter(({ at }) => touches(at, at + 1))
      .map(({ at, voice, kind, figures }) => [at, voice, kind, figures]),
    marks.cadences.filter(({ at }) => touches(at, at + 1)),
    (marks.figures ?? []).filter(({ at }) => touches(at, at + 1)),
    shownFindings(marks, layers)
      .filter(
        (finding) =>
          touches(finding.from, Math.max(finding.until, finding.from + 1)) ||
          finding.tones.some((tone) => touches(tone.at, tone.until)),
      )
      .map(({ tones, ...finding }) => [finding, tones.map((tone) => tone.id)]),
  ]);
}
