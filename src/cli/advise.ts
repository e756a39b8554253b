/**
 * Advice without a browser: `npm run -s advise -- FILE`, or `-` for standard input.
 * Prints one JSON object and ends with 0. Whatever is wrong with the file is one line on standard
 * error, and 2. While a job takes long, standard error says how far it is.
 * The same file helps on the other cores.
 */
import { isMainThread } from 'node:worker_threads';
import { adviseCommand } from './advise-command';
import { helpAdvise } from './advice-pool';

if (isMainThread) {
  // Whoever reads may stop reading (`| head`): that is no fault of the file, and needs no word.
  for (const stream of [process.stdout, process.stderr])
    stream.on('error', (problem: NodeJS.ErrnoException) => {
      if (problem.code !== 'EPIPE') throw problem;
      process.exit();
    });
  const { code, out, error } = await adviseCommand(process.argv.slice(2), process.stdin, {
    helper: new URL(import.meta.url),
    tell: (line) => process.stderr.write(line),
  });
  process.stdout.write(out);
  process.stderr.write(error);
  process.exitCode = code;
} else helpAdvise();
