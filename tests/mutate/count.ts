import type { MutantResult } from '@stryker-mutator/api/core';
import { readFileSync } from 'node:fs';
import { relative } from 'node:path';
import equivalent from './equivalent.json';

/** A change that changes nothing: what stands there in a line, and what the tool puts in its place. */
interface Equivalent {
  /** The line as it stands, without the space before it. */
  readonly line: string;
  /** The part of it that is changed, and into what: `one → other`. */
  readonly changes: readonly string[];
  /** Why no test can notice. */
  readonly why: string;
}
const listed: Readonly<Record<string, readonly Equivalent[]>> = equivalent;

const statuses = ['killed', 'timeout', 'equivalent', 'survived', 'no coverage'] as const;
type Status = (typeof statuses)[number];

interface Change {
  readonly file: string;
  readonly place: string;
  readonly line: string;
  readonly of: string;
  readonly to: string;
  readonly status: Status;
}

const oneLine = (text: string) => text.replace(/\s+/g, ' ').trim();

/** What the tool changed, with the verdict; one that is listed as changing nothing is told as that. */
export function judged(results: readonly MutantResult[]): Change[] {
  return results.map(({ fileName, location: { start, end }, replacement, status }) => {
    const file = relative('src/lib', fileName);
    // The tool counts lines and columns from 1.
    const lines = readFileSync(fileName, 'utf8')
      .split('\n')
      .slice(start.line - 1, end.line);
    const line = oneLine(lines[0] ?? '');
    const last = lines.length - 1;
    const cut = lines.map((text, at) =>
      text.slice(at === 0 ? start.column - 1 : 0, at === last ? end.column - 1 : undefined),
    );
    const [of, to] = [oneLine(cut.join('\n')), oneLine(replacement ?? '')];
    const nothing = listed[file]?.some(
      (each) => each.line === line && each.changes.includes(`${of} → ${to}`),
    );
    const found = (
      {
        Killed: 'killed',
        Timeout: 'timeout',
        Survived: 'survived',
        NoCoverage: 'no coverage',
      } as const
    )[status as string];
    if (!found) throw new Error(`${file}:${start.line}: the tool says "${status}"`);
    const noticed = found === 'killed' || found === 'timeout';
    if (nothing && noticed)
      console.log(`listed as equivalent, and noticed: ${file} | ${line} | ${of} → ${to}`);
    const place = `${file}:${start.line}:${start.column}`;
    return { file, place, line, of, to, status: nothing && !noticed ? 'equivalent' : found };
  });
}

/** Verdicts counted by file and for the room; the score leaves out what is equivalent. */
export function tableOf(room: string, changes: readonly Change[]): string {
  const row = (name: string, of: readonly Change[]) => {
    const counts = statuses.map((status) => of.filter((one) => one.status === status).length);
    const [killed = 0, timeout = 0, same = 0] = counts;
    const score = (100 * (killed + timeout)) / (of.length - same || 1);
    return `| ${[name, of.length, ...counts, `${score.toFixed(1)} %`].join(' | ')} |`;
  };
  const files = [...new Set(changes.map(({ file }) => file))];
  return [
    `| file | changes | ${statuses.join(' | ')} | score |`,
    `| --- | --- | ${statuses.map(() => '---').join(' | ')} | --- |`,
    ...files.map((file) =>
      row(
        file,
        changes.filter((one) => one.file === file),
      ),
    ),
    row(`${room}, whole`, changes),
  ].join('\n');
}
