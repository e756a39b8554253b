import { clearBehindBar } from '$lib/advice/hole';
import { pastDamage } from '$lib/survey/patches';
import { rangeOf, valueOf, type OwnFigures } from '$shared/figures';
import {
  figureTerm,
  isKnown,
  product,
  times,
  typicalOf,
  type Amount,
  type Span,
  type Term,
} from './amount';
import { depthSpan, type ZoneWork } from './zone-work';

/**
 * Bars that have to be freed: by the metre, with the room behind and beside them.
 * Source: figures `bar.*`; how the metres follow from the spacing is arithmetic.
 */

const millimetres: Term = { what: 'unit', span: [0.001, 0.001], unit: 'ratio' };
const asked = (value: number | 'unknown' | undefined): value is number => typeof value === 'number';

/**
 * Metres of bar to free. Where nobody has measured: at the least one bar across the zone, usually
 * the bars of one direction, at the most of both.
 */
export function barsOf({ zone }: ZoneWork, own?: OwnFigures): Amount {
  const { barLength, barSpacing, area } = zone.answers;
  if (asked(barLength))
    return product('m', [{ what: 'bar-length', span: [barLength, barLength], unit: 'm' }]);
  if (!asked(area)) return { missing: ['barLength'], unit: 'm' };
  const apart: Pick<Term, 'span' | 'typical' | 'figure'> = asked(barSpacing)
    ? { span: [barSpacing, barSpacing] }
    : figureTerm('bar-length', 'bar.spacing-usual', own);
  const across = Math.sqrt(area);
  const [closest] = apart.span;
  const most = Math.max(across, (2 * area * 1000) / closest);
  const usual = Math.max(across, (area * 1000) / typicalOf(apart));
  return product('m', [
    {
      what: 'bar-length',
      span: [across, most],
      typical: usual,
      unit: 'm',
      ...(apart.figure && { figure: apart.figure }),
    },
  ]);
}

/** Diameter of the bars, mm. */
const diameter = ({ zone }: ZoneWork, own?: OwnFigures): Span =>
  asked(zone.answers.barDiameter)
    ? [zone.answers.barDiameter, zone.answers.barDiameter]
    : rangeOf('bar.unmeasured', own);

/** Bar with its clear space on both sides, mm. */
function room(work: ZoneWork, own?: OwnFigures): Span {
  const [thin, thick] = diameter(work, own);
  return [thin + 2 * clearBehindBar(0), thick + 2 * clearBehindBar(0)];
}

/** From the surface to behind the bar, mm. */
function behindBar(work: ZoneWork, own?: OwnFigures): Span {
  const { barCover } = work.zone.answers;
  const [least, most] = asked(barCover) ? [barCover, barCover] : rangeOf('bar.cover-usual', own);
  const [thin, thick] = diameter(work, own);
  return [least + thin + clearBehindBar(0), most + thick + clearBehindBar(0)];
}

/** The depth of a hole that is opened along the bars alone. */
export function holeTerm(work: ZoneWork, own?: OwnFigures): Term {
  const [low, high] = behindBar(work, own);
  return { what: 'bar-depth', span: [low / 1000, high / 1000], unit: 'm', figure: 'bar.clear' };
}

/** What is opened where only the bars are broken out: a strip along each, sawn past the rust on both sides. */
export function stripOf(
  work: ZoneWork,
  own?: OwnFigures,
): { readonly area: Amount; readonly perimeter: Amount } {
  const bars = barsOf(work, own);
  const [thin, thick] = diameter(work, own);
  const [near, far] = pastDamage(work.frost, own);
  const least = valueOf('patch.min-width', own);
  const width: Term = {
    what: 'bar-strip',
    span: [Math.max(thin + 2 * near, least), Math.max(thick + 2 * far, least)],
    unit: 'mm',
    figure: work.frost === 'often' ? 'patch.past-damage-frost' : 'patch.past-damage',
  };
  const { area } = work.zone.answers;
  const strip = times('m2', bars, width, millimetres);
  const both: Term = { what: 'both-sides', span: [2, 2], unit: 'ratio' };
  return {
    area: asked(area) ? atMost(strip, area) : strip,
    perimeter: times('m', bars, both),
  };
}

/** Strips that meet take no more than the zone. */
function atMost(amount: Amount, most: number): Amount {
  if (!isKnown(amount)) return amount;
  const [low, high] = amount.span;
  if (high <= most) return amount;
  return {
    ...amount,
    working: [],
    span: [Math.min(low, most), Math.min(high, most)],
    typical: Math.min(typicalOf(amount), most),
  };
}

/** What comes off behind and beside the bars below the hole that is broken out anyway. */
export function undercutOf(work: ZoneWork, own?: OwnFigures): Amount {
  const bars = barsOf(work, own);
  const [narrow, wide] = room(work, own);
  const [low, high] = behindBar(work, own);
  const damage = depthSpan(work) ?? [0, 0];
  const broken = work.breaks ? valueOf('patch.into-sound', own) / 1000 : 0;
  return times(
    'm3',
    bars,
    { what: 'bar-room', span: [narrow, wide], unit: 'mm', figure: 'bar.clear' },
    millimetres,
    {
      what: 'bar-depth',
      span: [
        Math.max(0, low / 1000 - damage[1] - broken),
        Math.max(0, high / 1000 - damage[0] - broken),
      ],
      unit: 'm',
      figure: 'bar.clear',
    },
  );
}
