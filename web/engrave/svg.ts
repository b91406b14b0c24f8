/** The few SVG elements that are drawn without VexFlow. */
import type { Point } from './geometry.ts';

const SVG = 'http://www.w3.org/2000/svg';

type Attributes = Readonly<Record<string, string | number>>;

/** Adds an element with its attributes; lengths are rounded to hundredths. */
export function addTo<K extends keyof SVGElementTagNameMap>(
  parent: SVGElement,
  name: K,
  attributes: Attributes,
): SVGElementTagNameMap[K] {
  const element = document.createElementNS(SVG, name);
  for (const [key, value] of Object.entries(attributes)) {
    element.setAttribute(key, typeof value === 'number' ? String(Math.round(value * 100) / 100) : value);
  }
  parent.appendChild(element);
  return element;
}

export function addPath(parent: SVGElement, d: string, name: string): SVGPathElement {
  const rounded = d.replace(/-?\d{1,15}\.\d+/g, (number) => String(Math.round(Number(number) * 100) / 100));
  return addTo(parent, 'path', { d: rounded, class: name });
}

export function addText(
  parent: SVGElement,
  text: string,
  { x, y }: Point,
  name: string,
  anchor: 'start' | 'middle' | 'end' = 'start',
): SVGTextElement {
  const element = addTo(parent, 'text', { x, y, class: name, 'text-anchor': anchor });
  element.textContent = text;
  return element;
}
