/** Asks the service, by the wire's table. Every answer is checked; what goes wrong is a refusal. */
import type * as z from 'zod';
import { type Asked, addressOf, INITIALS_HEADER, type Route, refusedSchema } from '../../src/desk/wire.ts';
import { Refused } from '../../src/refusal/refusal.ts';

let token: string | undefined;
let initials = '';

/** The token that our page got when it signed in; every change brings it back. */
export function useToken(fresh: string | undefined): void {
  token = fresh;
}

/** Whoever sits at this window: every decision carries the initials. */
export function useInitials(own: string): void {
  initials = own;
}

/** @throws {Refused} */
export async function ask<R extends Route>(
  route: R,
  asked: Asked<R>,
  bytes?: Uint8Array<ArrayBuffer>,
): Promise<z.output<R['answer']>> {
  const { body } = asked as { readonly body?: unknown };
  let response: Response;
  try {
    response = await fetch(addressOf(route, asked), {
      method: route.method.toUpperCase(),
      headers: {
        ...(body === undefined ? {} : { 'Content-Type': 'application/json' }),
        ...(bytes === undefined ? {} : { 'Content-Type': 'application/octet-stream' }),
        ...(token === undefined ? {} : { 'X-Desk-Token': token }),
        ...(initials === '' ? {} : { [INITIALS_HEADER]: encodeURIComponent(initials) }),
      },
      ...(body === undefined ? {} : { body: JSON.stringify(body) }),
      ...(bytes === undefined ? {} : { body: bytes }),
    });
  } catch {
    throw new Refused('The desk does not answer. Is it still running? Nothing you saw confirmed is lost.', {
      kind: 'no answer',
    });
  }
  const text = await response.text();
  const data = parsed(text);
  if (response.ok) return route.answer.parse(data) as z.output<R['answer']>;
  const refused = refusedSchema.safeParse(data);
  throw refused.success
    ? new Refused(refused.data.detail, { kind: refused.data.kind })
    : new Refused(`The desk answered ${response.status}.`, { kind: 'fault' });
}

/** Undefined for what is no JSON: something between us and the desk may answer in its stead. */
function parsed(text: string): unknown {
  try {
    return text === '' ? undefined : JSON.parse(text);
  } catch {
    return undefined;
  }
}
