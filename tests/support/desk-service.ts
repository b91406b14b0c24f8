/**
 * The service with a desk, as a process of its own that a test can kill: `tsx desk-service.ts PAGE DESK.sqlite PORT`.
 * Prints its address when it listens.
 */
import { once } from 'node:events';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { createApp } from '../../server/app.ts';
import { openMarkingDesk } from '../../server/desk/marking-desk.ts';

const [page, path, port] = process.argv.slice(2);
const desk = await openMarkingDesk(path!);
const server = createServer(createApp({ page: page!, desk }));
server.listen(Number(port), '127.0.0.1');
await once(server, 'listening');
process.stdout.write(`http://127.0.0.1:${(server.address() as AddressInfo).port}/\n`);
