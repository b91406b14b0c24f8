/** A measured value in words, the same on page, paper and command line. */
import type { Unit } from './measure.ts';
import type { Style, StyleValue } from './profile.ts';

/** A figure with its unit: `12 % of beats`, `0.4 a beat`. */
function inUnit(value: number, unit: Unit): string {
  return `${figure(value, unit)} ${unit}`;
}

/** The figure alone, with as many places as can be trusted. */
function figure(value: number, unit: Unit): string {
  return unit.startsWith('%')
    ? String(Math.round(value))
    : unit === 'a beat'
      ? value.toFixed(2)
      : value.toFixed(1);
}

/** `12 % of beats; in nine chorales of ten it is between 18 and 77.` */
export function placeInWords({ measure: { unit }, value, band }: StyleValue): string {
  return `${inUnit(value, unit)}; in nine chorales of ten it is between ${figure(band.low, unit)} and ${figure(band.high, unit)}.`;
}

/** Advice for a value outside the band; undefined within. */
export function adviceOn({ measure, outside }: StyleValue): string | undefined {
  return outside === undefined ? undefined : measure[outside];
}

/** Why nothing is told of a short piece. */
export function tooShortInWords({ beats, needed }: Extract<Style, { kind: 'too short' }>): string {
  return `Too short to tell: ${beats === 1 ? '1 beat is' : `${beats} beats are`} written in all four voices, and fewer than ${needed} say nothing about style.`;
}

/** What the profile can't show. Stands wherever it is shown. */
export const CAUTION =
  'This counts what the model’s chorales have in common. Lying within them does not make a piece good: imitations made by a machine lie there too. It gives no mark.';
