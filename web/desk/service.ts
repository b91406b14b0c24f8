/** Asks the service. Every answer is checked; what goes wrong is a sentence. */
import type { z } from 'zod';

/** The service said no; the message is for the person. */
export class Refused extends Error {
  constructor(
    readonly status: number,
    message: string,
  ) {
    super(message);
  }
}

let token: string | undefined;

/** The token that our page got when it signed in; every change brings it back. */
export function useToken(fresh: string | undefined): void {
  token = fresh;
}

/** @throws {Refused} */
export async function ask<S extends z.ZodType>(
  answer: S,
  path: string,
  options: {
    readonly method?: string;
    readonly body?: unknown;
    readonly bytes?: Uint8Array<ArrayBuffer>;
  } = {},
): Promise<z.output<S>> {
  const { method = 'GET', body, bytes } = options;
  let response: Response;
  try {
    response = await fetch(`/api/desk${path}`, {
      method,
      headers: {
        ...(body === undefined ? {} : { 'Content-Type': 'application/json' }),
        ...(bytes === undefined ? {} : { 'Content-Type': 'application/octet-stream' }),
        ...(token === undefined ? {} : { 'X-Desk-Token': token }),
      },
      ...(body === undefined ? {} : { body: JSON.stringify(body) }),
      ...(bytes === undefined ? {} : { body: bytes }),
    });
  } catch {
    throw new Refused(0, 'The desk does not answer. Is it still running? Nothing you saw confirmed is lost.');
  }
  const text = await response.text();
  const data: unknown = text === '' ? undefined : JSON.parse(text);
  if (!response.ok) {
    const detail = (data as { detail?: unknown } | undefined)?.detail;
    throw new Refused(
      response.status,
      typeof detail === 'string' ? detail : `The desk answered ${response.status}.`,
    );
  }
  return answer.parse(data);
}
