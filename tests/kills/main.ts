/** `npm run kills`: builds the page, serves it, and kills the browser some hundred times. KILLS says how often. */
import { preview } from 'vite';
import { killAgainAndAgain } from './run.ts';

const kills = Number(process.env.KILLS ?? 300);
const seed = Number(process.env.SEED ?? 1);
const outDir = process.env.DIST ?? 'dist';

const server = await preview({ build: { outDir }, preview: { port: 0, host: '127.0.0.1' } });
const { port } = server.httpServer.address() as { port: number };
let told = 0;
try {
  const tally = await killAgainAndAgain({
    origin: `http://127.0.0.1:${port}`,
    kills,
    seed,
    watch: ({ kills: done, shown, faults }) => {
      for (const fault of faults.slice(told)) console.error(fault);
      told = faults.length;
      if (done % 20 === 0) console.log(`${done} kills, ${shown} answers shown, ${told} faults`);
    },
  });
  const { faults, ...counts } = tally;
  console.log(counts);
  for (const fault of faults.slice(told)) console.error(fault);
  process.exitCode = faults.length === 0 && counts.kills === kills && counts.shown > 0 ? 0 : 1;
} finally {
  await server.close();
}
