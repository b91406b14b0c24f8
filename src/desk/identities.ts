/** Whose scripts the files of a whole stack are: a name alone can't tell which of its numbers is the candidate's. */
import { counted, listed } from '../english/words.ts';
import { type CandidatePattern, candidateOf, numbersIn } from './candidate.ts';

export interface NamedFile {
  readonly id: number;
  readonly file: string;
  /** In it; empty for one that could not be read. */
  readonly title: string;
}

export interface Identified {
  readonly id: number;
  readonly candidate?: string;
  readonly draft: number;
}

/** From so many files on a number that all names have is told from a candidate's. */
const LEAST_FILES = 3;

/**
 * Candidate and draft of every file. A number that all names share (a year, a class) is nobody's, as long as most names
 * have another. Of files by one candidate that name no draft, each is the next, in the order given. Pure.
 */
export function identify(files: readonly NamedFile[], pattern?: CandidatePattern): Identified[] {
  const shared = sharedNumbers(files);
  const drafts = new Map<string, Set<number>>();
  const read = files.map(({ file, title }) => candidateOf(file, title, pattern, shared));
  for (const one of read) if (one.ok && one.draft !== undefined) taken(drafts, one.candidate).add(one.draft);
  return read.map((one, i): Identified => {
    const { id } = files[i]!;
    if (!one.ok) return { id, draft: 1 };
    const { candidate, draft } = one;
    if (draft !== undefined) return { id, candidate, draft };
    const used = taken(drafts, candidate);
    let next = 1;
    while (used.has(next)) next++;
    used.add(next);
    return { id, candidate, draft: next };
  });
}

function taken(drafts: Map<string, Set<number>>, candidate: string): Set<number> {
  const known = drafts.get(candidate);
  if (known !== undefined) return known;
  const fresh = new Set<number>();
  drafts.set(candidate, fresh);
  return fresh;
}

function sharedNumbers(files: readonly NamedFile[]): ReadonlySet<string> {
  const names = files.map(({ file }) => numbersIn(file));
  const [first] = names;
  if (first === undefined || files.length < LEAST_FILES) return new Set();
  const shared = new Set(first.filter((number) => names.every((numbers) => numbers.includes(number))));
  const others = names.filter((numbers) => numbers.some((number) => !shared.has(number)));
  return 2 * others.length > files.length ? shared : new Set();
}

/** What lies on a stack, before anything is marked. */
export interface Intake {
  /** How many scripts each candidate has; `undefined` stands for those nobody can be told for. */
  readonly byCandidate: ReadonlyMap<string | undefined, number>;
  readonly unreadable: number;
  /** Names of the files that are no scripts. */
  readonly apart: readonly string[];
}

/** Files by one candidate that are too many to be drafts. */
const MANY = 5;

/** `41 files: 36 scripts by 31 candidates, 3 of them twice; 5 not scripts.` */
export function intakeSentence({ byCandidate, unreadable, apart }: Intake): string {
  const scripts = [...byCandidate.values()].reduce((sum, n) => sum + n, 0);
  const known = [...byCandidate].filter(([candidate]) => candidate !== undefined);
  const times = [...new Set(known.map(([, n]) => n))].filter((n) => n > 1).sort((a, b) => a - b);
  const several = times.map(
    (n) => `${known.filter(([, count]) => count === n).length} of them ${n === 2 ? 'twice' : `${n} times`}`,
  );
  const parts = [
    `${counted(scripts, 'script')} by ${counted(known.length, 'candidate')}${several.length === 0 ? '' : `, ${listed(several)}`}`,
    ...(unreadable === 0 ? [] : [`${unreadable} of them can’t be read`]),
    ...(apart.length === 0 ? [] : [`${apart.length} not ${apart.length === 1 ? 'a script' : 'scripts'}`]),
  ];
  return `${counted(scripts + apart.length, 'file')}: ${parts.join('; ')}.`;
}

/** What a teacher should look at before marking, the most doubtful first, each in a sentence. */
export function intakeDoubts({ byCandidate, apart }: Intake): string[] {
  const many = [...byCandidate].filter(([candidate, n]) => candidate !== undefined && n >= MANY);
  const nameless = byCandidate.get(undefined) ?? 0;
  return [
    ...many
      .sort((a, b) => b[1] - a[1])
      .map(
        ([candidate, n]) =>
          `${n} files are read as candidate ${candidate}’s. If that is no candidate’s number, say in Settings how files are named.`,
      ),
    ...(nameless === 0
      ? []
      : [
          `${counted(nameless, 'script')} ${nameless === 1 ? 'has' : 'have'} no candidate number: open ${nameless === 1 ? 'it' : 'them'} and say whose ${nameless === 1 ? 'it is' : 'they are'}.`,
        ]),
    ...(apart.length === 0 ? [] : [`Not scripts, and left apart: ${listed(shortened(apart))}.`]),
  ];
}

/** The most names that a sentence lists. */
const MOST_NAMES = 8;

function shortened(names: readonly string[]): string[] {
  const shown = names.slice(0, MOST_NAMES);
  const rest = names.length - shown.length;
  return rest === 0 ? [...shown] : [...shown, counted(rest, 'other')];
}

/** How PDFs, PNG, JPEG and GIF pictures, old office documents, MP3 and MIDI files begin. */
const SIGNATURES: readonly (readonly number[])[] = [
  [0x25, 0x50, 0x44, 0x46],
  [0x89, 0x50, 0x4e, 0x47],
  [0xff, 0xd8, 0xff],
  [0x47, 0x49, 0x46, 0x38],
  [0xd0, 0xcf, 0x11, 0xe0],
  [0x49, 0x44, 0x33],
  [0x4d, 0x54, 0x68, 0x64],
];
const OTHER_NAMES =
  /(^|[/\\])(thumbs\.db|desktop\.ini|\.ds_store)$|\.(docx?|odt|rtf|pdf|xlsx?|pptx?|png|jpe?g|gif|heic|mp3|wav|m4a|midi?|lnk|url|html?)$/i;

/** True for a file that nobody hands in as a script: pictures, documents, recordings, what systems leave behind. */
export function isNoScript(file: string, content: Uint8Array): boolean {
  return OTHER_NAMES.test(file) || SIGNATURES.some((bytes) => bytes.every((byte, i) => content[i] === byte));
}
