/**
 * Waits for something, but not for ever.
 * @param milliseconds how long at most
 * @returns whether it ended in that time; a failure ends it too
 */
export async function within(milliseconds: number, waiting: Promise<unknown>): Promise<boolean> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const ended = waiting.then(
    () => true,
    () => true,
  );
  const late = new Promise<false>((resolve) => {
    timer = setTimeout(() => resolve(false), milliseconds);
  });
  const inTime = await Promise.race([ended, late]);
  clearTimeout(timer);
  return inTime;
}
