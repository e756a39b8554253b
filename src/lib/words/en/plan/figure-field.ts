import { showNumber } from '$lib/answers/parse-number';
import type { UnitSystem } from '$lib/answers/units';
import { figures, rangeOf, type FigureId, type OwnFigures } from '$shared/figures';
import type { Say } from '$lib/words/types';
import { shownOf } from '$lib/words/units';
import { shownAs, spanWords } from './amounts';

/** How a reader types a figure: the unit behind the field, and how many of it one engine unit is. */
export interface FigureField {
  readonly label: string;
  readonly factor: number;
}

/** Spelled-out units of time, and shares. */
const spelled: Readonly<Record<string, FigureField>> = {
  h: { label: 'hours', factor: 1 },
  d: { label: 'days', factor: 1 },
  min: { label: 'minutes', factor: 1 },
};
const mmPerInch = 25.4;
const percent: FigureField = { label: '%', factor: 100 };

/** The unit a figure is typed in. Its own size decides, so that it stays the same whatever is typed. */
export function figureField(id: FigureId, units: UnitSystem): FigureField {
  const { unit } = figures[id];
  const most = rangeOf(id)[1];
  if (unit === 'ratio') return most > 1 ? { label: 'times', factor: 1 } : percent;
  if (unit === 'mm')
    return units === 'us' ? { label: 'in', factor: 1 / mmPerInch } : { label: 'mm', factor: 1 };
  if (unit === 'MPa') return shownOf(id)[units];
  return spelled[unit] ?? shownAs(unit, most, units);
}

/** The figure in words; the reader's own value where there is one. */
export function figureWords(id: FigureId, say: Say, own?: OwnFigures): string {
  const { unit } = figures[id];
  const [low, high] = rangeOf(id, own);
  if (unit === 'm3') return spanWords([low, high], 'm3', say);
  if (unit !== 'ratio') return say.figure(id);
  const { label, factor } = figureField(id, say.units);
  const text = say.ends(say.number(low * factor), say.number(high * factor));
  return label === '%' ? `${text}%` : `${text} ${label}`;
}

/** A figure's own value as it would be typed. */
export const typedFigure = (id: FigureId, value: number, units: UnitSystem): string =>
  showNumber(value, {
    unit: 'plain',
    range: [-Infinity, Infinity],
    units,
    factor: figureField(id, units).factor,
  });

/** What the figures a plan rests on are called. */
export const planFigureNames: Readonly<Partial<Record<FigureId, string>>> = {
  'concrete.density': 'Density of concrete',
  'concrete.bulking': 'Room broken concrete takes',
  'skip.volume': 'Size of a skip',
  'rubble-bag.mass': 'Mass in one rubble bag',
  'bag.yield': 'Yield of one bag',
  'fill.waste': 'Waste of repair material',
  'wash.water': 'Water for washing',
  'dry.before-blasting': 'Drying before blasting, and before checks',
  'dry.before-coating': 'Drying before coating',
  'traffic.cars': 'Days before cars',
  'traffic.coated': 'Days before cars on a coat',
  'traffic.heavy': 'Days before heavy vehicles',
  'crew.usable': 'Share of the day a machine runs',
  'rate.break-out-least': 'Breaking out, least for a patch',
  'rate.break-out-light': 'Breaking out with a light hammer',
  'rate.blast-strip': 'Blasting along a crack or a border',
  'rate.place-mortar': 'Filling with repair mortar',
  'saw.water': 'Water of a saw',
  'skip.least': 'Least that is worth a skip',
  'patch.scattered-spots': 'Spots taken as scattered',
  'rate.grind-hand': 'Grinding by hand',
  'patch.scattered': 'Patches over hollow area, many spots',
  'patch.scattered-spot': 'Width of a usual hollow spot',
  'chase.width': 'Width opened along a chased crack',
  'chase.depth': 'Depth opened along a chased crack',
  'bar.spacing-usual': 'Spacing of bars nobody measured',
  'bar.cover-usual': 'Cover of bars nobody measured',
};
