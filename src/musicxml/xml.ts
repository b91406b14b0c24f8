/**
 * One pass over the XML. A score is far larger than any bar of it, so no tree of the whole is built: the outer elements
 * (score, part, measure) are reported as they open and close, and each thing inside them (a note, an attributes
 * element) is handed over as a small tree of its own and then forgotten.
 */
import { SaxesParser } from 'saxes';
import { LIMITS } from './limits.ts';
import { quoted, Refusal } from './refusal.ts';

export interface XmlElement {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  /** All text directly inside, in one string, not trimmed. */
  text: string;
  readonly children: XmlElement[];
  /** Counted from 1. */
  readonly line: number;
  readonly column: number;
  /** Where its content begins in the text: just behind the opening tag. Counted from 0. */
  readonly inside: number;
  /** Where it ends: just behind the closing tag; known once it is closed. */
  until: number;
}

export interface XmlListener {
  /** An outer element begins. */
  readonly open: (element: XmlElement, inside: XmlElement | undefined) => void;
  /** An outer element ends. */
  readonly close: (element: XmlElement) => void;
  /** A whole element inside an outer one. */
  readonly whole: (element: XmlElement, inside: XmlElement) => void;
}

/** Which elements are outer ones, and what to say where the outermost is none of them. */
export interface DocumentKind {
  readonly outer: ReadonlySet<string>;
  readonly wrongRoot: (name: string) => string;
}

/** Characters given to the parser at a time, so that a limit stops it soon. */
const PORTION = 65_536;

/**
 * Parses a document strictly. Document type declarations are passed over, entities other than the five of XML are an
 * error and nothing is ever fetched.
 * @throws {Refusal} with line and column, for what is not well-formed or too big.
 */
export function parseXml(text: string, kind: DocumentKind, listener: XmlListener): void {
  const parser = new SaxesParser<{ position: true; xmlns: false }>({ position: true, xmlns: false });
  /** The outer elements that are open, and how many elements are open in all. */
  const outer: XmlElement[] = [];
  const inner: XmlElement[] = [];
  let depth = 0;
  let count = 0;
  const here = () => ({ line: parser.line, column: parser.column + 1 });

  parser.on('error', (error) => {
    const what = error.message.includes('entity')
      ? 'an undefined entity stands here, an abbreviation that MusicXML does not have'
      : 'it is damaged here, or was cut off';
    throw new Refusal(`The file is not well-formed XML: ${what}. Save or export it again.`, here());
  });
  parser.on('opentag', (tag) => {
    depth++;
    count++;
    if (depth > LIMITS.depth) {
      throw new Refusal(`Elements are nested more than ${LIMITS.depth} deep; no score needs that.`, here());
    }
    if (count > LIMITS.elements) {
      throw new Refusal(
        `The file has more than ${LIMITS.elements.toLocaleString('en-GB')} elements, too many for one exercise.`,
        here(),
      );
    }
    const element: XmlElement = {
      name: tag.name,
      attributes: tag.attributes,
      text: '',
      children: [],
      ...here(),
      inside: parser.position,
      until: parser.position,
    };
    const parent = inner.at(-1);
    if (parent !== undefined) {
      parent.children.push(element);
      inner.push(element);
    } else if (kind.outer.has(tag.name) && outer.length === depth - 1) {
      listener.open(element, outer.at(-1));
      outer.push(element);
    } else if (outer.length === 0) {
      throw new Refusal(kind.wrongRoot(tag.name), here());
    } else {
      inner.push(element);
    }
  });
  parser.on('closetag', () => {
    depth--;
    const element = inner.pop();
    if (element === undefined) {
      const closed = outer.pop()!;
      closed.until = parser.position;
      listener.close(closed);
      return;
    }
    element.until = parser.position;
    if (inner.length === 0) listener.whole(element, outer.at(-1)!);
  });
  const addText = (chunk: string) => {
    const element = inner.at(-1);
    if (element === undefined) return;
    if (element.text.length + chunk.length > LIMITS.textLength) {
      throw new Refusal(`The text of the element ${quoted(element.name)} is far too long.`, here());
    }
    element.text += chunk;
  };
  parser.on('text', addText);
  parser.on('cdata', addText);

  for (let at = 0; at < text.length; at += PORTION) parser.write(text.slice(at, at + PORTION));
  parser.close();
}

export function childOf(element: XmlElement, name: string): XmlElement | undefined {
  for (const child of element.children) if (child.name === name) return child;
  return undefined;
}

export function childrenOf(element: XmlElement, name: string): XmlElement[] {
  return element.children.filter((child) => child.name === name);
}

/** The trimmed text of a child, or undefined where there is no such child. */
export function textOf(element: XmlElement, name: string): string | undefined {
  return childOf(element, name)?.text.trim();
}
