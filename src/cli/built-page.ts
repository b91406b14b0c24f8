/** Builds the page where it is not built yet, or is older than what it is built from. */
import { accessSync, constants, existsSync, readdirSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Refused } from '../refusal/refusal.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

/**
 * A page that is there is served as it is where the folder can't be written: a checkout may be read-only.
 *
 * @throws {Refused} where there is none, and none can be built
 */
export async function builtPage(root = ROOT): Promise<void> {
  const page = join(root, 'dist', 'index.html');
  const there = existsSync(page);
  if (there && statSync(page).mtimeMs >= newest(root)) return;
  if (!mayWrite(there ? dirname(page) : root)) {
    if (there) return;
    throw new Refused(
      `The page is not built yet, and ${root} can't be written to. Run npm run build once where it can, or make the folder writable.`,
    );
  }
  const { build } = await import('vite');
  await build({ configFile: join(root, 'web', 'vite.config.ts'), logLevel: 'warn' });
}

/** When anything that the page is built from was last changed. */
function newest(root: string): number {
  const times = ['src', 'web'].flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => statSync(join(entry.parentPath, entry.name)).mtimeMs),
  );
  return Math.max(...times, statSync(join(root, 'package.json')).mtimeMs);
}

function mayWrite(folder: string): boolean {
  try {
    accessSync(folder, constants.W_OK);
    return true;
  } catch {
    return false;
  }
}
