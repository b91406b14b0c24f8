/** How the built page is sent: compressed where the browser takes it, and kept for good where a name says its content. */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { brotliCompressSync, gzipSync } from 'node:zlib';
import supertest from 'supertest';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { createApp } from '../../server/app.ts';

const SCRIPT = 'console.log("a script long enough to be worth it");\n'.repeat(50);
let folder = '';

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'partwise-page-'));
  mkdirSync(join(folder, 'assets'));
  for (const [name, text] of [
    ['index.html', '<!doctype html><title>Partwise</title>'],
    ['assets/page-1a2b.js', SCRIPT],
  ] as const) {
    writeFileSync(join(folder, name), text);
    writeFileSync(join(folder, `${name}.br`), brotliCompressSync(text));
    writeFileSync(join(folder, `${name}.gz`), gzipSync(text));
  }
  writeFileSync(join(folder, 'assets/font-3c4d.woff2'), 'a font');
});
afterAll(() => rmSync(folder, { recursive: true }));

const get = (path: string, encodings: string) =>
  supertest(createApp({ page: folder }))
    .get(path)
    .set('Accept-Encoding', encodings);

describe('the built page', () => {
  it('is sent in brotli where the browser takes it, in gzip where it takes that, and else as it is', async () => {
    const sent = { br: await get('/assets/page-1a2b.js', 'gzip, deflate, br') };
    expect(sent.br.headers['content-encoding']).toBe('br');
    expect(sent.br.headers['content-type']).toContain('text/javascript');
    const gzip = await get('/assets/page-1a2b.js', 'gzip');
    expect(gzip.headers['content-encoding']).toBe('gzip');
    expect(gzip.text).toBe(SCRIPT);
    const plain = await get('/assets/page-1a2b.js', 'identity');
    expect(plain.headers['content-encoding']).toBeUndefined();
    expect(plain.text).toBe(SCRIPT);
    // Caches on the way must not give one for another.
    for (const { headers } of [sent.br, gzip, plain]) expect(headers.vary).toContain('Accept-Encoding');
    expect(new Set([sent.br, gzip, plain].map(({ headers }) => headers.etag)).size).toBe(3);
  });

  it('is asked for again each time, but for files whose names say what is in them', async () => {
    const page = await get('/', 'gzip');
    expect(page.headers['cache-control']).toBe('no-cache');
    expect(page.headers['content-type']).toContain('text/html');
    expect(page.text).toContain('<title>Partwise</title>');
    const again = await get('/', 'gzip').set('If-None-Match', String(page.headers.etag));
    expect(again.status).toBe(304);
    for (const path of ['/assets/page-1a2b.js', '/assets/font-3c4d.woff2'])
      expect((await get(path, 'br')).headers['cache-control']).toContain('immutable');
  });
});
