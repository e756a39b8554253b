import { describe, expect, it } from 'vitest';
import type { Job } from '$lib/answers/job';
import type { PatchTried } from '$lib/answers/trial-record';
import { parseJob, writeJob } from '$lib/keep/job-file';
import { readShareLink, shareLink } from '$lib/keep/share-link';
import { planJob } from '$lib/plan/plan';
import { figures, type FigureId } from '$shared/figures';
import { ladderIds, numbersOf, settingLadders } from '$shared/ladders';
import { tradeJob } from '../helpers/trade-jobs';

/**
 * The ladders as kept files and links count their notches. Nobody changes a line: where a ladder
 * changes, what was kept needs a step in `keep/versions.ts`, and then a list of its own here.
 */
const frozen: Record<string, readonly string[]> = {
  'pressure-wash': ['6.9 MPa, 300 mm', '13.8 MPa, 300 mm', '13.8 MPa, 200 mm'],
  grind: ['80 count, 6 count', '40 count, 6 count', '40 count, 3 count'],
  'abrasive-blast': ['0.62 MPa, 900 mm', '0.62 MPa, 610 mm', '0.69 MPa, 610 mm'],
  scarify: ['star, 1.5 mm', 'tipped, 1.5 mm', 'tipped, 3 mm'],
  shotblast: ['330 count, walking', '390 count, walking', '390 count, slow'],
  'needle-scale': ['2 mm', '3 mm', '4 mm'],
  'break-out': ['7 kg', '14 kg'],
  'break-out-light': ['4.5 kg', '7 kg'],
};

describe('a square metre that is kept', () => {
  it('counts notches on ladders that stay as they are', () => {
    const now = Object.fromEntries(
      ladderIds.map((id) => [
        id,
        settingLadders[id].notches.map((notch) =>
          notch
            .map((setting) => {
              const numbers = numbersOf(setting);
              const unit = figures[setting.figure as FigureId]?.unit;
              return numbers ? `${String(numbers[0])} ${unit}` : String(setting.word);
            })
            .join(', '),
        ),
      ]),
    );
    expect(now).toEqual(frozen);
  });

  const patch: PatchTried = {
    method: 'shotblast',
    notch: 1,
    passes: 1,
    minutes: 8,
    depths: [4, 4, 4, 4, 4],
    profile: 6,
    stones: 'cut',
    left: 'nothing',
    bar: 'no',
    sound: 'clear',
  };
  const zone = {
    depth: 4,
    looseness: ['fractured'],
    texture: ['pitted'],
    finish: ['thin-overlay'],
    area: 60,
  };
  const job = tradeJob([zone]);
  const tried: Job = { ...job, zones: job.zones.map((each) => ({ ...each, trial: [patch] })) };

  it('says the same days where a link of it is opened', async () => {
    const made = await shareLink(tried, '');
    if (!made.ok) throw new Error('too long');
    const read = await readShareLink(made.link);
    if (!read.ok) throw new Error('not read');
    expect(read.value.zones[0]?.trial).toEqual([patch]);
    expect(planJob(read.value).tasks).toEqual(planJob(tried).tasks);
    expect(planJob(read.value).tasks).not.toEqual(planJob(job).tasks);
  });

  it.each([
    [{ notch: 9 }, 'notch'],
    [{ passes: 0 }, 'passes'],
    [{ stones: 'lost' }, 'stones'],
    [{ method: 'acid' }, 'method'],
    [{ depths: [1, 2, 3, 4, 5, 6] }, 'depths'],
    [{ profile: 11 }, 'profile'],
    [{ sounds: 'clear' }, 'sounds'],
  ])('is refused by its place with %j', (wrong, place) => {
    const file = writeJob(tried);
    const bad = { ...file, zones: [{ ...file.zones[0], trial: [{ ...patch, ...wrong }] }] };
    const read = parseJob(bad);
    expect(read.ok).toBe(false);
    if (!read.ok) expect(read.problem.path).toBe(`zones[0].trial[0].${place}`);
  });

  it('stays as typed where it could not be read', () => {
    const half = { method: 'grind', notch: 1, passes: 1, minutes: 'ten or so' } as const;
    const read = parseJob(
      writeJob({ ...tried, zones: tried.zones.map((each) => ({ ...each, trial: [half] })) }),
    );
    expect(read.ok && read.value.zones[0]?.trial).toEqual([half]);
  });
});
