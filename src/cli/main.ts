/** The command line as a process. */
import { runPartwise } from './program.ts';

// Whoever reads our output may stop early (`partwise review … | head`): that is no error of ours.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit();
  throw error;
});

process.exitCode = await runPartwise(process.argv.slice(2));
