/** Which pages in a browser may ask us for anything: our own. Programs that say nothing have no user to be tricked. */
import type { Request, RequestHandler } from 'express';
import { Refused } from '../../src/refusal/refusal.ts';

/** For a service that only this machine reaches: a name that some site lets point at this machine is not ours. */
export const onlyByOwnName: RequestHandler = (request, _response, next) => {
  const host = hostName(request);
  if (!['127.0.0.1', 'localhost', '[::1]'].includes(host)) {
    throw new Refused(`This service answers at 127.0.0.1 only, not at ${host}.`, { kind: 'forbidden' });
  }
  next();
};

/** Whatever is asked, reading included: an answer can cost more than a change. */
export const refuseOtherSites: RequestHandler = (request, _response, next) => {
  const site = request.get('sec-fetch-site');
  const origin = request.get('origin');
  const foreign =
    (site !== undefined && site !== 'same-origin' && site !== 'none') ||
    (origin !== undefined && !sameHost(origin, request.get('host')));
  if (foreign) throw new Refused('Only our own page may ask for this.', { kind: 'forbidden' });
  next();
};

function sameHost(origin: string, host: string | undefined): boolean {
  try {
    return new URL(origin).host === host;
  } catch {
    return false;
  }
}

function hostName(request: Request): string {
  return (request.get('host') ?? '').replace(/:\d{1,5}$/, '').toLowerCase();
}
