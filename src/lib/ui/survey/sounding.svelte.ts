import type { Place } from '$lib/answers/survey';
import { baysOf, type Bay } from '$lib/survey/bays';
import { distance } from '$lib/survey/geometry';
import { foldsOf, outlineOf } from '$lib/survey/outline';
import { chainLanes, soundingPoints } from '$lib/survey/sounding-points';
import { session } from '$lib/ui/session.svelte';
import { valueOf } from '$shared/figures';

const survey = $derived(session.job.survey);
const bays = $derived(
  survey ? baysOf(outlineOf(survey.slab), [...(survey.joints ?? []), ...foldsOf(survey.slab)]) : [],
);
/** The spacing that dots are laid at, mm. */
const spacing = $derived(survey?.spacing ?? valueOf('sounding.grid-counts', session.job.own));
const dots = $derived.by((): Place[] => {
  if (!survey) return [];
  const cracks = (survey.marks ?? []).flatMap((mark) => (mark.kind === 'crack' ? [mark.line] : []));
  const { grid, lines } = soundingPoints(bays, cracks, spacing, session.job.own);
  return [...grid, ...lines];
});
const laneWidth = $derived(survey?.lanes ?? valueOf('sounding.lane', session.job.own));
const lanes = $derived(chainLanes(bays, laneWidth));
const taps = $derived(
  new Map(
    (survey?.marks ?? []).flatMap((mark, index) =>
      mark.kind === 'tap' ? [[key(mark.at), index] as const] : [],
    ),
  ),
);
const untapped = $derived(dots.filter((dot) => !taps.has(key(dot))));

const key = (place: Place) => place.map((each) => Math.round(each)).join();

/** Where the slab of the job in hand is to be tapped, and where it has been. */
export const sounding = {
  get bays(): readonly Bay[] {
    return bays;
  },
  /** The spacing that dots are laid at, mm. */
  get spacing(): number {
    return spacing;
  },
  get dots(): readonly Place[] {
    return dots;
  },
  /** Width of the lanes that are shown, mm. */
  get laneWidth(): number {
    return laneWidth;
  },
  /** Lines to drag a chain along. */
  get lanes(): readonly (readonly [Place, Place])[] {
    return lanes;
  },
  get untapped(): readonly Place[] {
    return untapped;
  },
  /** Index of the tap at a dot. */
  tapAt: (dot: Place): number | undefined => taps.get(key(dot)),
};

export function nearest(places: readonly Place[], to: Place): Place | undefined {
  let best: Place | undefined;
  let least = Infinity;
  for (const place of places) {
    const away = distance(place, to);
    if (away < least) [best, least] = [place, away];
  }
  return best;
}
