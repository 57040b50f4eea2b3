/** Entry of `npm run -s deck -- …`. */
import { runDeck } from './run.ts';

// a reader such as `head` may close the pipe early
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
});

process.exitCode = runDeck(process.argv.slice(2), {
  out: (text) => process.stdout.write(`${text}\n`),
  err: (text) => process.stderr.write(`${text}\n`),
});
