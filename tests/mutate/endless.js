/** Plain JavaScript: the tool loads it in a process that reads nothing else. */
import { Known } from './known.js';

/** A change that never came back is known by the tool alone, which ended the process. */
class Endless {
  static inject = ['options'];

  constructor({ inProcess }) {
    this.known = new Known(inProcess.known, inProcess.tests);
  }

  onMutantTested({ status, location: { start, end }, ...rest }) {
    // Told to a reader lines count from 1, to a runner from 0.
    const runners = ({ line, column }) => ({ line: line - 1, column: column - 1 });
    const change = { ...rest, location: { start: runners(start), end: runners(end) } };
    if (status === 'Timeout' && !this.known.of(change)?.same)
      this.known.keep(change, { status: 'timeout', reason: 'did not come back' });
  }
}

export const strykerPlugins = [{ kind: 'Reporter', name: 'endless', injectableClass: Endless }];
