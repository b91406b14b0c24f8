/** Beside each built file that can be made smaller, the same for brotli and gzip: the service sends what a browser takes. */
import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { brotliCompress, constants, gzip } from 'node:zlib';
import type { Plugin } from 'vite';

const COMPRESSED = /\.(js|css|html|svg|json|webmanifest)$/;

const smallest = {
  br: (bytes: Buffer) =>
    promisify(brotliCompress)(bytes, {
      params: {
        [constants.BROTLI_PARAM_QUALITY]: constants.BROTLI_MAX_QUALITY,
        [constants.BROTLI_PARAM_SIZE_HINT]: bytes.length,
      },
    }),
  gz: (bytes: Buffer) => promisify(gzip)(bytes, { level: 9 }),
};

export function compressed(): Plugin {
  let folder = '';
  return {
    name: 'partwise-compressed',
    apply: 'build',
    writeBundle: ({ dir }) => {
      folder = dir ?? '';
    },
    closeBundle: {
      order: 'post',
      // After the service worker's files, which another plugin writes at the end.
      sequential: true,
      handler: async () => {
        // A build that writes nothing has no folder.
        if (folder === '') return;
        const files = await readdir(folder, { recursive: true });
        await Promise.all(
          files.filter((file) => COMPRESSED.test(file)).map((file) => compress(join(folder, file))),
        );
      },
    },
  };
}

async function compress(path: string): Promise<void> {
  const bytes = await readFile(path);
  for (const [ending, make] of Object.entries(smallest))
    await writeFile(`${path}.${ending}`, await make(bytes));
}
