const rounds = 5;

/**
 * Milliseconds of processor that this process spends on something, the best of some rounds: what
 * else runs on the machine does not count, and little of what it slows down.
 */
export async function cpuOf(work: () => Promise<void> | void): Promise<number> {
  let best = Infinity;
  for (let round = 0; round < rounds; round += 1) {
    const before = process.cpuUsage();
    await work();
    const { user, system } = process.cpuUsage(before);
    best = Math.min(best, (user + system) / 1000);
  }
  return best;
}
