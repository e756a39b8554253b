import type { SilicaControlId } from '$shared/silica-table';

/** The sheet a crew lead prints and reads aloud. */
export const briefingWords = {
  title: 'To read aloud before work starts',
  job: 'Job',
  date: 'Date',
  lead: 'Crew lead',
  competent: 'Competent person, may stop the work',
  help: 'Who to call, and where we are',
  step: 'Step',
  control: 'Run this against dust',
  mask: 'Mask',
  turn: 'Longest turn',
  turnNote:
    'Longest turn: the trigger time before the vibration action value with a tool as it usually shakes, if nothing else shakes your hands that day.',
  none: 'none',
  noneByTable: 'none by the US table',
  factor: (factor: number): string => `factor ${factor}`,
  collector: 'the maker’s collector; measure the dust',
  barrier: 'barrier round it; measure the dust',
  begin: (factor: number): string => `factor ${factor} until measured`,
  hood: (factor: number): string => `hood fed with clean air; near it factor ${factor}`,
  ask: 'ask the maker',
  noTurn: 'does not shake',
  inAll: (time: string): string => `${time} in all`,
  or: 'or',
  lines: 'Read these out',
  sign: 'Heard and understood',
  name: 'Name',
  signature: 'Sign',
} as const;

/** Controls in the few words of a table. */
export const controlInShort: Readonly<Record<SilicaControlId | 'exhaust-the-room', string>> = {
  'water-to-blade': 'water on the blade',
  'water-to-wheel': 'water on the wheel',
  'water-to-cutter': 'water on the cutters',
  'water-at-point': 'water at the point',
  'water-with-surfactant': 'water sprays with wetting agent',
  'shroud-and-collector': 'shroud and collector',
  'makers-collector': 'the maker’s collector',
  'cyclone-or-cleaning': 'cyclone or self-cleaning filter',
  'hepa-for-holes': 'HEPA vacuum for holes',
  'vacuum-between-passes': 'HEPA vacuum',
  'exhaust-the-room': 'air drawn out',
};
