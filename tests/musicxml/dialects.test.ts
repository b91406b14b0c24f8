import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readDialect } from '../support/dialects.ts';
import { SHARED } from '../support/musicxml.ts';

const FOLDER = `${SHARED}dialects/`;
const have = existsSync(FOLDER);

describe.skipIf(!have)('dialects of notation programs (skipped where ../shared/dialects is absent)', () => {
  it.each(have ? readdirSync(FOLDER).filter((file) => !file.endsWith('.json')) : [])(
    'reads %s as written',
    (file) => {
      expect(readDialect(file, readFileSync(FOLDER + file))).toBe('as written');
    },
  );
});
