import { createReadStream } from 'node:fs';
import { mostBytes, readJobBytes } from '$lib/keep/job-file';
import { harmless } from '$lib/keep/problem';
import { drawnJob } from '$lib/survey/drawn';
import { surveyOf } from '$lib/survey/survey';
import { commandWords, problemSentence } from '$words/keep';
import { adviceDocument } from './advice-document';
import { adviseAll } from './advice-pool';

/** What the command leaves behind: its exit code and what goes to the two outputs. */
export interface Outcome {
  readonly code: 0 | 2;
  readonly out: string;
  readonly error: string;
}

const refused = (line: string): Outcome => ({ code: 2, out: '', error: `${line}\n` });

/** Reads to the end, or until there is more than a job file may have. */
async function readAll(stream: AsyncIterable<Uint8Array>): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  let length = 0;
  for await (const chunk of stream) {
    chunks.push(chunk);
    length += chunk.length;
    if (length > mostBytes) break;
  }
  return Buffer.concat(chunks);
}

interface Surroundings {
  /** The file to run on the other cores; without it all is done here. */
  readonly helper?: URL;
  /** Takes lines about how far it is, while it takes long. */
  readonly tell?: (line: string) => void;
  /** Milliseconds before the first such line, and between two. */
  readonly quiet?: number;
}

/**
 * Advice for the job file named on the command line, or for `input` when the name is `-`.
 * Reads and decides with the same code as the site. Never throws.
 */
export async function adviseCommand(
  [file, ...more]: readonly string[],
  input: AsyncIterable<Uint8Array>,
  { helper, tell = () => undefined, quiet = 5000 }: Surroundings = {},
): Promise<Outcome> {
  if (!more.length && (file === '--help' || file === '-h'))
    return { code: 0, out: commandWords.help, error: '' };
  if (file === undefined || more.length > 0) return refused(commandWords.usage);
  let bytes: Uint8Array;
  try {
    bytes = await readAll(file === '-' ? input : createReadStream(file));
  } catch (error) {
    const { code = 'unknown' } = error as NodeJS.ErrnoException;
    return refused(commandWords.unreadable(harmless(file), code));
  }
  const read = await readJobBytes(bytes);
  if (!read.ok) return refused(problemSentence(read.problem));
  const job = drawnJob(read.value, surveyOf(read.value));
  const all = job.zones.length;
  let told = performance.now();
  const adviceOf = await adviseAll(job, helper, (done) => {
    if (done === all || performance.now() - told < quiet) return;
    told = performance.now();
    tell(`${commandWords.progress(done, all)}\n`);
  });
  return { code: 0, out: `${JSON.stringify(adviceDocument(read.value, adviceOf))}\n`, error: '' };
}
