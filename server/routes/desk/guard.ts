/**
 * Who may come near a desk. On this machine alone: pages of its own. Over a network: whoever knows the passphrase, with
 * a session in a strict cookie and a token that other sites can't read.
 */
import { randomBytes, timingSafeEqual } from 'node:crypto';
import { type Request, type RequestHandler, Router } from 'express';
import { rateLimit } from 'express-rate-limit';
import session from 'express-session';
import * as z from 'zod';
import { ROUTES } from '../../../src/desk/wire.ts';
import { Refused } from '../../../src/refusal/refusal.ts';
import { passphraseMatches } from '../../desk/passphrase.ts';
import type { PrintPasses } from '../../desk/print-passes.ts';
import { SESSION_MILLISECONDS, SessionStore } from '../../desk/session-store.ts';
import type { Desk } from '../../desk/store.ts';
import { sendRefusal } from '../../problem.ts';
import { parseQuery } from '../query.ts';
import { answer } from './serve.ts';

declare module 'express-session' {
  interface SessionData {
    /** Given to our own page alone; every change must bring it back. */
    token: string;
    /** The browser that prints PDFs: it may read until then (milliseconds since 1970), and change nothing. */
    printsUntil: number;
  }
}

const TOKEN_HEADER = 'x-desk-token';
const SAFE_METHODS: ReadonlySet<string> = new Set(['GET', 'HEAD', 'OPTIONS']);

/** As long as the printing of sheets may take. */
const PRINT_MILLISECONDS = 180_000;

/** What a desk that is open to a network asks of whoever comes near. */
export interface Guard {
  /** Before the desk's own routes: signing in and out, then the gate. */
  readonly door: Router;
  /** Before whatever else costs work: lets through whoever is signed in. */
  readonly gate: readonly RequestHandler[];
}

/** `hash` is the passphrase's, from `hashPassphrase`. */
export function networkGuard(desk: Desk, hash: string, passes: PrintPasses): Guard {
  const router = Router();
  const sessions = sessionsOf(desk);
  const signedIn = letThroughSignedIn(desk);
  const most = limit(1_200, 60_000);
  router.use(sessions);
  answer(router, ROUTES.session, ({ request }) => {
    const { token } = request.session;
    return { passphraseNeeded: true, signedIn: token !== undefined || mayPrint(desk, request), token };
  });
  printRoute(router, desk, passes);
  signInRoute(router, hash);
  router.use(most, signedIn);
  answer(router, ROUTES.signOut, async ({ request }) => {
    await new Promise<void>((done, fail) => {
      request.session.destroy((error: unknown) => (error ? fail(error) : done()));
    });
    return undefined;
  });
  return { door: router, gate: [sessions, most, signedIn] };
}

/** Sessions in a strict cookie, kept in the desk's own file. */
function sessionsOf(desk: Desk): RequestHandler {
  return session({
    name: 'desk',
    secret: secretOf(desk),
    store: new SessionStore(desk),
    resave: false,
    saveUninitialized: false,
    rolling: true,
    cookie: {
      httpOnly: true,
      sameSite: 'strict',
      secure: 'auto',
      maxAge: SESSION_MILLISECONDS,
      path: '/api',
    },
  });
}

/** Whoever signed in, with the token at every change; the browser that prints may read. */
function letThroughSignedIn(desk: Desk): RequestHandler {
  return (request, _response, next) => {
    const { token } = request.session;
    if (SAFE_METHODS.has(request.method) && mayPrint(desk, request)) {
      next();
      return;
    }
    if (token === undefined) throw signedOut('Sign in to this desk first.');
    if (!SAFE_METHODS.has(request.method) && !sameToken(token, request.get(TOKEN_HEADER))) {
      throw forbidden('This did not come from the desk’s own page. Load the page again.');
    }
    next();
  };
}

/** The browser that prints comes in with a pass, good once. */
function printRoute(router: Router, desk: Desk, passes: PrintPasses): void {
  router.get('/print/:pass', limit(60, 60_000), async (request, response) => {
    const { pass } = parseQuery(z.object({ pass: z.string().max(100) }), request.params);
    const place = fromThisMachine(request) ? passes.redeem(pass) : undefined;
    if (place === undefined) throw signedOut('This pass is not good, or no longer.');
    await newSession(request);
    request.session.printsUntil = desk.now().getTime() + PRINT_MILLISECONDS;
    request.session.cookie.maxAge = PRINT_MILLISECONDS;
    response.redirect(303, `/desk/#${place}`);
  });
}

function signInRoute(router: Router, hash: string): void {
  answer(
    router,
    ROUTES.signIn,
    async ({ body: { passphrase }, request }) => {
      if (!(await passphraseMatches(passphrase, hash)))
        throw signedOut('That is not the passphrase of this desk.');
      // A new session for whoever signs in: one that was slipped in before is worth nothing.
      await newSession(request);
      request.session.token = randomBytes(32).toString('base64url');
      return { signedIn: true, token: request.session.token };
    },
    [limit(10, 15 * 60_000)],
  );
}

function mayPrint(desk: Desk, { session: { printsUntil } }: Request): boolean {
  return printsUntil !== undefined && desk.now().getTime() < printsUntil;
}

function newSession(request: Request): Promise<void> {
  return new Promise((done, fail) => {
    request.session.regenerate((error: unknown) => (error ? fail(error) : done()));
  });
}

/** Both ends of the connection have one address: no other machine has that. */
function fromThisMachine({ socket }: Request): boolean {
  return socket.remoteAddress !== undefined && socket.remoteAddress === socket.localAddress;
}

/** Without a passphrase the page asks in vain, and is told so. */
export function openSession(): Router {
  const router = Router();
  answer(router, ROUTES.session, () => ({ passphraseNeeded: false, signedIn: true }));
  return router;
}

function forbidden(message: string): Refused {
  return new Refused(message, { kind: 'forbidden' });
}

function signedOut(message: string): Refused {
  return new Refused(message, { kind: 'signed out' });
}

function sameToken(token: string, given: string | undefined): boolean {
  const [a, b] = [Buffer.from(token), Buffer.from(given ?? '')];
  return a.length === b.length && timingSafeEqual(a, b);
}

function limit(most: number, windowMs: number): RequestHandler {
  return rateLimit({
    limit: most,
    windowMs,
    standardHeaders: 'draft-8',
    legacyHeaders: false,
    handler: (_request, response) => {
      sendRefusal(
        response,
        new Refused('Too many requests from your address. Wait a few minutes, then try again.', {
          kind: 'too many',
        }),
      );
    },
  });
}

/** Signs the cookies; made once for each desk. */
function secretOf(desk: Desk): string {
  const known = desk.setting('session secret');
  if (known !== undefined) return known;
  const fresh = randomBytes(32).toString('base64url');
  desk.set('session secret', fresh);
  return fresh;
}
