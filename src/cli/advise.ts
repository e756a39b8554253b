/**
 * Advice without a browser: `npm run -s advise -- FILE`, or `-` for standard input.
 * Prints one JSON object and ends with 0. Whatever is wrong with the file is one line on standard
 * error, and 2.
 */
import { adviseCommand } from './advise-command';

const { code, out, error } = await adviseCommand(process.argv.slice(2), process.stdin);
process.stdout.write(out);
process.stderr.write(error);
process.exitCode = code;
