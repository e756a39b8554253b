import type { CrackMark, SpotMark, Survey } from '$lib/answers/survey';
import { valueOf, type OwnFigures } from '$shared/figures';
import type { Bay } from './bays';
import { inside, tidy } from './geometry';
import { hollowArea, smallestFound, type HollowArea } from './sounding';
import { askedByTaps, gridTaps, spacingOf, tappedOver, type Tap, type TapFindings } from './taps';

/** What the taps of a drawing say, and what they can have missed. */
export interface Soundings {
  /** Spacing of the sounding grid, mm; null where nothing was tapped. */
  readonly spacing: number | null;
  /**
   * The smallest round hollow found nine times in ten: its radius (`ninety`) and how far it
   * reaches `across`, mm; the same for a grid half as wide. Null where nothing was tapped.
   */
  readonly found: {
    readonly ninety: number;
    readonly across: number;
    readonly finer: { readonly spacing: number; readonly ninety: number; readonly across: number };
  } | null;
  /**
   * The lanes a chain was dragged along, mm wide, and whether the chain covers that (figure
   * `sounding.lane`); null where none was. Then all of the surface was heard.
   */
  readonly chained: { readonly lanes: number; readonly tooWide: boolean } | null;
  /** From counts of taps alone; null where nothing was tapped. */
  readonly hollow: HollowArea | null;
  /** Ids of bays without a tap: of those nothing is said. */
  readonly untapped: readonly string[];
  /** Ids of bays that were heard all over: tapped on a grid, or dragged with a chain in lanes it covers. */
  readonly heard: readonly string[];
  /** Indices of taps. */
  readonly taps: TapFindings;
}

export function sounded(
  taps: readonly Tap[],
  { spacing: laid, lanes }: Pick<Survey, 'spacing' | 'lanes'>,
  bays: readonly Bay[],
  spots: readonly SpotMark[],
  cracks: readonly CrackMark[],
  own?: OwnFigures,
): Soundings {
  const grid = gridTaps(
    taps,
    bays,
    cracks.map(({ line }) => line),
    own,
  );
  const spacing = taps.length ? (laid ?? spacingOf(grid)) : null;
  const rings = spots.map(({ corners }) => tidy(corners));
  const chained =
    lanes === undefined ? null : { lanes, tooWide: lanes > valueOf('sounding.lane', own) };
  const heard =
    chained && !chained.tooWide ? bays.map(({ id }) => id) : tappedOver(taps, bays, rings, own);
  if (spacing === null)
    return {
      spacing,
      chained,
      heard,
      found: null,
      hollow: null,
      untapped: [],
      taps: askedByTaps(taps, rings, 0, own),
    };
  const tapped = bays.filter(({ ring }) => taps.some(({ at }) => inside(at, ring)));
  const told = (of: number) => ({
    ninety: smallestFound(of, own),
    across: 2 * smallestFound(of, own),
  });
  return {
    spacing,
    chained,
    heard,
    found: { ...told(spacing), finer: { spacing: spacing / 2, ...told(spacing / 2) } },
    hollow: hollowArea(
      grid.filter(({ rings: ring }) => !ring).length,
      grid.length,
      spacing,
      tapped.reduce((sum, bay) => sum + bay.area, 0),
      own,
    ),
    untapped: chained ? [] : bays.filter((bay) => !tapped.includes(bay)).map(({ id }) => id),
    taps: askedByTaps(taps, rings, spacing, own),
  };
}
