import type { FigureId } from '$shared/figures';
import type { Conditions } from './conditions';
import type { Lighter } from './compare';
import { measureIds, type OwnerOptionId, type MeasureId } from './options';
import type { Plan } from './plan';
import type { Signs } from './signs';

export const pointIds = [
  'mostly-sound',
  'sound-broken-out',
  'surface-only',
  'less',
  'more',
  'full-depth-parts',
  'parts-made-new',
  'mostly-gone',
  'depth-past-third',
  'settled',
  'fire-or-chemical',
  'structure',
  'props-for-all',
  'map-cracking',
  'moving-crack',
  'bar-loss',
  'cause-stays',
  'salts-stay',
  'open-answers',
  'unmeasured',
  'whole-unknown',
  'not-entered',
  'thickness-unknown',
  'finish-undecided',
  'not-sounded',
  'skin-left',
  'patch-life',
  'no-one-percentage',
] as const;
export type PointId = (typeof pointIds)[number];

/** One thing that speaks for or against a option, or is not known, with what it was seen from. */
export interface Point {
  readonly id: PointId;
  readonly share?: number;
  readonly zones?: readonly string[];
  readonly measures?: readonly MeasureId[];
  /** The option that it takes less, or more, than. */
  readonly than?: OwnerOptionId;
  readonly figures?: readonly FigureId[];
}

export interface ForAndAgainst {
  readonly speaksFor: readonly Point[];
  readonly against: readonly Point[];
}
export type PointsOfOptions = Readonly<Partial<Record<OwnerOptionId, ForAndAgainst>>>;

const roundOff = 1e-9;
const some = (point: Point): Point[] => (point.zones?.length ? [point] : []);
const when = (given: boolean, point: Point): Point[] => (given ? [point] : []);

/** What the concrete itself has lost: new concrete would not have it. */
const losses = ({ held, warned }: Signs): Point[] => [
  ...when(warned('fire-or-chemical'), { id: 'fire-or-chemical' }),
  ...some({ id: 'map-cracking', zones: held('map-cracking') }),
  ...some({ id: 'bar-loss', zones: held('bar-section-loss') }),
];

/** What makes any repair of it doubtful until somebody has looked; what moves it moves new concrete too. */
const causes = (signs: Signs): Point[] => [
  ...when(signs.warned('settled-or-rocking'), { id: 'settled' }),
  ...some({ id: 'structure', zones: signs.held('structure-before-removal') }),
  ...some({ id: 'moving-crack', zones: signs.held('moving-crack') }),
  ...losses(signs),
];

/** What holds the work until somebody has looked how deep it goes. */
const notYetSeen = [
  'hollow-unmeasured',
  'rust-with-salts',
  'rust-at-crack',
  'nothing-over-rust',
] as const;

/** Two options held against each other, measure by measure. */
export interface Weighed {
  readonly one: OwnerOptionId;
  readonly other: OwnerOptionId;
  readonly lighter: Readonly<Record<MeasureId, Lighter>>;
}

/** Measures by which a option surely takes less than another, or more. */
function measuresOf(
  option: OwnerOptionId,
  id: 'less' | 'more',
  weighed: readonly Weighed[],
): Point[] {
  return weighed.flatMap(({ one, other, lighter }): Point[] => {
    if (option !== one && option !== other) return [];
    const which = (option === one) === (id === 'less') ? 'first' : 'second';
    // Days of hire of small machines and of a breaker are no like things: shown, never weighed.
    const measures = measureIds.filter((each) => lighter[each] === which && each !== 'hire-days');
    return measures.length ? [{ id, measures, than: option === one ? other : one }] : [];
  });
}

/**
 * What speaks for and against each option that there is; what it surely takes more than another
 * speaks against it. Source: common practice, no published source.
 */
export function pointsOf(
  signs: Signs,
  { share, told }: Conditions,
  options: Readonly<Record<'restore' | 'parts', boolean>>,
  weighed: readonly Weighed[],
): PointsOfOptions {
  const gone = some({
    id: 'full-depth-parts',
    zones: signs.zonesIn('replace'),
    ...(told && { share: told.replace }),
    figures: ['depth.full-limit'],
  });
  const past = some({
    id: 'depth-past-third',
    zones: signs.doubtful,
    figures: ['depth.partial-limit'],
  });
  const mostlyGone = when(signs.mostlyGone, {
    id: 'mostly-gone',
    share: signs.gone,
    figures: ['compare.mostly'],
  });
  const why = causes(signs);
  const sound = share !== null && share.sound > signs.mostly;
  // How deep it goes where rust or a hollow is still to be looked into, nobody knows yet.
  const doubted = notYetSeen.some((rule) => signs.held(rule).length > 0);
  const surface = !doubted && share !== null && share.sound + share.surface > 1 - roundOff;
  // What replacing all takes is told against restoring alone: against parts it would say the same twice.
  const ofAll = weighed.filter(({ one }) => one === 'restore');
  const poor: Point = { id: 'patch-life', figures: ['patch.life-poor'] };
  const good: Point = { id: 'patch-life', figures: ['patch.life-good'] };
  const moves = signs.warned('settled-or-rocking') || signs.held('moving-crack').length > 0;
  const againstRestore = [...gone, ...mostlyGone, ...past, ...why];
  return {
    ...((options.restore || againstRestore.length > 0) && {
      restore: {
        speaksFor: [
          ...when(sound, { id: 'mostly-sound', share: told?.sound ?? 0 }),
          ...when(surface, { id: 'surface-only' }),
          ...measuresOf('restore', 'less', weighed),
          ...when(signs.patched, good),
        ],
        against: [
          ...againstRestore,
          ...when(signs.salted, { id: 'salts-stay' }),
          ...measuresOf('restore', 'more', weighed),
          ...when(signs.patched, poor),
        ],
      },
    }),
    ...(options.parts && {
      parts: {
        speaksFor: [
          ...some({
            id: 'parts-made-new',
            zones: [...new Set([...signs.zonesIn('break-out', 'replace')])],
          }),
          ...measuresOf('parts', 'less', weighed),
        ],
        against: [...mostlyGone, ...why, ...measuresOf('parts', 'more', weighed)],
      },
    }),
    replace: {
      speaksFor: [
        ...gone,
        ...mostlyGone,
        ...past,
        ...losses(signs),
        ...measuresOf('replace', 'less', ofAll),
      ],
      against: [
        ...when(sound, { id: 'sound-broken-out', share: told?.sound ?? 0 }),
        ...when(surface, { id: 'surface-only' }),
        ...when(moves, { id: 'cause-stays' }),
        ...some({ id: 'props-for-all', zones: signs.held('structure-before-removal') }),
        ...measuresOf('replace', 'more', ofAll),
      ],
    },
  };
}

/** What nobody has found out or said yet. */
export function notKnownYet(plan: Plan, signs: Signs, conditions: Conditions): Point[] {
  const { share, told, whole, unmeasured } = conditions;
  return [
    ...some({ id: 'open-answers', zones: signs.zonesIn('not-known') }),
    ...some({ id: 'unmeasured', zones: unmeasured }),
    ...when(whole === null, { id: 'whole-unknown' }),
    ...when(share !== null && share['not-entered'] > roundOff, {
      id: 'not-entered',
      share: told?.['not-entered'] ?? 0,
    }),
    ...when((plan.drawn.site.thickness ?? 'unknown') === 'unknown', { id: 'thickness-unknown' }),
    ...some({ id: 'finish-undecided', zones: signs.undecided }),
    ...some({ id: 'skin-left', zones: signs.skinLeft }),
    ...some({ id: 'not-sounded', zones: signs.notSounded }),
    {
      id: 'no-one-percentage',
      figures: ['rule.galion', 'rule.lauderhill', 'rule.sioux-falls', 'rule.pleasant-hill'],
    },
  ];
}
