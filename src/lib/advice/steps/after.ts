import { hasCoating, isBonded, showsBar } from '$lib/advice/demands';
import { judgeProfile, profileLeft } from '$lib/advice/methods/judge';
import { moistureOf } from '$lib/advice/sheet';
import { followsTexture } from '$lib/advice/target';
import type { Reason } from '$lib/advice/types';
import { valueOf } from '$shared/figures';
import type { StepId } from '$shared/methods';
import { chasesCrack } from './cracks';
import { borderTool } from './main';
import { uses, type Situation, type StepReason, type StepReasons } from './work';

/**
 * What follows the main method: sound again, take off the bruised skin, get the dust off,
 * prove it, and hand it over damp or dry.
 * Source: common practice, no published source, except where a reason names figures.
 */

/** Steps that strike the concrete, and leave its skin bruised. */
export const hammers = ['break-out', 'free-bar', 'chase-crack', 'needle-scale', 'scarify'] as const;
/** Of these, those that leave a hole or a groove: it is filled, and the fill is bonded. */
const opens: ReadonlySet<StepId> = new Set<StepId>(['break-out', 'free-bar', 'chase-crack']);

const isDone = (step: (typeof hammers)[number], situation: Situation): boolean =>
  step === 'free-bar'
    ? showsBar(situation.zone)
    : step === 'chase-crack'
      ? chasesCrack(situation.site, situation.zone)
      : uses(situation, step);

/** The steps whose bruised skin counts; the hand tool along the edge is told apart. */
const struckBy = (situation: Situation): readonly StepId[] =>
  hammers.filter(
    (step) => isDone(step, situation) && (isBonded(situation.zone) || opens.has(step)),
  );
const borderStruck = (situation: Situation): boolean =>
  isBonded(situation.zone) && borderTool(situation) === 'bush-hammer';
const isBruised = (situation: Situation): boolean =>
  struckBy(situation).length > 0 || borderStruck(situation);

/** Where frost is rare and the area small, thorough washing will do, if what goes on may be wet. */
const washingDoes = ({ site, zone }: Situation): boolean =>
  zone.area !== 'unknown' &&
  zone.area <= valueOf('blast.small-area') &&
  site.freezeThaw === 'rare' &&
  moistureOf(zone) !== 'dry';

/**
 * Impact tools leave a bruised skin about 3 mm thick, and what is bonded to it lets go with it. Every
 * hammered face counts, whichever step struck it; under a sealer those that are filled first. Where
 * it freezes often the skin may not stay.
 */
const skinOff: readonly StepReason[] = [
  (situation) =>
    !washingDoes(situation) &&
    isBruised(situation) && {
      rule:
        situation.site.freezeThaw === 'often' ? 'bruised-skin-must-go' : 'bruised-skin-should-go',
      figures: ['depth.bruise'],
    },
  // A shotblaster seals on a flat dry floor: not in a hole, a chased crack, round a bar, or on a spot.
  // Only a floor is ever scarified, so what else was struck is where it cannot go.
  (situation) =>
    uses(situation, 'scarify') &&
    isBonded(situation.zone) &&
    !washingDoes(situation) && { rule: 'skin-by-shotblaster' },
  (situation) =>
    !washingDoes(situation) &&
    (borderStruck(situation) || struckBy(situation).some((step) => step !== 'scarify')) && {
      rule:
        moistureOf(situation.zone) !== 'dry' || tooRough(situation)
          ? 'skin-by-grit-or-water'
          : 'skin-by-grit',
    },
];

/** A scarified floor that had a coating, or is not rough enough yet, is shotblasted. */
const underCoating: readonly StepReason[] = [
  (situation) =>
    uses(situation, 'scarify') &&
    situation.demands.heavyCoating &&
    situation.demands.belowPlane && { rule: 'pits-under-coating' },
  (situation) =>
    uses(situation, 'scarify') &&
    situation.demands.heavyCoating &&
    judgeProfile('scarify', situation.demands) !== null && { rule: 'profile-under-coating' },
];

/** A crack that is routed is sucked out there and then, and sealed on the same day. */
const isDusty = ({ site, zone, method }: Situation): boolean =>
  method !== 'pressure-wash' || chasesCrack(site, zone);

/**
 * What is washed last: under pressure where the method is that, else a rinse. Under a finish that
 * wants it dry nothing is washed last: what salt is there shows in the test. A fill that comes
 * between is mortar, on a damp surface.
 */
const salty = (situation: Situation): Reason | false => {
  const { site, zone } = situation;
  return (
    zone.steel !== 'none-seen' &&
    site.salts !== 'none' &&
    (moistureOf(zone) !== 'dry' || tooRough(situation) !== null) && {
      rule: 'salts-at-steel',
      facts: { salts: site.salts },
    }
  );
};
const skinWashed = (situation: Situation): Reason | false =>
  washingDoes(situation) &&
  isBruised(situation) && {
    rule: 'bruised-skin-wash-will-do',
    figures: ['depth.bruise', 'blast.small-area'],
  };
const jetWashes = (situation: Situation): boolean => uses(situation, 'pressure-wash');
/** Dust is rinsed off, but for a finish that wants it dry and nothing else that is rinsed. */
const rinsed = (situation: Situation): boolean =>
  isDusty(situation) &&
  !jetWashes(situation) &&
  (moistureOf(situation.zone) !== 'dry' || !!salty(situation));
const bloomed = ({ zone }: Situation): boolean => zone.contamination.includes('salt-bloom');
const wiped = ({ zone }: Situation): boolean => moistureOf(zone) === 'dry';

const byRinse =
  (reason: StepReason): StepReason =>
  (situation) =>
    !jetWashes(situation) && reason(situation);

/** What a fill is for: too rough for the finish, or a hole. */
const filling: StepReason = (situation) => {
  const filled = tooRough(situation);
  if (!filled) return false;
  return situation.method === 'break-out'
    ? { rule: 'hole-filled-first' }
    : { rule: 'too-rough-fill-first', facts: filled };
};

export const stepsAfter: StepReasons = {
  // A hollow skin is sounded after it has come off: its method says so.
  're-sound': [
    (situation) =>
      (uses(situation, 'break-out', 'water-jet') ||
        chasesCrack(situation.site, situation.zone)) && { rule: 'sound-again' },
  ],
  'blast-clean': [...underCoating, ...skinOff],
  vacuum: [
    (situation) => isDusty(situation) && { rule: 'dust-off' },
    (situation) =>
      isDusty(situation) &&
      !jetWashes(situation) &&
      !rinsed(situation) && { rule: 'vacuum-twice-no-wash' },
    // Washing never takes a coating off, so what took it off left dust.
    ({ zone }) => hasCoating(zone.contamination) && { rule: 'coating-debris-apart' },
    (situation) =>
      bloomed(situation) &&
      wiped(situation) &&
      !jetWashes(situation) && { rule: 'salt-bloom-brushed' },
  ],
  'pressure-wash': [
    salty,
    skinWashed,
    // Where it is washed under pressure anyway, that is the wash: nobody washes twice.
    (situation) => isDusty(situation) && { rule: 'wash-everything' },
    (situation) => bloomed(situation) && { rule: 'salt-bloom-off' },
  ],
  'final-wash': [
    byRinse(salty),
    byRinse(skinWashed),
    (situation) => rinsed(situation) && { rule: 'wash-everything' },
    (situation) => rinsed(situation) && { rule: 'slurry-caught' },
    byRinse((situation) => bloomed(situation) && !wiped(situation) && { rule: 'salt-bloom-off' }),
  ],
  'check-ready': [() => ({ rule: 'prove-it' })],
  'fill-level': [
    filling,
    (situation) => tooRough(situation) !== null && { rule: 'damp-before-fill' },
  ],
  'fill-cure': [(situation) => tooRough(situation) !== null && { rule: 'fill-cures-first' }],
};

/**
 * Whether what is left is too rough for the finish. A sealer follows the texture it finds.
 * @returns the CSP left at its smoothest and the roughest that will do, or null
 */
export function tooRough({
  zone,
  demands,
  method,
}: Pick<Situation, 'zone' | 'demands' | 'method'>): { leaves: number; needs: number } | null {
  if (!demands.profile) return null;
  if (followsTexture(zone, method)) return null;
  const [leaves] = profileLeft(method, demands);
  const [, needs] = demands.profile;
  return leaves > needs ? { leaves, needs } : null;
}
