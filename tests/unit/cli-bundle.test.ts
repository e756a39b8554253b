import { spawnSync } from 'node:child_process';
import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { nightly } from '../helpers/rounds';

/** The command in one file, on a copy of the project whose sources change under it. */
const root = fileURLToPath(new URL('../..', import.meta.url));
const jobFile = fileURLToPath(new URL('job-files/version-1.json', import.meta.url));
let copy: string;
let libraries: string;

beforeAll(() => {
  copy = mkdtempSync(join(tmpdir(), 'clone-'));
  for (const path of ['src', 'shared', 'package.json', 'tsconfig.json'])
    cpSync(join(root, path), join(copy, path), { recursive: true });
  // As after a fresh install: the libraries, and nothing put together yet.
  libraries = join(copy, 'node_modules');
  mkdirSync(libraries);
  for (const name of readdirSync(join(root, 'node_modules')))
    if (name !== '.cache') symlinkSync(join(root, 'node_modules', name), join(libraries, name));
});
afterAll(() => rmSync(copy, { recursive: true, force: true }));

function advise(...args: string[]) {
  const run = spawnSync('npm', ['run', '-s', 'advise', '--', ...args], {
    cwd: copy,
    encoding: 'utf8',
    maxBuffer: 64e6,
  });
  // On a machine that is busy even a short job is a long one.
  const error = run.stderr.replace(/^\d+ of \d+ zones advised\n/gm, '');
  return { code: run.status, out: run.stdout, error };
}
const change = (path: string, edit: (text: string) => string) =>
  writeFileSync(join(copy, path), edit(readFileSync(join(copy, path), 'utf8')));
const made = () => readdirSync(join(libraries, '.cache/down-to-sound'));

describe('the command in one file', () => {
  it('works on a fresh clone, and is put together once', () => {
    expect(existsSync(join(libraries, '.cache'))).toBe(false);
    expect(advise(jobFile)).toMatchObject({ code: 0, error: '' });
    const first = made();
    expect(first.length).toBe(2);
    expect(advise(jobFile)).toMatchObject({ code: 0, error: '' });
    expect(made()).toEqual(first);
  });

  it.runIf(nightly)(
    'runs what stands in the sources, also when a change shows in neither time nor size',
    () => {
      const path = 'src/lib/words/en/keep.ts';
      const { atime, mtime, size } = statSync(join(copy, path));
      expect(advise().error).toMatch(/^expected one argument/);
      change(path, (text) => text.replace('expected one argument', 'wanted:: one argument'));
      utimesSync(join(copy, path), atime, mtime);
      expect(statSync(join(copy, path))).toMatchObject({ size, mtime });
      expect(advise()).toMatchObject({ code: 2, error: expect.stringMatching(/^wanted:: one/) });
    },
  );

  it.runIf(nightly)('takes a new file that stands before another', () => {
    change('src/cli/held-up.ts', (text) => text);
    writeFileSync(
      join(copy, 'src/cli/held-up.tsx'),
      'export const heldUp = () => "from the new file";',
    );
    expect((JSON.parse(advise(jobFile).out) as { heldUp: unknown }).heldUp).toBe(
      'from the new file',
    );
    rmSync(join(copy, 'src/cli/held-up.tsx'));
    expect((JSON.parse(advise(jobFile).out) as { heldUp: unknown }).heldUp).toHaveProperty('stop');
  });

  it('says what is wrong with the sources rather than run what they were', () => {
    change('src/cli/advise-command.ts', (text) => `${text}\n)`);
    const { code, out, error } = advise(jobFile);
    expect([code === 0, out]).toEqual([false, '']);
    expect(error).toContain('advise-command.ts');
  });
});
