import type { Reason, SettledSite, SettledZone } from '$lib/advice/types';
import type { StepReasons } from './work';

type Crack = Pick<SettledZone, 'cracks' | 'steel'>;
type Frost = Pick<SettledSite, 'freezeThaw'>;

interface CrackStep {
  readonly step: 'chase-crack' | 'tap-crack' | 'route-crack';
  readonly why: Reason;
}
const groove = ['rout.width', 'rout.depth', 'seal.temperature'] as const;
// Made once: every hold and every step that follows a crack asks for it.
const cases = {
  rust: { step: 'chase-crack', why: { rule: 'rust-open-to-bar' } },
  crumbling: { step: 'chase-crack', why: { rule: 'crumbling-chase' } },
  openInFrost: { step: 'chase-crack', why: { rule: 'open-in-frost-chase' } },
  hairlineInFrost: { step: 'tap-crack', why: { rule: 'hairline-tap-first' } },
  open: { step: 'route-crack', why: { rule: 'open-rout-or-chase', figures: groove } },
  hairline: { step: 'route-crack', why: { rule: 'hairline-rout-or-bridge', figures: groove } },
} as const satisfies Record<string, CrackStep>;

/**
 * What a crack asks for, whatever the rest of the surface needs: the step, and why. Null where it
 * asks for none. A moving crack is a hold, not a step: see `holds.ts`. A crack with rust at it is
 * opened to the bar, never sealed over it.
 * Source: common practice, no published source; groove sizes from figures `rout.*`.
 */
function crackStep({ freezeThaw }: Frost, { cracks, steel }: Crack): CrackStep | null {
  if (cracks === 'none' || cracks === 'moving') return null;
  if (steel !== 'none-seen') return cases.rust;
  if (cracks === 'crumbling') return cases.crumbling;
  if (freezeThaw === 'often') return cracks === 'open' ? cases.openInFrost : cases.hairlineInFrost;
  return cracks === 'open' ? cases.open : cases.hairline;
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
