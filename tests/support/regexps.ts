/** Every regular expression written in a folder's TypeScript, found by the compiler's own reader. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';

export interface Found {
  /** `src/notation/read.ts:12`. */
  readonly where: string;
  readonly source: string;
  readonly flags: string;
  /** Put together when it runs: what stands here is not all of it. */
  readonly made: boolean;
}

/** Literals, and whatever is given to `RegExp`. */
export function regexpsIn(root: string, folders: readonly string[]): Found[] {
  return folders.flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
      .filter((name) => name.endsWith('.ts') && !name.endsWith('.d.ts'))
      .sort()
      .flatMap((name) => regexpsOf(root, join(folder, name))),
  );
}

function regexpsOf(root: string, file: string): Found[] {
  const text = readFileSync(join(root, file), 'utf8');
  const tree = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);
  const found: Found[] = [];
  const look = (node: ts.Node): void => {
    const written = patternOf(node);
    if (written !== undefined) {
      const line = tree.getLineAndCharacterOfPosition(node.getStart()).line + 1;
      found.push({ where: `${file}:${line}`, ...written });
    }
    ts.forEachChild(node, look);
  };
  look(tree);
  return found;
}

function patternOf(node: ts.Node): Omit<Found, 'where'> | undefined {
  if (ts.isRegularExpressionLiteral(node)) {
    const end = node.text.lastIndexOf('/');
    return { source: node.text.slice(1, end), flags: node.text.slice(end + 1), made: false };
  }
  const called = ts.isNewExpression(node) || ts.isCallExpression(node);
  if (!called || node.expression.getText() !== 'RegExp') return undefined;
  const [source, flags] = node.arguments ?? [];
  return {
    source: source !== undefined && ts.isStringLiteralLike(source) ? source.text : '',
    flags: flags !== undefined && ts.isStringLiteralLike(flags) ? flags.text : '',
    made: source === undefined || !ts.isStringLiteralLike(source),
  };
}
