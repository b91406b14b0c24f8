/** What a teacher waits for at a large stack: each question asked of the service as the page asks it. */
import { once } from 'node:events';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { createApp } from '../../server/app.ts';
import { openMarkingDesk } from '../../server/desk/marking-desk.ts';

const TIMES = 3;

/**
 * Prints, for a desk's file: milliseconds of each question (the first time and the best of the next ones), the longest
 * that the service answered nothing meanwhile, memory of the whole process, and how many warnings were logged.
 */
export async function measureService(path: string): Promise<void> {
  let warnings = 0;
  process.on('warning', (warning) => {
    warnings++;
    console.log(`  warning: ${warning.message}`);
  });
  const desk = await openMarkingDesk(path);
  const logged: unknown[] = [];
  const server = createServer(createApp({ desk, log: (error) => logged.push(error) }));
  server.listen(0, '127.0.0.1');
  await once(server, 'listening');
  const address = `http://127.0.0.1:${(server.address() as AddressInfo).port}/api/desk`;
  const [stack] = desk.desk.stacks();
  const { id } = stack!;
  // Workers that are warm, as after taking a file in.
  await desk
    .workers()
    .likeness({ path, stack: -1 })
    .catch(() => {});
  console.log('  asked                       first ms   again ms   longest silence ms   peak MB');
  for (const [what, question] of [
    ['queue, a page of 50', `/stacks/${id}`],
    ['queue, the last page', `/stacks/${id}?after=${Math.max(0, desk.desk.count(id).scripts - 50)}`],
    ['class', `/stacks/${id}/class`],
    ['likeness', `/stacks/${id}/likeness`],
    ['side by side', `/stacks/${id}/moderation`],
    ['latest drafts', `/stacks/${id}/latest`],
  ] as const) {
    const watch = watchLoop();
    const times: number[] = [];
    for (let n = 0; n <= TIMES; n++) {
      const began = performance.now();
      const answer = await fetch(address + question);
      await answer.arrayBuffer();
      if (answer.status !== 200) throw new Error(`${question}: ${answer.status}`);
      times.push(performance.now() - began);
    }
    const { silence, peak } = watch();
    const [first, ...next] = times;
    console.log(
      `  ${what.padEnd(26)}${first!.toFixed(0).padStart(10)}${Math.min(...next)
        .toFixed(0)
        .padStart(11)}${silence.toFixed(0).padStart(21)}${peak.toFixed(0).padStart(10)}`,
    );
  }
  const began = performance.now();
  const answer = await fetch(`${address}/stacks/${id}`, {
    method: 'PUT',
    headers: { 'Content-Type': 'application/json' },
    body: JSON.stringify({ revision: stack!.revision, name: stack!.name, profile: 'strict' }),
  });
  const { again } = (await (await fetch(`${address}/stacks/${id}?most=1`)).json()) as {
    again: { of: number; going: boolean };
  };
  console.log(
    `  settings changed: answered ${answer.status} after ${(performance.now() - began).toFixed(0)} ms, ${again.of} to be reviewed again, ${again.going ? 'going on' : 'waiting'}`,
  );
  server.closeAllConnections();
  server.close();
  await desk.close();
  console.log(`  ${warnings} warnings, ${logged.length} errors in the log`);
}

/** How long the event loop stood still at most, and the most memory, until it is asked. */
function watchLoop(): () => { readonly silence: number; readonly peak: number } {
  let last = performance.now();
  let silence = 0;
  let peak = 0;
  const look = (): void => {
    const now = performance.now();
    silence = Math.max(silence, now - last);
    last = now;
    peak = Math.max(peak, process.memoryUsage().rss / 1024 / 1024);
  };
  const timer = setInterval(look, 5);
  return () => {
    look();
    clearInterval(timer);
    return { silence, peak };
  };
}
