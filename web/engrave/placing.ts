/** All marks of one system, placed so that none covers a note or another mark. Pure: the same input, the same places. */
import type { Chord } from '../../src/harmony/analysis.ts';
import type { PlannedBar } from './bars.ts';
import type { SystemGeometry } from './geometry.ts';
import { isShown, type Layers, type MarkedFinding, type Marks } from './input.ts';
import { layLanes, type PlacedWords } from './lanes.ts';
import { placeBarNumbers, placeOrnaments } from './near.ts';
import { type PlacedTag, placeTags } from './tags.ts';
import type { Measure } from './words.ts';

/** What is marked, and how. */
export interface MarkSettings {
  readonly marks: Marks;
  readonly layers: Layers;
  readonly label: (chord: Chord) => string;
  readonly measure: Measure;
}

export interface PlacedMarks {
  readonly words: readonly PlacedWords[];
  readonly tags: readonly PlacedTag[];
  readonly highest: number;
  readonly lowest: number;
}

/** The findings of the families and severities shown. */
export function shownFindings(marks: Marks, layers: Layers): readonly MarkedFinding[] {
  return marks.findings.filter(({ family, severity }) => isShown(layers, family, severity));
}

export function placeMarks(
  bars: readonly PlannedBar[],
  geometry: SystemGeometry,
  { marks, layers, label, measure }: MarkSettings,
): PlacedMarks {
  const numbers = layers.barNumbers === false ? [] : placeBarNumbers(geometry, measure);
  const start = bars[0]?.at ?? 0;
  const last = bars.at(-1);
  const end = last ? last.at + last.duration : 0;
  const ornaments = layers.ornaments
    ? placeOrnaments(
        marks.ornaments.filter((each) => each.at >= start && each.at < end),
        geometry,
        numbers.map(({ box }) => box),
        measure,
      )
    : [];
  const near = [...numbers, ...ornaments];
  const tags = placeTags(
    shownFindings(marks, layers),
    geometry,
    near.map(({ box }) => box),
  );
  const boxes = [...near.map(({ box }) => box), ...tags.map(({ box }) => box)];
  const below = Math.max(geometry.lowest, ...boxes.map((box) => box.y + box.height));
  const lanes = layLanes({ bars, geometry, marks, layers, label, measure, below });
  return {
    words: [...near, ...lanes.words],
    tags,
    highest: Math.min(geometry.highest, ...boxes.map((box) => box.y)),
    lowest: lanes.lowest,
  };
}
