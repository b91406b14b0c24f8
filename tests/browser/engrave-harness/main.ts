/** The engraver alone on a page, driven by the tests through `window.harness`. */
import { readMusicXml } from '../../../src/musicxml/index.ts';
import { readNotation } from '../../../src/notation/index.ts';
import { CHORALE } from '../../../src/profiles/profile.ts';
import { type Review, reviewScore } from '../../../src/review/review.ts';
import type { Score } from '../../../src/score/score.ts';
import '../../../web/engrave/engrave.css';
import {
  ALL_LAYERS,
  createEngraving,
  type EngravingInput,
  loadMusicFont,
  marksOf,
  NO_LAYERS,
} from '../../../web/engrave/index.ts';

import { findCollisions } from './collisions.ts';

const container = document.querySelector<HTMLElement>('#sheet')!;
const selected: (string | undefined)[] = [];
const drawings: number[] = [];
const engraving = createEngraving(container, {
  onSelectFinding: (id) => selected.push(id),
  onDrawn: (milliseconds) => drawings.push(milliseconds),
});

let review: Review | undefined;

/** Milliseconds since the page was asked for: when the first system stood there, and when all did. */
const times = { first: 0, all: 0 };

function input(score: Score, options: Partial<EngravingInput> = {}): EngravingInput {
  review = reviewScore(score, CHORALE);
  return { score, marks: marksOf(review), width: container.clientWidth, layers: ALL_LAYERS, ...options };
}

async function show(score: Score, options?: Partial<EngravingInput>): Promise<void> {
  await loadMusicFont();
  engraving.update(input(score, options));
  times.first ||= performance.now();
  await engraving.drawn;
  times.all ||= performance.now();
}

const harness = {
  engraving,
  times,
  selected,
  drawings,
  input,
  show,
  read: (text: string) => readNotation(text).score,
  showText: (text: string, options?: Partial<EngravingInput>) => show(readNotation(text).score, options),
  /** A MusicXML or MXL file, as bytes in base 64. */
  showFile: async (base64: string, options?: Partial<EngravingInput>) => {
    const bytes = Uint8Array.from(atob(base64), (each) => each.charCodeAt(0));
    const reading = readMusicXml(bytes);
    if (!reading.ok) throw new Error(reading.message);
    await show(reading.score, options);
  },
  collisions: findCollisions,
  notes: NO_LAYERS,
  review: () => review,
};
export type Harness = typeof harness;
declare global {
  interface Window {
    harness: Harness;
  }
}
window.harness = harness;

// A text in the address is drawn as the page loads, as the real page draws what it kept.
const asked = new URLSearchParams(location.hash.slice(1)).get('text');
if (asked !== null) await harness.showText(asked);
