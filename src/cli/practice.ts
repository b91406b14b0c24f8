/** `partwise practice`: short exercises for what went wrong, each proved solvable. */
import { existsSync } from 'node:fs';
import { printBrief } from '../brief/brief.ts';
import { capitalised, counted, listed } from '../english/words.ts';
import { writeMusicXml } from '../musicxml/index.ts';
import { printNotation } from '../notation/index.ts';
import { AIMS, type Aim, aimNamed, aimsFor } from '../practice/aims.ts';
import { MOST_EXERCISES, MOST_SEED, practise, proofInWords } from '../practice/practice.ts';
import { Refused } from '../refusal/refusal.ts';
import { WIDTH, wrap } from '../report/wrap.ts';
import { RULES } from '../rules/list.ts';
import { linkTo } from '../set/link.ts';
import { EXIT } from './exit.ts';
import { printedWorksheet } from './worksheet.ts';
import { writeAll } from './write-all.ts';

export interface PracticeOptions {
  readonly for?: string;
  /** A desk's file: what went wrong most on its stack. */
  readonly desk?: string;
  readonly stack?: string;
  readonly number: string;
  readonly seed?: string;
  readonly output: string;
  readonly page: string;
  readonly force?: true;
}

export async function practiceCommand(options: PracticeOptions): Promise<number> {
  const { aims, said } = await aimsFrom(options);
  const number = whole('--number', options.number, 1, MOST_EXERCISES);
  const seed =
    options.seed === undefined
      ? 1 + Math.floor(Math.random() * MOST_SEED)
      : whole('--seed', options.seed, 1, MOST_SEED);
  const made = practise({ aims, number, seed });
  if (!made.ok) throw new Refused(made.message);
  const { exercises } = made;
  const link = linkTo(exercises.map(({ brief }) => brief));
  const worksheet = link.ok ? await printedWorksheet(link.hash, options.page) : { files: {}, lines: [] };
  await writeAll(options, {
    ...Object.fromEntries(
      exercises.flatMap(({ brief }, i) => [
        [`${i + 1}.brief.txt`, printBrief(brief)],
        [`${i + 1}.musicxml`, writeMusicXml(brief.score)],
        [`${i + 1}.txt`, printNotation(brief.score, { whole: true })],
      ]),
    ),
    ...worksheet.files,
  });
  const lines = [
    ...said,
    `Seed ${seed}: the same seed makes the same exercises again.`,
    ...exercises.map(
      ({ aim, brief, proof }) =>
        `${brief.score.title}: ${aim.name}. ${capitalised(brief.task)}. ${proofInWords(proof)}`,
    ),
    `Written into ${options.output}: ${counted(exercises.length, 'exercise')}, each as a brief to mark by, as MusicXML and as text.`,
  ];
  const address = link.ok
    ? ['The link, which opens the pupils’ page with them in it:', `${options.page}#${link.hash}`]
    : wrap(link.message, WIDTH);
  process.stdout.write(
    `${[...lines.flatMap((line) => wrap(line, WIDTH)), ...worksheet.lines, ...address].join('\n')}\n`,
  );
  return EXIT.fine;
}

interface Asked {
  readonly aims: readonly Aim[];
  /** What was read of the class. */
  readonly said: readonly string[];
}

/** @throws {Refused} */
async function aimsFrom({ for: names, desk, stack }: PracticeOptions): Promise<Asked> {
  if (names !== undefined) return { aims: aimsAsked(names), said: [] };
  if (desk === undefined)
    throw new Refused(
      'Say what to practise: --for names it, --desk FILE reads what went wrong most from a marking desk.',
    );
  return aimsOfClass(desk, stack);
}

/** For what went wrong in most scripts of a stack, the most first. @throws {Refused} */
async function aimsOfClass(file: string, stackName: string | undefined): Promise<Asked> {
  if (!existsSync(file))
    throw new Refused(
      `There is no desk at ${file}. It is the file desk/desk.sqlite in a folder that was marked.`,
    );
  const { openDesk } = await import('../../server/main.ts');
  const desk = await openDesk(file);
  try {
    const stacks = desk.desk.stacks();
    const names = listed(stacks.map(({ name }) => `“${name}”`));
    const asked = stackName === undefined ? stacks : stacks.filter(({ name }) => name === stackName);
    const [stack] = asked;
    if (stack === undefined)
      throw new Refused(
        stacks.length === 0 ? `${file} has no stack yet.` : `There is no such stack; there is ${names}.`,
      );
    if (asked.length > 1) throw new Refused(`Say which stack with --stack: there is ${names}.`);
    const { rules, summary } = await desk.classPicture(stack.id);
    const aims = aimsFor(rules.slice(0, MOST_RULES));
    if (aims.length === 0)
      throw new Refused(
        `${summary} There are no short exercises for what went wrong most; --for names others.`,
      );
    return { aims, said: [`${stack.name}: ${summary}`] };
  } finally {
    await desk.close();
  }
}

/** As many as the class page gives practice in: three families, two rules each. */
const MOST_RULES = 6;

/** Aims by their own names, or by the rules that they give practice in. */
function aimsAsked(text: string): Aim[] {
  const aims = text.split(',').map((part): Aim => {
    const name = part.trim().toLowerCase();
    const rule = RULES.find(({ id }) => id === name);
    const aim =
      aimNamed(name) ?? (rule === undefined ? undefined : aimsFor([{ rule: name, family: rule.family }])[0]);
    if (aim !== undefined) return aim;
    const known = listed(AIMS.map(({ id }) => id));
    throw new Refused(
      rule === undefined
        ? `There is no practice for “${name}”. There is for ${known}, and for rules as \`partwise rules\` lists them.`
        : `There are no short exercises for ${rule.name.toLowerCase()}. There are for ${known}.`,
    );
  });
  return [...new Set(aims)];
}

function whole(name: string, text: string, least: number, most: number): number {
  const number = Number(text);
  if (/^\d{1,6}$/.test(text) && number >= least && number <= most) return number;
  throw new Refused(`${name} ${text}: a whole number from ${least} to ${most} was expected.`);
}
