import * as v from 'valibot';
import {
  afterSounds,
  barSeen,
  leftIds,
  stoneIds,
  type PatchTried,
} from '$lib/answers/trial-record';
import { rangeOf, valueOf } from '$shared/figures';
import { methodIds } from '$shared/methods';
import { entry, list, object, picked, whole } from './shapes';

const one = <const C extends string>(choices: readonly C[]) =>
  v.exactOptional(picked(choices, { id: 'names', choices }));

const patch = object({
  method: picked(methodIds, { id: 'names', choices: methodIds }),
  notch: whole(rangeOf('limit.notch')),
  passes: whole(rangeOf('limit.passes')),
  area: v.exactOptional(entry),
  minutes: v.exactOptional(entry),
  depths: v.exactOptional(list(entry, valueOf('trial.places'))),
  profile: v.exactOptional(whole(rangeOf('csp.scale'))),
  stones: one(stoneIds),
  left: one(leftIds),
  bar: one(barSeen),
  sound: one(afterSounds),
});

/**
 * Square metres tried in a zone, as the job file and the link have them. A notch is its place on
 * the ladder in `shared/ladders.json`: a ladder whose notches change needs a migration, which
 * `tests/unit/keep-trial.test.ts` holds.
 */
export const trialShape: v.GenericSchema<PatchTried[], PatchTried[]> = list(
  patch,
  rangeOf('limit.trial-patches')[1],
);
