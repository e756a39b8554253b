/**
 * Runs the tests of a room for the tool that changes its rules, in one process: per change the
 * modules are evaluated anew (some 10 ms), where a worker for each takes a quarter of a second.
 * What the tests call (`describe`, `it`, `expect`) is Vitest's own, run by its own runner.
 *
 * Plain JavaScript: the tool loads it in a process that reads nothing else.
 */
import { getFn, startTests } from '@vitest/runner';
import { IDBFactory } from 'fake-indexeddb';
import fc from 'fast-check';
import { readFileSync } from 'node:fs';
import { dirname, relative, resolve } from 'node:path';
import { chai } from 'vitest';
import { Known } from './known.js';
import { modulesOf } from './modules.js';
import { unheard, unlessStill } from './waiting.js';

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
/** The loading of a file of tests counts as a test: of what it comes through, the whole file tells. */
const loadingOf = (file) => `${relative(process.cwd(), file)}#`;
const testsIn = (tasks) =>
  tasks.flatMap((task) => (task.type === 'test' ? [task] : testsIn(task.tasks)));

/** Time of the processor, ms: a busy machine makes no test slow. */
const processor = () => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
};

/** The file whose tests run. */
let running = '';
// `vi` and `expect` look here for how Vitest itself was started; what they want of it is little.
globalThis.__vitest_worker__ = {
  config: { fakeTimers: {}, expect: {} },
  get filepath() {
    return running;
  },
};
// What whole jobs say is compared here, and never written anew.
chai.util.overwriteMethod(chai.Assertion.prototype, 'toMatchFileSnapshot', () => {
  return async function compare(path) {
    const kept = readFileSync(resolve(dirname(running), path), 'utf8');
    if (this._obj !== kept) throw new Error(`it differs from ${path}`);
  };
});

class InProcess {
  static inject = ['options'];
  /** How long each test took, and the loading of each file with all its tests, ms. */
  took = new Map();
  /** How many changes of a file each file of tests has noticed. */
  noticed = new Map();

  constructor({ inProcess }) {
    this.options = inProcess;
    this.files = inProcess.tests;
    this.known = new Known(inProcess.known, inProcess.tests);
  }

  capabilities() {
    return { reloadEnvironment: true };
  }

  async init() {
    process.env.NODE_ENV = 'test';
    // The same cases each time, and few: what is noticed is to be noticed by name, not by luck. The
    // first that fails is enough; no smaller one is sought.
    fc.configureGlobal({ seed: 1, numRuns: 20, endOnFailure: true });
    // What a test fetches only when it comes to it is evaluated for the whole file all the same.
    this.modules = await modulesOf(this.options.room, () => {
      const { currentTestId: test } = switches;
      switches.currentTestId = running && loadingOf(running);
      return () => (switches.currentTestId = test);
    });
  }

  /**
   * Runs files of tests, all of a file or those wanted; to the first that fails, where one is enough.
   * @param {readonly string[]} files
   * @param {ReadonlySet<string> | null} wanted
   * @param {boolean} first
   */
  async run(files, wanted, first) {
    // What the tests of one change kept on the device is not there for those of the next.
    if ('indexedDB' in globalThis) globalThis.indexedDB = new IDBFactory();
    let over = false;
    let since = 0;
    const runner = {
      config: {
        root: process.cwd(),
        setupFiles: [],
        sequence: { seed: 1, hooks: 'stack', setupFiles: 'list' },
        ...{ passWithNoTests: true, allowOnly: true, maxConcurrency: 1, retry: 0, tags: [] },
        ...{ testTimeout: 600_000, hookTimeout: 600_000 },
        diffOptions: { maxDepth: 3, truncateThreshold: 20 },
      },
      importFile: (path) => this.modules.import(path),
      onCollected: ([found]) => {
        if (!wanted || wanted.has(loadingOf(found.filepath))) return;
        for (const test of testsIn([found])) if (!wanted.has(idOf(test))) test.mode = 'skip';
      },
      runTask: (test) => unlessStill(getFn(test)),
      onBeforeRunTask: (test) => {
        if (over) test.mode = 'skip';
        switches.currentTestId = idOf(test);
        since = processor();
      },
      onAfterRunTask: (test) => {
        test.meta.took = processor() - since;
        switches.currentTestId = loadingOf(test.file.filepath);
        over ||= first && test.result?.state === 'fail';
      },
    };
    const results = [];
    const add = (id, fileName, took, error) =>
      results.push({
        ...{ id, name: id, fileName, timeSpentMs: took ?? 0 },
        ...(error === null ? { status: passed } : { status: failed, failureMessage: error }),
      });
    for (const [place, name] of files.entries()) {
      if (over) break;
      // Where coverage is counted, each file tells what it comes through in loading.
      if (place === 0 || !first) this.modules.forget();
      running = resolve(name);
      switches.currentTestId = loadingOf(name);
      const start = processor();
      unheard.reason = null;
      const [file] = await startTests([{ filepath: running }], runner);
      // What is refused and not heard is told of after what waits has had its turn.
      await new Promise((resolve) => setImmediate(resolve));
      const tests = testsIn(file.tasks);
      for (const test of tests) {
        const { state, errors } = test.result ?? {};
        if (state === 'pass') add(idOf(test), running, test.meta.took, null);
        if (state === 'fail') add(idOf(test), running, test.meta.took, errors?.[0]?.message ?? '');
      }
      // A file that cannot be loaded, and what fails before or after a test, has no test to fail.
      const broken =
        file.result?.state === 'fail' && !tests.some(({ result }) => result?.state === 'fail');
      const error = broken ? file.result?.errors?.[0] : unheard.reason;
      const failing = broken || error !== null;
      add(
        loadingOf(name),
        running,
        processor() - start,
        failing ? (error?.stack ?? error?.message ?? 'failed outside its tests') : null,
      );
      over ||= first && failing;
    }
    switches.currentTestId = undefined;
    return results;
  }

  /**
   * Files of the tests wanted, those first whose tests take little time and have noticed much of the
   * changed file: most changes are noticed early.
   */
  bestFirst(ids, changed) {
    const time = new Map();
    for (const id of ids)
      time.set(fileOf(id), (time.get(fileOf(id)) ?? 0) + (this.took.get(id) ?? 0));
    const cost = (file) => time.get(file) / (1 + (this.noticed.get(`${changed} ${file}`) ?? 0));
    return [...time.keys()].sort((one, other) => cost(one) - cost(other));
  }

  async dryRun() {
    switches.activeMutant = undefined;
    // Once to see that tests leave nothing behind: of what failed for that, all changes would be noticed.
    const before = await this.run(this.files, null, false);
    switches.mutantCoverage = { static: {}, perTest: {} };
    const tests = [...(await this.run(this.files, null, false))];
    for (const { status, ...rest } of before)
      if (status === failed) tests.push({ status, ...rest });
    for (const { id, timeSpentMs } of tests) this.took.set(id, timeSpentMs);
    const { perTest } = switches.mutantCoverage;
    this.leaveOutSlow(perTest);
    const mutantCoverage = { static: {}, perTest };
    return { status: 'complete', tests, mutantCoverage };
  }

  /** A slow test is asked only about what no other comes through: the count is rather too low. */
  leaveOutSlow(perTest) {
    // A file's loading stands for all its tests.
    const slow = (id) => this.took.get(id) > this.options.longest * (id.endsWith('#') ? 2 : 1);
    const quick = new Set(
      Object.entries(perTest).flatMap(([id, hits]) => (slow(id) ? [] : Object.keys(hits))),
    );
    for (const id of Object.keys(perTest).filter(slow)) {
      console.log(`slow (${Math.round(this.took.get(id))} ms): ${id}`);
      const alone = Object.entries(perTest[id]).filter(([mutant]) => !quick.has(mutant));
      perTest[id] = Object.fromEntries(alone);
    }
  }

  async mutantRun({ activeMutant, testFilter, hitLimit }) {
    const known = this.known.of(activeMutant);
    if (known?.same) return known.result;
    const killers = known?.result.killedBy;
    const again = killers && (await this.verdict(activeMutant, killers, hitLimit));
    const result =
      again?.status === 'killed'
        ? again
        : await this.verdict(activeMutant, testFilter ?? [...this.took.keys()], hitLimit);
    this.known.keep(activeMutant, result);
    return result;
  }

  /** What tests say of a change: the first that fails has noticed it. */
  async verdict({ id: change, fileName }, wanted, hitLimit) {
    switches.mutantCoverage = undefined;
    switches.activeMutant = change;
    switches.hitCount = hitLimit === undefined ? undefined : 0;
    switches.hitLimit = hitLimit;
    const ran = await this.run(this.bestFirst(wanted, fileName), new Set(wanted), true);
    switches.activeMutant = undefined;
    const nrOfTests = ran.length;
    if (hitLimit !== undefined && switches.hitCount > hitLimit)
      return { status: 'timeout', reason: `came by ${switches.hitCount} times` };
    const killer = ran.find(({ status }) => status === failed);
    if (!killer) return { status: 'survived', nrOfTests };
    const { id, failureMessage } = killer;
    const pair = `${fileName} ${fileOf(id)}`;
    this.noticed.set(pair, (this.noticed.get(pair) ?? 0) + 1);
    return {
      status: 'killed',
      killedBy: [id],
      failureMessage: failureMessage.slice(0, 200),
      nrOfTests,
    };
  }

  async dispose() {
    await this.modules?.close();
  }
}

export const strykerPlugins = [
  { kind: 'TestRunner', name: 'in-process', injectableClass: InProcess },
];
