/** Starts the service. */
import { once } from 'node:events';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { fileURLToPath } from 'node:url';
import { createApp } from './app.ts';

/** The built page, beside this folder. */
const PAGE = fileURLToPath(new URL('../dist', import.meta.url));

export interface ServeAt {
  /** 0 for any free port. */
  readonly port: number;
  /** Only this machine can reach 127.0.0.1. */
  readonly host: string;
}

export interface Service {
  readonly address: string;
  readonly close: () => Promise<void>;
}

/** Listens; rejects with the system's error where it can't. */
export async function serve({ port, host }: ServeAt): Promise<Service> {
  const server = createServer(createApp({ page: PAGE }));
  // A client that opens a connection and sends nothing holds it no longer than this.
  server.requestTimeout = 30_000;
  server.listen(port, host);
  await once(server, 'listening');
  const bound = server.address() as AddressInfo;
  const name = bound.family === 'IPv6' ? `[${bound.address}]` : bound.address;
  return {
    address: `http://${name}:${bound.port}/`,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}
