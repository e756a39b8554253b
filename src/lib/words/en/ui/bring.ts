import type { Job, Zone } from '$lib/answers/job';

/** Bringing back into a job what was changed in another place. */
export const bring = {
  start: 'Bring it into a job here',
  row: 'Bring into another job',
  title: (name: string) => `Bring “${name}” into a job here`,
  line: 'What only it says comes along. What both say stays. Where they differ, you choose; until then yours stands. Photos come along where both jobs are on this device.',
  none: 'There is no other job here to bring it into.',
  into: 'Into which job?',
  wait: 'Comparing …',
  taken: (count: number) =>
    count === 0
      ? 'Nothing new comes along.'
      : count === 1
        ? '1 entry comes along.'
        : `${count} entries come along.`,
  alike: 'Where both speak, they say the same.',
  differing: (count: number) => (count === 1 ? '1 entry differs' : `${count} entries differ`),
  here: 'Here',
  brought: 'Brought',
  /** Two zones of one letter that have different names. */
  apart: (here: string, brought: string) =>
    `“${here}” here and “${brought}” brought: are they two zones?`,
  two: 'Two zones: keep both',
  one: 'One zone: compare them',
  do: 'Bring it in',
  no: 'Leave it',
  done: (name: string, count: number) =>
    `Brought into “${name}”: ${count === 1 ? '1 entry' : `${count} entries`} changed.`,
  photos: (count: number) => (count === 1 ? '1 photo came along.' : `${count} photos came along.`),
  undo: 'Undo: as it was before',
  undone: 'It is as it was before.',
  impossible: (problem: string) => `These two do not fit together. ${problem}`,
  entries: (count: number) => (count === 1 ? '1 entry' : `${count} entries`),
  several: 'several entries',
  at: (zone: string, part: string) => `${zone}: ${part}`,
  job: {
    name: 'Name of the job',
    machines: 'Machines',
    crew: 'People on the crew',
    hoursPerDay: 'Hours in a day',
    calendar: 'Start and days off',
    prices: 'Prices',
    totalArea: 'The whole surface',
    rest: 'The zone that is the rest',
    own: 'Figures of your own',
    toolLevels: 'Values of your tools',
    crewDay: 'Choices for the crew’s day',
    survey: 'The drawing of the surface',
    log: 'Steps done once',
  } satisfies Record<Exclude<keyof Job, 'site' | 'zones'>, string>,
  zone: {
    name: 'Name',
    patches: 'Spots',
    readiness: 'Readings',
    trial: 'Test squares',
    log: 'Hours of the crew',
  } satisfies Record<Exclude<keyof Zone, 'id' | 'answers'>, string>,
} as const;
