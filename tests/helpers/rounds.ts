/** Whether this is the nightly run (`npm run nightly`), which tries everything whole. */
export const nightly = Boolean(process.env.NIGHTLY);

/** How often something is tried: a sample in every run, as often as it takes at night. */
export const rounds = (usual: number, atNight: number): number => (nightly ? atNight : usual);

/** Fewer while rules are changed on trial (`npm run mutate`), where all is tried for each change anew. */
export const onTrial = (usual: number, few: number): number =>
  process.env.MUTATE_ROOM ? few : usual;

/**
 * A sample of a list in every run, spread evenly over it and always the same; all of it at night.
 * The share is a whole number: one of so many. A prime keeps out of step with how lists repeat.
 */
export const sampled = <T>(list: readonly T[], oneOf: number, from = 0): readonly T[] =>
  nightly ? list : list.filter((_each, place) => (place + from) % oneOf === 0);

/**
 * Stands at the end of the name of a browser test that only the night runs; the configuration leaves
 * these out otherwise. One of them by day: `NIGHTLY=1 npm run browser -- focus`.
 */
export const nightTag = '@nightly';

/** The tag for one of several tests made alike, of which some run every time. */
export const nightUnless = (daily: boolean): string => (daily ? '' : ` ${nightTag}`);
