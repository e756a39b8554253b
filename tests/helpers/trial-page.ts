import { screen, within } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import type { Job, Zone } from '$lib/answers/job';
import type { PatchTried } from '$lib/answers/trial-record';
import { preferences } from '$lib/ui/preferences.svelte';
import { session } from '$lib/ui/session.svelte';
import { tradeJob } from './trade-jobs';

export const user = userEvent.setup();
export const pitted = {
  depth: 4,
  looseness: ['fractured'],
  texture: ['pitted'],
  finish: ['thin-overlay'],
  area: 60,
  borderLength: 0,
};
export const mossy = {
  looseness: ['tight'],
  contamination: { yes: ['growth'], maybe: [] },
  finish: ['sealer'],
  area: 30,
  borderLength: 0,
};
export const start = async (answers: object = pitted) => {
  await session.startNew(tradeJob([answers], { thickness: 120 }));
  preferences.units = 'metric';
};

/** A case for every method with settings to try. */
export const oneByMethod = {
  'pressure-wash': [{ looseness: ['powdery'], finish: ['sealer'], area: 30 }, {}],
  grind: [
    {
      depth: ['under-3'],
      looseness: ['flaking'],
      texture: ['smooth'],
      finish: ['sealer'],
      area: 30,
    },
    {},
  ],
  'abrasive-blast': [
    { depth: ['3-to-6'], looseness: ['flaking'], finish: ['thin-overlay'], area: 5 },
    { element: ['wall'] },
  ],
  scarify: [{ depth: 4, looseness: ['fractured'], finish: ['thin-overlay'], area: 40 }, {}],
  shotblast: [pitted, {}],
  'needle-scale': [
    { depth: ['3-to-6'], looseness: ['flaking'], finish: ['sealer'], area: 0.5 },
    { element: ['wall'] },
  ],
  'break-out': [{ depth: 30, looseness: ['hollow'], finish: ['rebuild'], area: 6 }, {}],
} as const;
export const zone = () => session.job.zones[0] as Zone;
export const torn = (notch: number): PatchTried => ({
  method: 'scarify',
  notch,
  passes: 1,
  depths: [4],
  stones: 'torn',
  left: 'nothing',
  bar: 'no',
  sound: 'clear',
});
export const withTrial = (job: Job, patches: readonly PatchTried[]): Job => ({
  ...job,
  zones: job.zones.map((each) => ({ ...each, trial: patches })),
});
export const trial = (): readonly PatchTried[] => session.job.zones[0]?.trial ?? [];
export const box = (name: RegExp) => screen.getByRole('textbox', { name });
export const tick = (group: RegExp, name: RegExp) =>
  user.click(within(screen.getByRole('group', { name: group })).getByRole('radio', { name }));
export async function find({ minutes = '6', depth = '4', chip = '6', stones = /cut/i }) {
  await user.type(box(/minutes/i), minutes);
  for (const place of [1, 2, 3, 4, 5])
    await user.type(box(new RegExp(`place ${place}`, 'i')), depth);
  await user.selectOptions(screen.getByRole('combobox', { name: /chip/i }), chip);
  await tick(/stones/i, stones);
  await tick(/still comes off/i, /nothing/i);
  await tick(/steel/i, /no/i);
  await tick(/hammer/i, /clear/i);
}
