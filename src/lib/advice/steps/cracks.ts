import type { Reason, SettledSite, SettledZone } from '$lib/advice/types';
import type { StepReasons } from './work';

type Crack = Pick<SettledZone, 'cracks' | 'steel'>;
type Frost = Pick<SettledSite, 'freezeThaw'>;

/**
 * What a crack asks for, whatever the rest of the surface needs: the step, and why. Null where it
 * asks for none. A moving crack is a hold, not a step: see `holds.ts`. A crack with rust at it is
 * opened to the bar, never sealed over it.
 * Source: common practice, no published source; groove sizes from figures `rout.*`.
 */
function crackStep(
  { freezeThaw }: Frost,
  { cracks, steel }: Crack,
): { step: 'chase-crack' | 'tap-crack' | 'route-crack'; why: Reason } | null {
  if (cracks === 'none' || cracks === 'moving') return null;
  if (steel !== 'none-seen') return { step: 'chase-crack', why: { rule: 'rust-open-to-bar' } };
  if (cracks === 'crumbling') return { step: 'chase-crack', why: { rule: 'crumbling-chase' } };
  const frost = freezeThaw === 'often';
  if (cracks === 'open' && frost)
    return { step: 'chase-crack', why: { rule: 'open-in-frost-chase' } };
  if (frost) return { step: 'tap-crack', why: { rule: 'hairline-tap-first' } };
  return {
    step: 'route-crack',
    why: {
      rule: cracks === 'open' ? 'open-rout-or-chase' : 'hairline-rout-or-bridge',
      figures: ['rout.width', 'rout.depth', 'seal.temperature'],
    },
  };
}

/** Whether a crack is opened with a hammer along its whole length: then it is filled, as a hole is. */
export const chasesCrack = (site: Frost, zone: Crack): boolean =>
  crackStep(site, zone)?.step === 'chase-crack';

/** Whether a groove is cut along a crack and sealed. */
export const routesCrack = (site: Frost, zone: Crack): boolean =>
  crackStep(site, zone)?.step === 'route-crack';

const asked = (id: 'chase-crack' | 'tap-crack' | 'route-crack') => [
  ({ site, zone }: { site: Frost; zone: Crack }) => {
    const found = crackStep(site, zone);
    return found?.step === id && found.why;
  },
];

export const crackSteps: StepReasons = {
  'tap-crack': asked('tap-crack'),
  'chase-crack': asked('chase-crack'),
  'route-crack': asked('route-crack'),
};
