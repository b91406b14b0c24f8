/**
 * How the browser that prints PDFs comes into a desk with a passphrase: with a pass of its own, good once, for a short
 * time, and for reading alone. It is part of an address, which other people of this machine may see while the browser
 * starts: hence once.
 */
import { createHash, randomBytes } from 'node:crypto';

/** A browser that is slow to start has long begun by then. */
const GOOD_MILLISECONDS = 60_000;

export class PrintPasses {
  /** What is to be printed and until when the pass is good, by the pass's digest. */
  readonly #issued = new Map<string, { readonly place: string; readonly until: number }>();

  constructor(readonly now: () => number = Date.now) {}

  /** @param place what comes after `#` in the desk's address */
  issue(place: string): string {
    for (const [digest, { until }] of this.#issued) if (until < this.now()) this.#issued.delete(digest);
    const pass = randomBytes(32).toString('base64url');
    this.#issued.set(digestOf(pass), { place, until: this.now() + GOOD_MILLISECONDS });
    return pass;
  }

  /** What the pass is for; undefined for one that is unknown, used or too old. */
  redeem(pass: string): string | undefined {
    const digest = digestOf(pass);
    const issued = this.#issued.get(digest);
    this.#issued.delete(digest);
    return issued === undefined || issued.until < this.now() ? undefined : issued.place;
  }
}

/** Looking up a digest tells nothing about a pass by the time it takes. */
function digestOf(pass: string): string {
  return createHash('sha256').update(pass).digest('base64url');
}
