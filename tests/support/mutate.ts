/** Damaged files for the fuzzer: any file of ours or of the shared data, changed as chance, programs and people change files. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { unzipSync, zipSync } from 'fflate';
import { readNotation } from '../../src/notation/index.ts';
import type { VoiceName } from '../../src/score/score.ts';
import { type Form, inForm } from './forms.ts';
import { CHORALES, SUITE } from './musicxml.ts';

export interface Seedling {
  readonly name: string;
  readonly bytes: Uint8Array;
  readonly kind: 'xml' | 'archive' | 'text';
  /** The files in an archive, so that it can be damaged inside as well. */
  readonly entries?: Readonly<Record<string, Uint8Array>>;
}

/** What is damaged: our exercises, the public suite and some chorales where they are at hand, and archives of them. */
export function seedlings(): Seedling[] {
  const exercises = new URL('../../fixtures/exercises/', import.meta.url).pathname;
  const found: Seedling[] = [];
  const add = (folder: string, wanted: RegExp, most: number) => {
    if (!existsSync(folder)) return;
    const files = readdirSync(folder).filter((file) => wanted.test(file));
    for (const name of files.slice(0, most)) {
      const bytes = new Uint8Array(readFileSync(folder + name));
      const kind = name.endsWith('.txt') ? 'text' : name.endsWith('.mxl') ? 'archive' : 'xml';
      found.push({ name, bytes, kind, ...(kind === 'archive' ? { entries: unzipSync(bytes) } : {}) });
      if (kind === 'xml' && folder !== SUITE) {
        const entries = { 'META-INF/container.xml': container(name), [name]: bytes };
        found.push({ name: `${name} in an archive`, bytes: zipSync(entries), kind: 'archive', entries });
      }
    }
  };
  add(exercises, /\.(txt|musicxml)$/, 100);
  add(SUITE, /\.(xml|musicxml)$/, 100);
  add(CHORALES, /\.mxl$/, 4);
  for (const file of readdirSync(exercises).filter((name) => name.endsWith('.txt'))) {
    const { score } = readNotation(readFileSync(exercises + file, 'utf8'));
    for (const [name, form] of FORMS) {
      found.push({
        name: `${file}, ${name}`,
        bytes: new TextEncoder().encode(inForm(score, form)),
        kind: 'xml',
      });
    }
  }
  return found;
}

function container(path: string): Uint8Array {
  return new TextEncoder().encode(
    `<container><rootfiles><rootfile full-path="${path}"/></rootfiles></container>`,
  );
}

const TWO = (voice: VoiceName) => (voice === 'S' || voice === 'T' ? '1' : '2');
const FORMS: readonly (readonly [string, Form])[] = [
  [
    'timewise',
    {
      parts: [[['S']], [['A']], [['T']], [['B']]],
      names: ['S', 'A', 'T', 'B'],
      timewise: true,
      divisions: 12,
    },
  ],
  [
    'closed score',
    {
      parts: [
        [
          ['S', 'A'],
          ['T', 'B'],
        ],
      ],
      number: TWO,
      stems: true,
      divisions: 12,
    },
  ],
  [
    'chords',
    { parts: [[['S', 'A']], [['T', 'B']]], number: TWO, chords: true, divisions: 12, gaps: 'forward' },
  ],
  [
    'no names',
    { parts: [[['S'], ['A'], ['T'], ['B']]], divisions: 12, gaps: 'whole-bar rests', fermatas: 'barline' },
  ],
];

type Mutation =
  | { readonly op: 'flip'; readonly at: number; readonly bit: number }
  | { readonly op: 'cut'; readonly at: number; readonly length: number }
  | { readonly op: 'copy'; readonly at: number; readonly length: number; readonly to: number }
  | { readonly op: 'insert'; readonly at: number; readonly bytes: Uint8Array }
  | { readonly op: 'end'; readonly at: number }
  | { readonly op: 'number'; readonly at: number; readonly value: string }
  | {
      readonly op: 'element';
      readonly at: number;
      readonly how: 'drop' | 'double' | 'empty' | 'rename';
      readonly name: string;
    }
  | { readonly op: 'word'; readonly at: number; readonly value: string };

export interface Damage {
  readonly base: number;
  readonly mutations: readonly Mutation[];
}

/** Where in the file, as a share of its length. (fast-check's own doubles lie nearly all next to 0.) */
const place = fc.integer({ min: 0, max: 1_000_000 }).map((n) => n / 1_000_000);
/** Half of them may be right where they come to stand. */
const NUMBERS = [
  ...[
    '1',
    '2',
    '3',
    '4',
    '5',
    '6',
    '7',
    '8',
    '12',
    '16',
    '24',
    '48',
    '5',
    '4',
    '3',
    '2',
    '1',
    '0.5',
    '-1',
    '0',
  ],
  ...[
    '-1',
    '0',
    '-0',
    '99',
    '1e309',
    'NaN',
    '',
    ' ',
    '999999999',
    '0x10',
    '١',
    '1/0',
    '16384',
    '2.0000001',
    '-7',
    '17',
  ],
];
const NAMES = [
  'note',
  'rest',
  'chord',
  'grace',
  'pitch',
  'backup',
  'forward',
  'measure',
  'part',
  'voice',
  'staff',
  'attributes',
  'score-partwise',
  'x',
];
const WORDS = [
  '?',
  '=',
  '(',
  ')',
  '|',
  '||:',
  '!',
  '*',
  '/2',
  '*3/2',
  '*0',
  '*-1',
  '*99999',
  '/0',
  'r',
  'C4',
  'H9',
  'F##',
  'Bbb3',
  '_',
  'S:',
  'X:',
  'key:',
  'metre: 0/0',
  'metre: 7/8',
  'upbeat: 99',
  '\n',
  '\u0000',
  '((((',
  '(C5 D5)*2/3',
  '=*9',
];

const mutation: fc.Arbitrary<Mutation> = fc.oneof(
  fc.record({ op: fc.constant('flip' as const), at: place, bit: fc.nat(7) }),
  fc.record({ op: fc.constant('cut' as const), at: place, length: fc.nat(400) }),
  fc.record({ op: fc.constant('copy' as const), at: place, length: fc.nat(400), to: place }),
  fc.record({ op: fc.constant('insert' as const), at: place, bytes: fc.uint8Array({ maxLength: 12 }) }),
  fc.record({ op: fc.constant('end' as const), at: place }),
  fc.record({ op: fc.constant('number' as const), at: place, value: fc.constantFrom(...NUMBERS) }),
  fc.record({
    op: fc.constant('element' as const),
    at: place,
    how: fc.constantFrom('drop' as const, 'double' as const, 'empty' as const, 'rename' as const),
    name: fc.constantFrom(...NAMES),
  }),
  fc.record({ op: fc.constant('word' as const), at: place, value: fc.constantFrom(...WORDS) }),
);

export function damages(seeds: readonly Seedling[]): fc.Arbitrary<Damage> {
  // Changes that keep the file whole come more often: broken XML says little about what is behind the parser.
  const whole = mutation.filter((one) => one.op === 'number' || one.op === 'element' || one.op === 'word');
  return fc.record({
    base: fc.nat(seeds.length - 1),
    mutations: fc.oneof(
      { weight: 3, arbitrary: fc.array(whole, { minLength: 1, maxLength: 5 }) },
      { weight: 1, arbitrary: fc.array(mutation, { minLength: 1, maxLength: 6 }) },
    ),
  });
}

/** The damaged file. Of an archive, what is inside is damaged first; then it is packed, and damaged again from outside. */
export function damaged(seeds: readonly Seedling[], damage: Damage): Seedling {
  const seed = seeds[damage.base]!;
  let { bytes } = seed;
  const inside = damage.mutations.filter((one) => one.op === 'number' || one.op === 'element');
  if (seed.entries !== undefined && inside.length > 0) {
    const entries = Object.entries(seed.entries).map(([name, content]): [string, Uint8Array] => [
      name,
      inside.reduce((sum, one) => apply(sum, one, 'xml'), content),
    ]);
    bytes = zipSync(Object.fromEntries(entries), { level: 1 });
  }
  for (const one of damage.mutations) {
    if (seed.entries === undefined || !(one.op === 'number' || one.op === 'element'))
      bytes = apply(bytes, one, seed.kind);
  }
  return { ...seed, bytes };
}

function apply(bytes: Uint8Array, mutation: Mutation, kind: Seedling['kind']): Uint8Array {
  const at = Math.floor(mutation.at * bytes.length);
  switch (mutation.op) {
    case 'flip': {
      const copy = Uint8Array.from(bytes);
      if (copy.length > at) copy[at] = copy[at]! ^ (1 << mutation.bit);
      return copy;
    }
    case 'cut':
      return joined(bytes.subarray(0, at), bytes.subarray(at + mutation.length));
    case 'copy': {
      const to = Math.floor(mutation.to * bytes.length);
      return joined(bytes.subarray(0, to), bytes.subarray(at, at + mutation.length), bytes.subarray(to));
    }
    case 'insert':
      return joined(bytes.subarray(0, at), mutation.bytes, bytes.subarray(at));
    case 'end':
      return bytes.slice(0, at);
    case 'word':
      return kind === 'text' ? replaced(bytes, /\S+/g, at, () => mutation.value) : bytes;
    case 'number':
      return replaced(bytes, /-?\d+(\.\d+)?/g, at, () => mutation.value);
    case 'element':
      if (kind !== 'xml') return bytes;
      return replaced(
        bytes,
        /<([\w-]+)[^>]*?(\/>|>[^<]*<\/\1>)|<(note|attributes|measure)\b[\s\S]*?<\/\3>/g,
        at,
        (found) => {
          switch (mutation.how) {
            case 'drop':
              return '';
            case 'double':
              return found + found;
            case 'empty':
              return found.replace(/>[\s\S]*</, '><');
            default:
              return found
                .replace(/^<[\w-]+/, `<${mutation.name}`)
                .replace(/<\/[\w-]+>$/, `</${mutation.name}>`);
          }
        },
      );
  }
}

function joined(...parts: readonly Uint8Array[]): Uint8Array {
  return new Uint8Array(Buffer.concat(parts));
}

/** Replaces the first match at or after a place. Bytes are taken for Latin-1, so that none is lost. */
function replaced(bytes: Uint8Array, what: RegExp, at: number, by: (found: string) => string): Uint8Array {
  const text = Buffer.from(bytes).toString('latin1');
  what.lastIndex = at;
  const found = what.exec(text);
  if (found === null) return bytes;
  const changed = text.slice(0, found.index) + by(found[0]) + text.slice(found.index + found[0].length);
  return new Uint8Array(Buffer.from(changed, 'latin1'));
}
