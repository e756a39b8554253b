/**
 * What is known of changes that were tried before, one a line, written as soon as it is known: a run
 * that was stopped goes on where it was. A verdict counts while the changed file reads as it did; of
 * one that was noticed the test that noticed it is asked again when its file changed; one that was
 * not noticed is tried again when any test of the room changed.
 *
 * Plain JavaScript: the tool loads it in a process that reads nothing else.
 */
import { createHash } from 'node:crypto';
import { appendFileSync, existsSync, readFileSync } from 'node:fs';

const hashOf = (text) => createHash('sha256').update(text).digest('base64').slice(0, 12);

export class Known {
  #verdicts = new Map();
  #sources = new Map();

  /**
   * @param {string} path the file of verdicts
   * @param {readonly string[]} tests
   */
  constructor(path, tests) {
    this.path = path;
    this.tests = tests;
    if (!existsSync(path)) return;
    for (const line of readFileSync(path, 'utf8').split('\n').filter(Boolean)) {
      const { key, ...verdict } = JSON.parse(line);
      this.#verdicts.set(key, verdict);
    }
  }

  #source(file) {
    if (!this.#sources.has(file)) this.#sources.set(file, hashOf(readFileSync(file)));
    return this.#sources.get(file);
  }

  #keyOf({ fileName, location: { start, end }, mutatorName, replacement }) {
    const place = `${start.line}:${start.column}-${end.line}:${end.column}`;
    const file = fileName.slice(fileName.indexOf('src/lib/'));
    return [file, this.#source(fileName), place, mutatorName, hashOf(replacement)].join(' ');
  }

  #testsOf({ killedBy }) {
    const files = killedBy ? killedBy.map((id) => id.slice(0, id.indexOf('#'))) : this.tests;
    return hashOf(files.map((file) => this.#source(file)).join());
  }

  /** The verdict, and whether its tests read as they did; undefined where there is none. */
  of(mutant) {
    const verdict = this.#verdicts.get(this.#keyOf(mutant));
    if (!verdict) return undefined;
    const { tests, ...result } = verdict;
    const gone = result.killedBy?.some((id) => !this.tests.includes(id.slice(0, id.indexOf('#'))));
    return gone ? undefined : { result, same: tests === this.#testsOf(result) };
  }

  keep(mutant, result) {
    const verdict = { ...result, tests: this.#testsOf(result) };
    const line = JSON.stringify({ key: this.#keyOf(mutant), ...verdict });
    appendFileSync(this.path, `${line}\n`);
  }
}
