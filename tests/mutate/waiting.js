/**
 * What becomes of what a test waits for.
 *
 * Plain JavaScript: the tool loads it in a process that reads nothing else.
 */

/** What was refused or thrown and nobody heard of: with Vitest too the run fails then. */
export const unheard = { reason: null };
for (const event of ['unhandledRejection', 'uncaughtException'])
  process.on(event, (reason) => {
    unheard.reason = reason instanceof Error ? reason : new Error(String(reason));
  });

/** How long nothing may happen in a test until it is given up, ms. None of ours waits so long. */
const still = 2500;

/**
 * What a test comes to; refused when nothing happens any more, for then what it waits for does not
 * come. However busy the machine, waiting is no work.
 */
export async function unlessStill(test) {
  let timer;
  let before = performance.eventLoopUtilization();
  const refused = new Promise((_, reject) => {
    timer = setInterval(() => {
      const now = performance.eventLoopUtilization();
      const { utilization } = performance.eventLoopUtilization(now, before);
      before = now;
      if (utilization < 0.02) reject(new Error('nothing happened any more'));
    }, still);
  });
  try {
    await Promise.race([test(), refused]);
  } finally {
    clearInterval(timer);
  }
}
