import type { FigureId } from '$shared/figures';

/** What the options and the points are counted with. */
export const figures: readonly FigureId[] = [
  'carbon.ready-mix',
  'carbon.ready-mix-mean',
  'carbon.repair-mortar',
  'carbon.haulage',
  'haul.distance',
  'concrete.density',
  'mortar.density',
  'fill.waste',
  'replace.waste',
  'rate.demolish',
  'rate.place',
  'traffic.cars',
  'traffic.coated',
  'replace.opening',
  'patch.life-good',
  'patch.life-poor',
  'compare.mostly',
  'level.flush',
  'level.bevel',
];
/** Shares at which published rules replace. */
export const evidence: readonly FigureId[] = [
  'rule.galion',
  'rule.lauderhill',
  'rule.sioux-falls',
  'rule.pleasant-hill',
];
