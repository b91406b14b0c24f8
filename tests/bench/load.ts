/**
 * `npm run bench:load`: the service as a process of its own, sent real chorales (our exercises, where there are none) by
 * 1, 8, 64 and 256 clients for ten seconds each, over 127.0.0.1 only; the same with a hostile client among them, who
 * sends the hardest text again and again; and 8 clients beside forty who ask for a long answer and never read it.
 * `-- --seconds 3` takes less time. Memory is read from /proc, on Linux only.
 */
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { Agent, request } from 'node:http';
import { connect, type Socket } from 'node:net';
import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { CHORALES } from '../support/musicxml.ts';
import { everythingWrong } from '../support/worst-cases.ts';

const { values } = parseArgs({ options: { seconds: { type: 'string' } } });
const SECONDS = Number(values.seconds ?? 10);
const MAIN = fileURLToPath(new URL('../../src/cli/partwise.mjs', import.meta.url));
const EXERCISES = fileURLToPath(new URL('../../fixtures/exercises/', import.meta.url));

interface Piece {
  readonly type: string;
  readonly bytes: Uint8Array;
}

interface Tally {
  readonly milliseconds: number[];
  refused: number;
  reset: number;
}

const pieces = existsSync(CHORALES)
  ? piecesIn(CHORALES, '.mxl', 'application/vnd.recordare.musicxml')
  : piecesIn(EXERCISES, '.txt', 'text/plain');
const hardest: Piece = { type: 'text/plain', bytes: new TextEncoder().encode(everythingWrong(250, 4)) };

/** Quickly reviewed for the length of its answer, so that forty of them are taken. */
const longest: Piece = { type: 'text/plain', bytes: new TextEncoder().encode(everythingWrong(150, 4)) };
const NEVER_READ = 40;

const child = spawn(process.execPath, [MAIN, 'serve', '--port', '0'], {
  stdio: ['ignore', 'pipe', 'inherit'],
});
try {
  const [said] = (await once(child.stdout.setEncoding('utf8'), 'data')) as [string];
  const port = Number(/:(\d{1,5})\//.exec(said)?.[1]);
  console.log(`${pieces.length} pieces, ${availableParallelism()} cores, ${SECONDS} s each`);
  await run(port, 2, false);
  console.log('clients  hostile  answered/s   p50 ms   p95 ms   p99 ms  refused  reset  peak MB');
  for (const hostile of [false, true])
    for (const clients of [1, 8, 64, 256])
      print(clients, hostile ? 'yes' : 'no', await run(port, clients, hostile));
  const mute = Array.from({ length: NEVER_READ }, () => neverRead(port));
  print(8, `${NEVER_READ} mute`, await run(port, 8, false));
  for (const socket of mute) socket.destroy();
} finally {
  child.kill('SIGTERM');
  await once(child, 'close');
}

function piecesIn(folder: string, ending: string, type: string): Piece[] {
  return readdirSync(folder)
    .filter((name) => name.endsWith(ending))
    .slice(0, 100)
    .map((name) => ({ type, bytes: readFileSync(`${folder}${name}`) }));
}

async function run(port: number, clients: number, hostile: boolean): Promise<Tally & { megabytes: number }> {
  const tally: Tally = { milliseconds: [], refused: 0, reset: 0 };
  const until = performance.now() + SECONDS * 1000;
  let megabytes = 0;
  const watching = setInterval(() => {
    megabytes = Math.max(megabytes, resident());
  }, 200);
  const ours = Array.from({ length: clients }, (_, i) =>
    client(port, until, tally, (n) => pieces[(i + n) % pieces.length]!),
  );
  const theirs = hostile
    ? [client(port, until, { milliseconds: [], refused: 0, reset: 0 }, () => hardest)]
    : [];
  await Promise.all([...ours, ...theirs]);
  clearInterval(watching);
  return { ...tally, megabytes };
}

/** Sends one piece after the other; told to come again, it waits half a second. */
async function client(port: number, until: number, tally: Tally, piece: (n: number) => Piece): Promise<void> {
  const agent = new Agent({ keepAlive: true, maxSockets: 1 });
  for (let n = 0; performance.now() < until; n++) {
    const began = performance.now();
    const status = await send(port, agent, piece(n)).catch(() => undefined);
    if (status === undefined) tally.reset++;
    else if (status === 503 || status === 429) {
      tally.refused++;
      await new Promise((done) => setTimeout(done, 500));
    } else tally.milliseconds.push(performance.now() - began);
  }
  agent.destroy();
}

function send(port: number, agent: Agent, { type, bytes }: Piece): Promise<number> {
  return new Promise((resolve, reject) => {
    const headers = { 'Content-Type': type, 'Content-Length': bytes.length };
    const going = request(
      { host: '127.0.0.1', port, path: '/api/reviews', method: 'POST', agent, headers },
      (answer) => {
        answer.resume();
        answer.once('end', () => resolve(answer.statusCode ?? 0));
        answer.once('error', reject);
      },
    );
    going.once('error', reject);
    going.end(bytes);
  });
}

/** Asks for the longest answer there is, and takes nothing of it. */
function neverRead(port: number): Socket {
  const { type, bytes } = longest;
  const socket = connect(port, '127.0.0.1').on('error', () => {});
  socket.pause();
  socket.write(
    `POST /api/reviews HTTP/1.1\r\nHost: 127.0.0.1:${port}\r\nContent-Type: ${type}\r\nContent-Length: ${bytes.length}\r\n\r\n`,
  );
  socket.write(bytes);
  return socket;
}

function print(clients: number, hostile: string, result: Tally & { megabytes: number }): void {
  const sorted = result.milliseconds.toSorted((a, b) => a - b);
  const at = (share: number) => (sorted[Math.floor(share * (sorted.length - 1))] ?? 0).toFixed(0);
  const row = [
    String(clients).padStart(7),
    hostile.padStart(8),
    (sorted.length / SECONDS).toFixed(1).padStart(11),
    ...[0.5, 0.95, 0.99].map((share) => at(share).padStart(8)),
    String(result.refused).padStart(8),
    String(result.reset).padStart(6),
    result.megabytes.toFixed(0).padStart(8),
  ];
  console.log(row.join(' '));
}

function resident(): number {
  try {
    const kilobytes = /VmRSS:\s+(\d+)/.exec(readFileSync(`/proc/${child.pid}/status`, 'utf8'))?.[1];
    return Number(kilobytes ?? 0) / 1024;
  } catch {
    return 0;
  }
}
