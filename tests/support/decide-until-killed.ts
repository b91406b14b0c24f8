/**
 * Decides about a script over and over, and prints each decision's id once the desk has confirmed it. The crash test
 * kills this process and looks what is left: `tsx decide-until-killed.ts DESK.sqlite SCRIPT`.
 */
import { writeSync } from 'node:fs';
import { openForWriting } from '../../server/desk/open.ts';
import { Desk } from '../../server/desk/store.ts';

const [path, script] = process.argv.slice(2);
const desk = new Desk(await openForWriting(path!));
const id = Number(script);
const { stack, revision } = desk.script(id);
for (let seen = revision; ; seen++) {
  const { id: decision } = desk.decide(stack, id, seen, {
    kind: 'remark',
    script: String(id),
    from: seen % 8,
    text: `Remark ${seen}`,
  });
  // Written at once, not through a stream that a kill would empty.
  writeSync(1, `${decision}\n`);
}
