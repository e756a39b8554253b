/**
 * Milliseconds that a hundred million turns of a loop take on the machine that the budgets were set
 * for: reckoned from one and the same engine, measured there (142 ms for one advice with everything
 * open) and here (273 ms, while the loop took 487 ms).
 */
const usual = 250;
const turns = 1e8;

/**
 * How many times slower than that machine this one is just now, at least 1: a shared machine can be
 * a quarter as fast from one minute to the next. Time of this process on its processor, the best of
 * three.
 */
export function slowness(): number {
  let best = Infinity;
  for (let round = 0; round < 3; round += 1) {
    const { user } = process.cpuUsage();
    let sum = 0;
    for (let turn = 0; turn < turns; turn += 1) sum += turn % 7;
    if (sum < 0) throw new Error('A sum of what is not negative is not negative.');
    best = Math.min(best, (process.cpuUsage().user - user) / 1000);
  }
  return Math.max(1, best / usual);
}
