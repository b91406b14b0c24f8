/**
 * One pass over the XML. A score is far larger than any bar of it, so no tree of the whole is built: the outer elements
 * (score, part, measure) are reported as they open and close, and each thing inside them (a note, an attributes
 * element) is handed over as a small tree of its own and then forgotten.
 */
import { SaxesParser } from 'saxes';
import { Refused } from '../refusal/refusal.ts';
import { LIMITS } from './limits.ts';
import { quoted } from './quoted.ts';

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
 * @throws {Refused} with line and column, for what is not well-formed or too big.
 */
export function parseXml(text: string, kind: DocumentKind, listener: XmlListener): void {
  const parser: Parser = new SaxesParser({ position: true, xmlns: false });
  const growth = new Growth(parser, kind, listener);
  parser.on('error', (error) => growth.refuseDamage(error.message));
  parser.on('opentag', (tag) => growth.open(tag));
  parser.on('closetag', () => growth.close());
  parser.on('text', (chunk) => growth.addText(chunk));
  parser.on('cdata', (chunk) => growth.addText(chunk));
  for (let at = 0; at < text.length; at += PORTION) parser.write(text.slice(at, at + PORTION));
  parser.close();
}

type Parser = SaxesParser<{ position: true; xmlns: false }>;

/** The elements that are open, and those inside the innermost outer one, which grow into a small tree. */
class Growth {
  private readonly outer: XmlElement[] = [];
  private readonly inner: XmlElement[] = [];
  private depth = 0;
  private count = 0;

  constructor(
    private readonly parser: Parser,
    private readonly kind: DocumentKind,
    private readonly listener: XmlListener,
  ) {}

  refuseDamage(message: string): never {
    const what = message.includes('entity')
      ? 'an undefined entity stands here, an abbreviation that MusicXML does not have'
      : 'it is damaged here, or was cut off';
    throw new Refused(`The file is not well-formed XML: ${what}. Save or export it again.`, this.here());
  }

  open({ name, attributes }: Pick<XmlElement, 'name' | 'attributes'>): void {
    this.countOne();
    const at = this.parser.position;
    const element: XmlElement = {
      name,
      attributes,
      text: '',
      children: [],
      line: this.parser.line,
      column: this.parser.column + 1,
      inside: at,
      until: at,
    };
    const parent = this.inner.at(-1);
    if (parent !== undefined) {
      parent.children.push(element);
      this.inner.push(element);
    } else if (this.kind.outer.has(name) && this.outer.length === this.depth - 1) {
      this.listener.open(element, this.outer.at(-1));
      this.outer.push(element);
    } else if (this.outer.length === 0) {
      throw new Refused(this.kind.wrongRoot(name), this.here());
    } else {
      this.inner.push(element);
    }
  }

  close(): void {
    this.depth--;
    const element = this.inner.pop();
    if (element === undefined) {
      const closed = this.outer.pop()!;
      closed.until = this.parser.position;
      this.listener.close(closed);
      return;
    }
    element.until = this.parser.position;
    if (this.inner.length === 0) this.listener.whole(element, this.outer.at(-1)!);
  }

  addText(chunk: string): void {
    const element = this.inner.at(-1);
    if (element === undefined) return;
    if (element.text.length + chunk.length > LIMITS.textLength) {
      throw new Refused(`The text of the element ${quoted(element.name)} is far too long.`, this.here());
    }
    element.text += chunk;
  }

  private countOne(): void {
    this.depth++;
    this.count++;
    if (this.depth > LIMITS.depth) {
      throw new Refused(
        `Elements are nested more than ${LIMITS.depth} deep; no score needs that.`,
        this.here(),
      );
    }
    if (this.count > LIMITS.elements) {
      throw new Refused(
        `The file has more than ${LIMITS.elements.toLocaleString('en-GB')} elements, too many for one exercise.`,
        this.here(),
      );
    }
  }

  private here(): { readonly line: number; readonly column: number } {
    return { line: this.parser.line, column: this.parser.column + 1 };
  }
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
