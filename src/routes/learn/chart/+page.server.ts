import { fieldChart } from '$lib/learn/chart/spoken';
import { dayWords } from '$lib/words/by-language';
import { version } from '../../../../package.json';

export const csr = false;

/** The chart, by the rules of this build, and what a printed sheet says of its making. */
export const load = () => ({
  chart: fieldChart(),
  version,
  made: dayWords(new Date()),
});
