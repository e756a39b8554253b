import { lowered } from '$lib/words/by-language';
import { toUs } from '$lib/answers/units';
import type { Problem, ProblemField, ProblemId } from '$lib/readiness/rules';
import type { ProblemSentence } from '$lib/words/readiness-types';
import type { Say } from '$lib/words/types';

const fieldNames: Readonly<Record<ProblemField, string>> = {
  reading: 'Reading',
  stress: 'Stress',
  force: 'Force',
  disc: 'Disc diameter',
  shares: 'Where it broke',
  mean: 'Least mean',
  least: 'Least single result',
  count: 'Number of tests',
  length: 'Length',
  width: 'Width',
  prepared: 'Cleaned at',
  spoiled: 'Spoiled at',
  base: 'Share in the base concrete',
  bond: 'Share at the bond line',
  repair: 'Share in the repair',
  glue: 'Share in the glue',
  cover: 'Cover',
  rinse: 'Rinse water',
  aggregate: 'Largest stone',
  air: 'Air',
  humidity: 'Humidity of the air',
};

/** Where the entry stands: "Test 4, disc diameter". */
function place({ field, row, check }: Problem): string {
  const name = fieldNames[field];
  if (row === undefined) return name;
  const what = check === 'pull-off' ? 'Test' : 'Reading';
  return field === 'reading' ? `${what} ${row}` : `${what} ${row}, ${lowered(name)}`;
}

/** What the limits are spoken in: the unit the reader types. */
const kinds: Readonly<Partial<Record<ProblemField, 'MPa' | 'mm' | 'kN' | 'm'>>> = {
  stress: 'MPa',
  mean: 'MPa',
  least: 'MPa',
  force: 'kN',
  disc: 'mm',
  cover: 'mm',
  aggregate: 'mm',
  length: 'm',
  width: 'm',
};

function limit(problem: Problem, value: number, say: Say): string {
  const isLength =
    problem.field === 'reading' &&
    (problem.check === 'carbonation' || problem.check === 'bars-free');
  const kind = isLength ? 'mm' : kinds[problem.field];
  if (problem.field === 'air' || (problem.field === 'reading' && problem.check === 'dew-point'))
    return say.temperature(value);
  if (!kind) return say.number(value);
  if (kind === 'm' || kind === 'mm') return `${say.typed(kind, value)} ${say.unitOf(kind)}`;
  const shown = say.units === 'us' ? toUs(kind, value) : value;
  return `${say.number(shown)} ${say.unitOf(kind)}`;
}

const between = (problem: Problem, say: Say): string =>
  problem.limits
    ? ` Expected ${limit(problem, problem.limits[0], say)} to ${limit(problem, problem.limits[1], say)}.`
    : '';

/** What is wrong with an entry: where it is, and what was expected. */
export const problemSentences: Readonly<Record<ProblemId, ProblemSentence>> = {
  'not-a-number': (problem) => `${place(problem)}: “${problem.typed}” is not a number.`,
  negative: (problem, say) => `${place(problem)} cannot be below zero.${between(problem, say)}`,
  'zero-disc': (problem, say) =>
    `${place(problem)}: a force needs the diameter of the disc it pulled.${between(problem, say)}`,
  'out-of-range': (problem, say) =>
    `${place(problem)} looks like a slip of the key or of the unit.${between(problem, say)}`,
  'shares-not-100': (problem, say) =>
    `${place(problem)}: the shares add up to ${say.number(Number(problem.typed))}%. Expected 100%.`,
  'no-plane': (problem) => `${place(problem)}: say where it let go.`,
  'no-stress': (problem) => `${place(problem)}: type the stress, or the force and the disc.`,
  'stress-and-force': (problem) =>
    `${place(problem)}: both a stress and a force. Keep one of them.`,
  'too-many-rows': (problem, say) =>
    `${say.number(Number(problem.typed))} results are too many for one zone. At most ${say.number(problem.limits?.[1] ?? 0)}. Nothing was taken over; what you pasted is still there.`,
  'unknown-choice': (problem) => `${place(problem)}: “${problem.typed}” is not one of the choices.`,
  'not-whole': (problem) => `${place(problem)}: expected a whole number.`,
  'bad-time': (problem) => `${place(problem)}: “${problem.typed}” is not a date and time.`,
  'time-ahead': (problem) => `${place(problem)} lies after now. Check the date and the clock.`,
};
