/** A script's score with its findings and the teacher's remarks as numbered tags. */
import { html, type TemplateResult } from 'lit';
import { AsyncDirective } from 'lit/async-directive.js';
import { directive, type ElementPart } from 'lit/directive.js';
import { numbersOf } from '../../src/desk/index.ts';
import type { Judged, Remark } from '../../src/desk/wire-shapes.ts';
import { analyse } from '../../src/harmony/analyse.ts';
import type { Analysis } from '../../src/harmony/analysis.ts';
import type { Score } from '../../src/score/score.ts';
import { type Texture, type Tone, textureOf } from '../../src/score/texture.ts';
import { CROTCHET, type Ticks } from '../../src/score/time.ts';
import {
  ALL_LAYERS,
  createEngraving,
  type Engraving,
  type Hit,
  type MarkedFinding,
  type Marks,
} from '../engrave/index.ts';

export interface MarkedScore {
  readonly score: Score;
  readonly findings: readonly Judged[];
  readonly remarks: readonly Remark[];
  /** Drawn to the end at once, for printing; else what is in view comes first. */
  readonly whole?: true;
}

/** Analyses are kept as long as their scores: choosing a finding must not read the harmony again. */
const analyses = new WeakMap<Score, Analysis>();

function analysisOf(score: Score): Analysis {
  const known = analyses.get(score);
  if (known !== undefined) return known;
  const analysis = analyse(textureOf(score));
  analyses.set(score, analysis);
  return analysis;
}

/** Crotchets, as the service says them, in ticks. */
function ticks(crotchets: number): Ticks {
  return Math.round(crotchets * CROTCHET);
}

/** The marks as the engraver takes them: findings numbered as listed, remarks lettered. */
function deskMarks({ score, findings, remarks }: MarkedScore): Marks {
  const { texture, chords, keys, seconds, ornaments, cadences } = analysisOf(score);
  const numbers = numbersOf(findings);
  const marked: MarkedFinding[] = findings.map((finding) => ({
    id: finding.id,
    label: String(numbers.get(finding.id)),
    severity: finding.severity,
    family: finding.family,
    voices: finding.voices,
    from: ticks(finding.from),
    until: ticks(finding.until),
    tones: finding.notes.flatMap(({ voice, at }) => toneAt(texture, voice, ticks(at))),
    ...(finding.standing === 'overruled' ? { waived: true } : {}),
  }));
  const own: MarkedFinding[] = placed(remarks).map(({ id, voice, from, until }, i) => ({
    id,
    label: letterOf(i),
    severity: 'remark',
    family: 'melody',
    voices: voice === undefined ? [] : [voice],
    from: ticks(from),
    until: ticks(until ?? from + 1),
    tones: [],
    own: true,
  }));
  return { findings: [...marked, ...own], chords, keys, seconds, ornaments, cadences };
}

/** The remarks that have a place in the score: the others are about all of it. */
export function placed(remarks: readonly Remark[]): (Remark & { readonly from: number })[] {
  return remarks.flatMap((remark) => (remark.from === undefined ? [] : [{ ...remark, from: remark.from }]));
}

/** `a`, `b`, … `z`, `aa`. */
export function letterOf(index: number): string {
  const letter = String.fromCharCode(97 + (index % 26));
  return index < 26 ? letter : `${letterOf(Math.floor(index / 26) - 1)}${letter}`;
}

function toneAt(texture: Texture, voice: Tone['voice'], at: Ticks): Tone[] {
  return texture.tones[voice].filter((tone) => tone.at <= at && at < tone.until);
}

/** Small enough for an exercise and its comments on one page: the more bars, the smaller, and never too small to read. */
function scaleOnPaper({ bars }: Score): number {
  return Math.max(0.44, Math.min(0.58, 0.58 * Math.sqrt(8 / Math.max(1, bars.length))));
}

export interface ScoreEvents {
  readonly onSelect?: (id: string | undefined) => void;
  readonly onPoint?: (hit: Hit) => void;
}

class MarkedScoreDirective extends AsyncDirective {
  private engraving: Engraving | undefined;
  private observer: ResizeObserver | undefined;
  private element: HTMLElement | undefined;
  private shown: MarkedScore | undefined;
  private marks: Marks | undefined;
  private chosen: string | undefined;
  private events: ScoreEvents = {};

  render(_shown: MarkedScore, _chosen: string | undefined, _events: ScoreEvents): undefined {
    return undefined;
  }

  override update(
    part: ElementPart,
    [shown, chosen, events]: [MarkedScore, string | undefined, ScoreEvents],
  ): undefined {
    this.events = events;
    if (this.element !== part.element) {
      this.element = part.element as HTMLElement;
      this.engraving = createEngraving(this.element, {
        onSelectFinding: (id) => this.events.onSelect?.(id),
        onPoint: (hit) => this.events.onPoint?.(hit),
      });
      this.observer = new ResizeObserver(() => this.draw());
      this.observer.observe(this.element);
    }
    const same =
      this.shown?.score === shown.score &&
      this.shown.findings === shown.findings &&
      this.shown.remarks === shown.remarks;
    if (!same) {
      this.shown = shown;
      this.marks = deskMarks(shown);
      this.draw();
    }
    if (this.chosen !== chosen) {
      this.chosen = chosen;
      this.engraving?.select(chosen);
      // Only then: whoever writes a remark elsewhere in the score stays there.
      if (chosen !== undefined) this.engraving?.scrollTo({ finding: chosen }, true);
    }
    return undefined;
  }

  private draw(): void {
    const width = this.element?.clientWidth ?? 0;
    if (width === 0 || this.shown === undefined || this.marks === undefined) return;
    this.engraving?.update({
      score: this.shown.score,
      marks: this.marks,
      width,
      layers: ALL_LAYERS,
      ...(this.shown.whole ? { scale: scaleOnPaper(this.shown.score) } : {}),
    });
    if (this.shown.whole) this.engraving?.complete();
    this.engraving?.select(this.chosen);
  }

  protected override disconnected(): void {
    this.observer?.disconnect();
    this.engraving?.destroy();
    this.element = undefined;
  }
}

const marked = directive(MarkedScoreDirective);

/** `words` stand for the drawing to those who don't see it. */
export function markedScore(
  shown: MarkedScore,
  chosen: string | undefined,
  words: string,
  events: ScoreEvents = {},
): TemplateResult {
  return html`<div class="score" role="img" aria-label=${words} ${marked(shown, chosen, events)}></div>`;
}
