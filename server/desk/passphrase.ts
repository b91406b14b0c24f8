/** The passphrase of a desk that is open to a network: kept as a scrypt hash, compared in constant time. */
import { randomBytes, scrypt, timingSafeEqual } from 'node:crypto';
import { Refused } from '../../src/refusal/refusal.ts';

/** 64 MB and some 300 ms for each guess. */
const COST = { N: 2 ** 16, r: 8, p: 1, maxmem: 128 * 2 ** 20 } as const;
const LENGTH = 32;
const LEAST_CHARACTERS = 12;

/** @throws {Refused} where the passphrase is too short to withstand guessing */
export async function hashPassphrase(passphrase: string): Promise<string> {
  if ([...passphrase].length < LEAST_CHARACTERS) {
    throw new Refused(
      `A passphrase needs at least ${LEAST_CHARACTERS} characters; four words that do not belong together are good.`,
    );
  }
  const salt = randomBytes(16);
  return `${salt.toString('base64')}.${(await derive(passphrase, salt)).toString('base64')}`;
}

let guessing: Promise<unknown> = Promise.resolve();

export async function passphraseMatches(passphrase: string, hash: string): Promise<boolean> {
  const [salt, key] = hash.split('.').map((part) => Buffer.from(part, 'base64'));
  if (salt === undefined || key?.length !== LENGTH) return false;
  // One guess at a time, so that many at once take no more memory than one.
  const mine = guessing.then(() => derive(passphrase, salt));
  guessing = mine.catch(() => {});
  return timingSafeEqual(await mine, key);
}

function derive(passphrase: string, salt: Buffer): Promise<Buffer> {
  return new Promise((resolve, reject) => {
    scrypt(passphrase.normalize('NFKC'), salt, LENGTH, COST, (error, key) =>
      error ? reject(error) : resolve(key),
    );
  });
}
