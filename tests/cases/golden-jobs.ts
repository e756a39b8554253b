import type { UnitSystem } from '$lib/answers/units';
import boatShed from '$lib/keep/demos/boat-shed.json';
import forecourt from '$lib/keep/demos/community-hall-forecourt.json';
import steps from '$lib/keep/demos/community-hall-steps.json';
import larchRow from '$lib/keep/demos/larch-row.json';
import { sixFile, sixNames } from '../helpers/six-jobs';
import { themes } from './case';

/** A job told in full. */
interface WholeJob {
  readonly id: string;
  readonly title: string;
  /** A job file. */
  readonly file: unknown;
  readonly units: UnitSystem;
}

const named = (name: string): string => name.toLowerCase().replace(/[^a-z0-9]+/g, '-');

const demos = [boatShed, forecourt, steps, larchRow].map((file) => ({
  id: named(file.site.name.replace(/ \(.*/, '')),
  title: file.site.name,
  file: file as unknown,
}));

/** Six jobs as people have them, all settled, and with three answers of each left open. */
const six = sixNames.flatMap((name) =>
  [false, true].map((open) => ({
    id: `six-${named(name)}${open ? '-open' : ''}`,
    title: `${name}${open ? ', three answers open' : ''} (invented)`,
    // What is left open is not in the file at all.
    file: JSON.parse(JSON.stringify(sixFile(name, open))) as unknown,
  })),
);

/** Every second case of each theme, and all that have more zones than one. */
const cases = themes.flatMap(({ cases }) =>
  cases
    .filter(({ zones }, place) => zones.length > 1 || place % 2 === 0)
    .map(({ id, title, site, zones }) => ({
      id,
      title,
      file: { format: 'down-to-sound.job', version: 1, site, zones } as unknown,
    })),
);

/** By turns in one system of units and the other. */
export const wholeJobs: readonly WholeJob[] = [...demos, ...six, ...cases].map((job, place) => ({
  ...job,
  units: place % 2 ? 'us' : 'metric',
}));
