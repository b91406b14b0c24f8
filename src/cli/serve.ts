/** `partwise serve`: starts the service, and opens the page where asked. */

import type { ServeAt, Service } from '../../server/main.ts';
import { Refused } from '../refusal/refusal.ts';
import { EXIT } from './exit.ts';
import { openPage } from './open-page.ts';

export interface ServeOptions {
  readonly port: number;
  readonly host: string;
  readonly open?: true;
  /** Builds the page first, where that is needed. */
  readonly build?: true;
}

/** Runs until the process is told to stop (Ctrl-C). */
export async function serveCommand(options: ServeOptions): Promise<number> {
  if (options.build) await (await import('./built-page.ts')).builtPage();
  const service = await listen(options);
  process.stdout.write(`The page is at ${service.address}\nStop with Ctrl-C.\n`);
  if (options.open && !(await openPage(service.address))) {
    process.stdout.write('No browser could be opened from here: open the address above by hand.\n');
  }
  await untilStopped();
  await service.close();
  return EXIT.fine;
}

/** Told to stop once, it ends what is under way; told twice, it stops at once. */
export function untilStopped(): Promise<void> {
  return new Promise((resolve) => {
    for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => resolve());
  });
}

/** Starts the service. @throws {Refused} where it can't */
export async function listen(options: ServeAt): Promise<Service> {
  const { serve } = await import('../../server/main.ts');
  return serve(options).catch((error: NodeJS.ErrnoException) => {
    throw error instanceof Refused ? error : new Refused(whyNot(error, options));
  });
}

function whyNot(error: NodeJS.ErrnoException, { host, port }: ServeAt): string {
  switch (error.code) {
    case 'EADDRINUSE':
      return `Port ${port} is taken, perhaps by another partwise. Choose another with --port ${port + 1}.`;
    case 'EADDRNOTAVAIL':
    case 'ENOTFOUND':
      return `This machine has no address ${host}. Use 127.0.0.1, or an address of its own.`;
    case 'EACCES':
      return `The system does not let you listen on port ${port}. Choose one above 1023.`;
    default:
      return error.message;
  }
}
