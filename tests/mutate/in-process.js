/**
 * Runs the tests of a room for the tool that changes its rules, in one process: per change the
 * modules are evaluated anew (some 20 ms), where a worker for each takes a quarter of a second.
 * What the tests call (`describe`, `it`, `expect`) is Vitest's own, run by its own runner.
 *
 * Plain JavaScript: the tool loads it in a process that reads nothing else.
 */
import { startTests } from '@vitest/runner';
import fc from 'fast-check';
import { readFileSync } from 'node:fs';
import { dirname, relative, resolve } from 'node:path';
import { createServer, createServerModuleRunner } from 'vite';
import { chai } from 'vitest';

/** Where the changed code looks for which change is on, and counts what a test comes through. */
const switches = (globalThis.__stryker__ ??= {});
const [passed, failed] = [0, 1];

/** A test by its file and its names from the outside in: how the tool asks for it again. */
function idOf(test) {
  const names = [];
  for (let at = test; at && at !== test.file; at = at.suite) names.unshift(at.name);
  return `${relative(process.cwd(), test.file.filepath)}#${names.join(' ')}`;
}
const fileOf = (id) => id.slice(0, id.indexOf('#'));
const testsIn = (tasks) =>
  tasks.flatMap((task) => (task.type === 'test' ? [task] : testsIn(task.tasks)));

/** The file whose tests run. */
let running = '';
// What whole jobs say is compared here, and never written anew.
chai.util.overwriteMethod(chai.Assertion.prototype, 'toMatchFileSnapshot', () => {
  return async function compare(path) {
    const kept = readFileSync(resolve(dirname(running), path), 'utf8');
    if (this._obj !== kept) throw new Error(`it differs from ${path}`);
  };
});

class InProcess {
  static inject = ['options'];
  /** How long each test took, ms. */
  took = new Map();

  constructor({ inProcess }) {
    this.files = inProcess.tests;
  }

  capabilities() {
    return { reloadEnvironment: true };
  }

  async init() {
    process.env.NODE_ENV = 'test';
    // The same cases each time, and few: what is noticed is to be noticed by name, not by luck.
    fc.configureGlobal({ seed: 1, numRuns: 20 });
    this.server = await createServer({
      logLevel: 'error',
      server: { middlewareMode: true, ws: false, hmr: false, watch: null },
      optimizeDeps: { noDiscovery: true },
    });
    const options = { hmr: false, sourcemapInterceptor: false };
    this.modules = createServerModuleRunner(this.server.environments.ssr, options);
  }

  /**
   * Runs files of tests, all of a file or those wanted; to the first that fails, where one is enough.
   * @param {readonly string[]} files
   * @param {ReadonlySet<string> | null} wanted
   * @param {boolean} untilFailed
   */
  async run(files, wanted, untilFailed) {
    this.modules.clearCache();
    let over = false;
    const runner = {
      config: {
        root: process.cwd(),
        setupFiles: [],
        passWithNoTests: true,
        allowOnly: true,
        sequence: { seed: 1, hooks: 'stack', setupFiles: 'list' },
        maxConcurrency: 1,
        testTimeout: 600_000,
        hookTimeout: 600_000,
        retry: 0,
        tags: [],
      },
      importFile: (path) => this.modules.import(path),
      onCollected: (found) => {
        if (!wanted) return;
        for (const test of testsIn(found)) if (!wanted.has(idOf(test))) test.mode = 'skip';
      },
      onBeforeRunTask: (test) => {
        if (over) test.mode = 'skip';
        switches.currentTestId = idOf(test);
        running = test.file.filepath;
      },
      onAfterRunTask: (test) => {
        switches.currentTestId = undefined;
        over ||= untilFailed && test.result?.state === 'fail';
      },
    };
    const results = [];
    const add = (id, fileName, took, error) =>
      results.push({
        ...{ id, name: id, fileName, timeSpentMs: took ?? 0 },
        ...(error === null ? { status: passed } : { status: failed, failureMessage: error }),
      });
    for (const name of files) {
      if (over) break;
      const [file] = await startTests([{ filepath: resolve(name) }], runner);
      const tests = testsIn(file.tasks);
      for (const test of tests) {
        const { state, duration, errors } = test.result ?? {};
        if (state === 'pass') add(idOf(test), file.filepath, duration, null);
        if (state === 'fail') add(idOf(test), file.filepath, duration, errors?.[0]?.message ?? '');
      }
      // A file that cannot be loaded has no test to fail.
      const broken = file.result?.errors?.[0];
      if (!broken) continue;
      add(`${name}#`, file.filepath, 0, broken.stack ?? broken.message);
      over ||= untilFailed;
    }
    return results;
  }

  /** Files of the tests wanted, those first whose tests take the least time: most changes are noticed early. */
  quickestFirst(ids) {
    const time = new Map();
    for (const id of ids)
      time.set(fileOf(id), (time.get(fileOf(id)) ?? 0) + (this.took.get(id) ?? 0));
    return [...time.keys()].sort((one, other) => time.get(one) - time.get(other));
  }

  async dryRun() {
    switches.activeMutant = undefined;
    switches.mutantCoverage = { static: {}, perTest: {} };
    const tests = await this.run(this.files, null, false);
    for (const { id, timeSpentMs } of tests) this.took.set(id, timeSpentMs);
    this.files = this.quickestFirst(this.took.keys());
    return { status: 'complete', tests, mutantCoverage: switches.mutantCoverage };
  }

  async mutantRun({ activeMutant, testFilter, hitLimit }) {
    switches.mutantCoverage = undefined;
    switches.activeMutant = activeMutant.id;
    switches.hitCount = hitLimit === undefined ? undefined : 0;
    switches.hitLimit = hitLimit;
    const files = testFilter ? this.quickestFirst(testFilter) : this.files;
    const ran = await this.run(files, testFilter ? new Set(testFilter) : null, true);
    switches.activeMutant = undefined;
    const nrOfTests = ran.length;
    if (hitLimit !== undefined && switches.hitCount > hitLimit)
      return { status: 'timeout', reason: `came by ${switches.hitCount} times` };
    const killer = ran.find(({ status }) => status === failed);
    if (!killer) return { status: 'survived', nrOfTests };
    const { id, failureMessage } = killer;
    return { status: 'killed', killedBy: [id], failureMessage, nrOfTests };
  }

  async dispose() {
    await this.modules?.close();
    await this.server?.close();
  }
}

export const strykerPlugins = [
  { kind: 'TestRunner', name: 'in-process', injectableClass: InProcess },
];
