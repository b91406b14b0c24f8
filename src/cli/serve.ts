/** `partwise serve`: starts the service, and opens the page where asked. */

import { Refused } from '../refusal/refusal.ts';
import { EXIT } from './exit.ts';
import { openPage } from './open-page.ts';

export interface ServeOptions {
  readonly port: number;
  readonly host: string;
  readonly open?: true;
}

/** Runs until the process is told to stop (Ctrl-C). */
export async function serveCommand(options: ServeOptions): Promise<number> {
  const { serve } = await import('../../server/main.ts');
  const service = await serve(options).catch((error: NodeJS.ErrnoException) => {
    throw new Refused(whyNot(error, options));
  });
  process.stdout.write(`The page is at ${service.address}\nStop with Ctrl-C.\n`);
  if (options.open && !(await openPage(service.address))) {
    process.stdout.write('No browser could be opened from here: open the address above by hand.\n');
  }
  await new Promise<void>((resolve) => {
    for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => resolve());
  });
  await service.close();
  return EXIT.fine;
}

function whyNot(error: NodeJS.ErrnoException, { host, port }: ServeOptions): string {
  switch (error.code) {
    case 'EADDRINUSE':
      return `Port ${port} is taken, perhaps by another partwise. Choose another: partwise serve --port ${port + 1}`;
    case 'EADDRNOTAVAIL':
    case 'ENOTFOUND':
      return `This machine has no address ${host}. Use 127.0.0.1, or an address of its own.`;
    case 'EACCES':
      return `The system does not let you listen on port ${port}. Choose one above 1023.`;
    default:
      return error.message;
  }
}
