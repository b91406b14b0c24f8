/** Puts a route of the wire's table onto a router: what comes in is checked, and what goes out has to fit. */
import express, { type Request, type RequestHandler, type Response, type Router } from 'express';
import type * as z from 'zod';
import type { Answered, Route } from '../../../src/desk/wire.ts';
import { parseQuery } from '../query.ts';

/** What a route was asked with, looked through. */
export interface Asked<R extends Route> {
  readonly params: z.output<R['params']>;
  readonly query: z.output<R['query']>;
  readonly body: z.output<R['body']>;
  readonly request: Request;
  /** For a status or header out of the common. */
  readonly response: Response;
}

const json = express.json({ limit: '1mb', strict: true });

/** `before` are handlers of this route alone: what reads another body than JSON, a limit. */
export function answer<R extends Route>(
  router: Router,
  route: R,
  respond: (asked: Asked<R>) => Answered<R> | Promise<Answered<R>>,
  before: readonly RequestHandler[] = [],
): void {
  router[route.method](route.path, ...before, ...readers(route, before), async (request, response) => {
    response.status(route.status);
    response.json(await respond(looked(route, request, response)));
  });
}

/** The same for a route that sends a file of its own. */
export function send<R extends Route>(
  router: Router,
  route: R,
  respond: (asked: Asked<R>) => void | Promise<void>,
): void {
  router[route.method](route.path, async (request, response) => {
    await respond(looked(route, request, response));
  });
}

function readers(route: Route, before: readonly RequestHandler[]): readonly RequestHandler[] {
  return route.method === 'get' || before.includes(bytes) ? [] : [json];
}

/** The largest script, in bytes. */
const MOST_BYTES = 8 * 1024 * 1024;
/** For a route that takes a file. */
export const bytes: RequestHandler = express.raw({ type: () => true, limit: MOST_BYTES });

function looked<R extends Route>(route: R, request: Request, response: Response): Asked<R> {
  return {
    params: parseQuery(route.params, request.params) as z.output<R['params']>,
    query: parseQuery(route.query, request.query) as z.output<R['query']>,
    body: parseQuery(route.body, route.method === 'get' ? {} : bodyOf(request)) as z.output<R['body']>,
    request,
    response,
  };
}

/** A route without a body takes none, or a file, which it reads itself. */
function bodyOf({ body }: Request): unknown {
  return body === undefined || body instanceof Uint8Array ? {} : body;
}
