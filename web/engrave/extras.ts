/** What stands among the notes and is drawn by ourselves: ties, fermatas, gaps, endings, lyrics. */
import { beatsAMinute, countedBeat } from '../../src/report/sentences.ts';
import { VOICES } from '../../src/score/score.ts';
import { type PlannedBar, STAFF_OF, STAFF_VOICES, type StaffName } from './bars.ts';
import { placeY, STAFF_HEIGHT, stemUp, trebleBottom, VERSE } from './extents.ts';
import { type Gathered, type HeadBox, overlap, type SystemGeometry, xAt } from './geometry.ts';
import { addPath, addText, addTo } from './svg.ts';
import type { SystemPlan } from './systems.ts';
import { canvasMeasure, guessWidth, LYRIC_SIZE, type Measure } from './words.ts';

type Lines = Pick<SystemGeometry, 'left' | 'right' | 'top' | 'columns' | 'bars'>;

/** SMuFL code points and widths of the fermatas in Bravura at 40 px an em. */
const FERMATA_ABOVE = '\ue4c0';
const FERMATA_BELOW = '\ue4c1';
const FERMATA = { width: 24, height: 14 };

let measure: Measure | undefined;

export function drawBySelf(svg: SVGElement, plan: SystemPlan, lines: Lines, boxes: Gathered): void {
  drawTies(svg, plan, lines, boxes);
  drawGaps(svg, plan, lines, boxes);
  drawFermatas(svg, plan, lines, boxes);
  drawLyrics(svg, plan, lines, boxes);
  drawTempos(svg, plan, lines, boxes);
  drawEndings(svg, plan, lines, boxes);
}

function drawTies(svg: SVGElement, plan: SystemPlan, lines: Lines, boxes: Gathered): void {
  for (const voice of VOICES) {
    const signs = plan.bars.flatMap((bar) => bar.signs[voice]);
    const headOf = (at: number) => boxes.heads.find((head) => head.voice === voice && head.at === at);
    for (const [i, sign] of signs.entries()) {
      const head = headOf(sign.at);
      if (!head) continue;
      if (sign.tied) {
        const next = signs[i + 1] && headOf(signs[i + 1]!.at);
        tie(svg, head.x + head.width + 1.5, next ? next.x - 1.5 : lines.right - 2, head, boxes);
      }
      if (i === 0 && sign.continued) {
        const before = boxes.solid
          .filter((box) => box.x + box.width <= head.x && overlap({ ...box, x: head.x }, head))
          .reduce((edge, box) => Math.max(edge, box.x + box.width), lines.left);
        tie(svg, Math.max(before + 2, head.x - 24), head.x - 1.5, head, boxes);
      }
    }
  }
}

/** A tie curves away from its voice's partner: up for soprano and tenor. */
function tie(svg: SVGElement, from: number, to: number, head: HeadBox, boxes: Gathered): void {
  const up = stemUp(head.voice);
  const length = Math.max(6, to - from);
  const y = head.y + head.height / 2 + (up ? -6 : 6);
  const rise = (up ? -1 : 1) * Math.min(9, 3.5 + length * 0.07);
  const x1 = from + length * 0.25;
  const x2 = from + length * 0.75;
  const thick = up ? 2.2 : -2.2;
  const d =
    `M${from} ${y}C${x1} ${y + rise * 1.33} ${x2} ${y + rise * 1.33} ${from + length} ${y}` +
    `C${x2} ${y + rise * 1.33 + thick} ${x1} ${y + rise * 1.33 + thick} ${from} ${y}Z`;
  addPath(svg, d, 'pw-tie');
  boxes.thin.push({ x: from, y: Math.min(y, y + rise), width: length, height: Math.abs(rise) });
}

/** A stretch still to be written: an open dotted box where its notes would stand. */
function drawGaps(svg: SVGElement, plan: SystemPlan, lines: Lines, boxes: Gathered): void {
  for (const bar of plan.bars) {
    const place = lines.bars.find((each) => each.index === bar.index)!;
    for (const voice of VOICES) {
      for (const sign of bar.signs[voice]) {
        if (sign.kind !== 'gap') continue;
        const until = sign.at + sign.duration;
        const geometry = lines as SystemGeometry;
        const next = lines.columns.find((column) => column.at >= until && until < place.until);
        const x = xAt(geometry, sign.at) - 2;
        const end = next ? next.x - 8 : place.x + place.width - 7;
        const staff = STAFF_OF[voice];
        const y = lines.top[staff] + placeY(staff, sign.place) - 5;
        const box = { x, y, width: Math.max(10, end - x), height: 10 };
        const rect = addTo(svg, 'rect', { ...box, rx: 3, class: 'pw-gap' });
        rect.dataset.voice = voice;
        boxes.solid.push(box);
        boxes.gaps.push({ ...box, voice, at: sign.at, until });
      }
    }
  }
}

/** One fermata above the upper staff, one below the lower; an inner voice's own only where the outer has none there. */
function drawFermatas(svg: SVGElement, plan: SystemPlan, lines: Lines, boxes: Gathered): void {
  for (const staff of ['treble', 'bass'] as const) {
    const [upper, lower] = STAFF_VOICES[staff];
    const outer = staff === 'treble' ? upper : lower;
    const inner = staff === 'treble' ? lower : upper;
    for (const bar of plan.bars) {
      const marked = bar.signs[outer].filter((sign) => sign.fermata);
      const alone = bar.signs[inner].filter(
        (sign) =>
          sign.fermata &&
          !marked.some((other) => other.at < sign.at + sign.duration && sign.at < other.at + other.duration),
      );
      for (const sign of [...marked, ...alone]) fermata(svg, staff, sign.at, lines, boxes);
    }
  }
}

function fermata(svg: SVGElement, staff: StaffName, at: number, lines: Lines, boxes: Gathered): void {
  const here = boxes.heads.filter((head) => head.at === at && STAFF_OF[head.voice] === staff);
  const head = here[0];
  if (!head) return;
  const middle = head.x + head.width / 2;
  const x = middle - FERMATA.width / 2;
  const near = [...boxes.solid, ...boxes.thin].filter(
    (box) => box.x < x + FERMATA.width && box.x + box.width > x,
  );
  if (staff === 'treble') {
    const above = near.filter((box) => box.y < lines.top.bass - 40);
    const y = Math.min(lines.top.treble - 4, ...above.map((box) => box.y - 4));
    addText(svg, FERMATA_ABOVE, { x: middle, y }, 'pw-glyph', 'middle');
    boxes.solid.push({ x, y: y - FERMATA.height, width: FERMATA.width, height: FERMATA.height });
  } else {
    const below = near.filter((box) => box.y > lines.top.bass - 10);
    const y = Math.max(lines.top.bass + STAFF_HEIGHT + 4, ...below.map((box) => box.y + box.height + 4));
    addText(svg, FERMATA_BELOW, { x: middle, y }, 'pw-glyph', 'middle');
    boxes.solid.push({ x, y, width: FERMATA.width, height: FERMATA.height });
  }
}

/** Syllables between the staves, one line a verse, from the highest voice that has any. */
function drawLyrics(svg: SVGElement, plan: SystemPlan, lines: Lines, boxes: Gathered): void {
  const verses = plan.lyrics ?? 0;
  if (verses === 0) return;
  measure ??= canvasMeasure();
  const bottom = trebleBottom(plan.bars);
  for (const bar of plan.bars) {
    const voice = VOICES.find((each) => bar.signs[each].some((sign) => sign.lyrics));
    if (!voice) continue;
    for (const sign of bar.signs[voice]) {
      for (const [verse, syllable] of (sign.lyrics ?? []).slice(0, verses).entries()) {
        const x = xAt(lines as SystemGeometry, sign.at) + 6;
        const y = bottom + VERSE * (verse + 1);
        addText(svg, syllable, { x, y }, 'pw-lyric', 'middle');
        const width = (measure ?? guessWidth)(syllable, LYRIC_SIZE);
        boxes.solid.push({ x: x - width / 2, y: y - 10, width, height: 13 });
      }
    }
  }
}

/** SMuFL's notes for metronome marks, by their name; with a dot they are three of the next shorter. */
const TEMPO_NOTES: Readonly<Record<string, string>> = {
  semibreve: '\ueca2',
  minim: '\ueca3',
  crotchet: '\ueca5',
  quaver: '\ueca7',
  semiquaver: '\ueca9',
  demisemiquaver: '\uecab',
};
const TEMPO_DOT = '\uecb7';
/** As in engrave.css. */
const TEMPO_SIZE = 13;
const TEMPO_NOTE_SIZE = 22;

/** A new tempo over the bar it begins with, as note and figure. What it is at the beginning stands above the score. */
function drawTempos(svg: SVGElement, plan: SystemPlan, lines: Lines, boxes: Gathered): void {
  measure ??= canvasMeasure();
  for (const { at, index, tempo, metre } of plan.bars) {
    if (tempo === undefined) continue;
    const beat = countedBeat(metre);
    const dotted = beat.name.startsWith('dotted ');
    const note = TEMPO_NOTES[beat.name.replace('dotted ', '')]! + (dotted ? TEMPO_DOT : '');
    const figure = `= ${beatsAMinute(tempo, metre)}`;
    const place = lines.bars.find((bar) => bar.index === index)!;
    const x = Math.max(place.x + 2, xAt(lines as SystemGeometry, at) - 4);
    const before = (measure ?? guessWidth)(note, TEMPO_NOTE_SIZE, true) + 4;
    const width = before + (measure ?? guessWidth)(figure, TEMPO_SIZE);
    const near = [...boxes.solid, ...boxes.thin].filter(
      (box) => box.x < x + width && box.x + box.width > x && box.y < lines.top.treble + STAFF_HEIGHT,
    );
    const y = Math.min(lines.top.treble - 10, ...near.map((box) => box.y - 6));
    addText(svg, note, { x, y }, 'pw-tempo-note');
    addText(svg, figure, { x: x + before, y }, 'pw-tempo');
    boxes.solid.push({ x, y: y - 18, width, height: 20 });
  }
}

/** First- and second-time bars: a bracket above the staff with its number. */
function drawEndings(svg: SVGElement, plan: SystemPlan, lines: Lines, boxes: Gathered): void {
  const high = [...boxes.solid, ...boxes.thin].reduce((top, box) => Math.min(top, box.y), -6);
  const y = high - 18;
  for (const bar of plan.bars) {
    if (bar.ending === undefined) continue;
    const place = lines.bars.find((each) => each.index === bar.index)!;
    ending(svg, bar, place.x + 2, place.x + place.width - 3, y);
    boxes.thin.push({ x: place.x, y, width: place.width, height: 14 });
  }
}

function ending(svg: SVGElement, bar: PlannedBar, x: number, end: number, y: number): void {
  const begin = bar.endingBegins ? `M${x} ${y + 12}V${y}` : `M${x - 2} ${y}`;
  addPath(svg, `${begin}H${bar.endingEnds ? `${end}V${y + 12}` : end + 3}`, 'pw-ending');
  if (bar.endingBegins) addText(svg, `${bar.ending}.`, { x: x + 4, y: y + 11 }, 'pw-ending-number');
}
