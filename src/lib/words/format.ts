import { toFahrenheit, toUs, type Convertible, type UnitSystem } from '$lib/answers/units';
import { figures, rangeOf, valueOf, type FigureId, type OwnFigures } from '$shared/figures';
import type { Unit } from '$shared/types';
import { ownLanguage } from '$words/language';
import { areaDecimals, decimalsFor, feetAndInches, inchFraction, onRuler, roundest } from './round';
import type { Language } from './language-types';
import type { Formatter } from './types';
import { atNozzle, minutesIn, shown, shownOf, type ShownUnit } from './units';

const mmPerMetre = 1000;
const kgPerTonne = 1000;
/** Keeps a number and its unit on one line. */
const tie = '\u00A0';
/** Inches from which a length reads better in feet. */
const inchesInFeet = 36;
const poundsInTons = 2000;
const daysPerWeek = 7;

/** Making one is slow, using one is not: each is made once, when it is first needed. */
const made = new Map<string, unknown>();
function once<T>(key: string, make: () => T): T {
  let found = made.get(key) as T | undefined;
  if (found === undefined) made.set(key, (found = make()));
  return found;
}
const listsOf = (locale: string, type: 'conjunction' | 'disjunction') =>
  once(`${locale} ${type}`, () => new Intl.ListFormat(locale, { type }));
const numbersOf = (locale: string, digits: number) =>
  once(
    `${locale} ${digits}`,
    () => new Intl.NumberFormat(locale, { maximumFractionDigits: digits }),
  );
const unitsOf = (locale: string, unit: string, digits: number) =>
  once(
    `${locale} ${unit} ${digits}`,
    () =>
      new Intl.NumberFormat(locale, {
        style: 'unit',
        unit,
        // A sign is all that a hundredth needs.
        unitDisplay: unit === 'percent' ? 'short' : 'long',
        maximumFractionDigits: digits,
      }),
  );

/**
 * A formatter for one reader.
 * @param units the system of units the reader sees
 * @param own the reader's own values, laid over the figures
 * @param language how numbers and lists are written
 */
export function formatter(
  units: UnitSystem,
  own?: OwnFigures,
  language: Language = ownLanguage,
): Formatter {
  const us = units === 'us';
  const { locale, to, fractions, units: labels } = language;

  const number = (value: number, digits = decimalsFor(value)): string =>
    numbersOf(locale, digits).format(value);
  const withUnit = (value: number, unit: string, digits = 1): string =>
    unitsOf(locale, unit, digits).format(value).replace(' ', tie);
  const withLabel = (text: string, label: string) =>
    label ? `${text}${tie}${label.replace(/^(\S\S) (?=\S+$)/, `$1${tie}`)}` : text;
  /** One number, or the two ends of a range. */
  const ends = (low: string, high: string) => (low === high ? low : `${low} ${to} ${high}`);
  const plain = (unit: ShownUnit, value: number): string => {
    const { label, factor } = shown[unit][units];
    return withLabel(number(value * factor), label);
  };

  const inches = (value: number): string => {
    const parts = inchFraction(value);
    if (!parts) return number(value, 3);
    const { whole, numerator, denominator } = parts;
    if (!numerator) return number(whole);
    const rest = `${String(numerator)}/${String(denominator)}`;
    return whole ? `${number(whole)}${tie}${rest}` : rest;
  };
  /** "3 ft 7 1/4 in": what somebody can find on a tape. */
  const onTape = (value: number): string => {
    const { feet, ...rest } = feetAndInches(value);
    const less = rest.whole + rest.numerator / rest.denominator;
    if (!feet) return `${inches(less)}${tie}${labels.inch}`;
    return `${number(feet)}${tie}${labels.foot}${less ? `${tie}${inches(less)}${tie}${labels.inch}` : ''}`;
  };
  const lengths = (low: number, high: number): string => {
    if (us && toUs('mm', high) >= inchesInFeet)
      return ends(onTape(toUs('mm', low)), onTape(toUs('mm', high)));
    if (us) return `${ends(inches(toUs('mm', low)), inches(toUs('mm', high)))}${tie}${labels.inch}`;
    if (!us && high < mmPerMetre) return `${ends(number(low), number(high))}${tie}mm`;
    return `${ends(number(low / mmPerMetre), number(high / mmPerMetre))}${tie}m`;
  };
  const degrees = (low: number, high: number) => {
    // Of a heat gun nobody reads single degrees Fahrenheit.
    const hot = (value: number) => (value >= 200 ? Math.round(value / 10) * 10 : value);
    const turn = (value: number) => number(us ? hot(toFahrenheit(value)) : value, 0);
    return `${ends(turn(low), turn(high))}${tie}°${us ? 'F' : 'C'}`;
  };
  const percents = (low: number, high: number) =>
    `${low === high ? '' : ends(number(low), '')}${withUnit(high, 'percent', decimalsFor(high))}`;

  const degreesApart = (value: number) =>
    number(Math.abs(value) < 1 ? value : Math.round(value), Math.abs(value) < 1 ? 1 : 0);

  /** The units that are not a number and a label. */
  const special: Record<Exclude<Unit, ShownUnit>, (low: number, high: number) => string> = {
    mm: lengths,
    C: degrees,
    percent: percents,
    ratio: (low, high) => percents(low * 100, high * 100),
    CSP: (low, high) => `CSP${tie}${ends(number(low), number(high))}`,
    pH: (low, high) => `pH${tie}${ends(number(low), number(high))}`,
    degree: (low, high) => `${ends(number(low), number(high))}°`,
    h: (low, high) =>
      low === high ? withUnit(low, 'hour') : ends(number(low), withUnit(high, 'hour')),
    min: (low, high) =>
      low === high ? withUnit(low, 'minute') : ends(number(low), withUnit(high, 'minute')),
    d: (low, high) =>
      low === high ? withUnit(low, 'day') : ends(number(low), withUnit(high, 'day')),
  };
  const speak = (
    unit: Unit,
    low: number,
    high: number,
    as = unit in shown ? shown[unit as ShownUnit] : null,
  ): string => {
    if (!as) return special[unit as Exclude<Unit, ShownUnit>](low, high);
    const { label, factor } = as[units];
    // A thermometer is read to the degree: 3 °C apart is 5 °F, not 5.5.
    if (us && unit === 'K')
      return withLabel(ends(degreesApart(low * factor), degreesApart(high * factor)), label);
    const turn = (value: number) =>
      number(
        factor === 1 || !us ? value * factor : Number(roundest(value * factor).toPrecision(12)),
      );
    return withLabel(ends(turn(low), turn(high)), label);
  };

  /** Both ends of a figure as they are told: the reader's own value stays what they typed. */
  const told = (id: FigureId): readonly [number, number] => {
    const [low, high] = rangeOf(id, own);
    const ruler = !us && figures[id].unit === 'mm' && own?.[id] === undefined;
    return ruler ? [onRuler(low), onRuler(high)] : [low, high];
  };

  const speakAs = (id: FigureId, low: number, high: number) => {
    const { unit } = figures[id];
    return unit === 'MPa' ? speak(unit, low, high, shownOf(id)) : speak(unit, low, high);
  };

  return {
    units,
    number,
    lengths,
    length: (value) => lengths(value, value),
    distance: (value) => (us ? onTape(toUs('mm', value * mmPerMetre)) : plain('m', value)),
    area: (value) => {
      const { label, factor } = shown.m2[units];
      if (!us) return plain('m2', value);
      return withLabel(number(value * factor, areaDecimals(value * factor)), label);
    },
    rain: (value) => (us ? `${number(toUs('mm', value))}${tie}in` : lengths(value, value)),
    volume: (value) => plain('m3', value),
    mass: (value) =>
      (us ? toUs('kg', value) >= poundsInTons : value >= kgPerTonne)
        ? plain('t', value / kgPerTonne)
        : plain('kg', value),
    stress: (value) => plain('MPa', value),
    pressure: (value) => speak('MPa', value, value, atNozzle),
    temperature: (value) => degrees(value, value),
    csp: (range) => {
      const [low, high] = typeof range === 'number' ? [range, range] : range;
      return special.CSP(low, high);
    },
    percent: (value) => percents(Math.round(value), Math.round(value)),
    share: (ratio) => percents(Math.round(ratio * 100), Math.round(ratio * 100)),
    fraction: (ratio) =>
      fractions.find((each) => Math.abs(each.ratio - ratio) < 0.001)?.word ??
      percents(Math.round(ratio * 100), Math.round(ratio * 100)),
    hours: (value) =>
      value < 1 ? withUnit(Math.round(value * minutesIn.hour), 'minute') : withUnit(value, 'hour'),
    duration: (minutes) => {
      // Each unit is left for the next where two of the next would do.
      if (minutes < 2 * minutesIn.hour && minutes !== minutesIn.hour)
        return withUnit(Math.round(minutes), 'minute');
      if (minutes < 2 * minutesIn.day)
        return withUnit(Math.round(minutes / minutesIn.hour), 'hour');
      const days = Math.round(minutes / minutesIn.day);
      return days < 2 * daysPerWeek
        ? withUnit(days, 'day')
        : withUnit(Math.round(days / daysPerWeek), 'week');
    },
    ends,
    list: (items) => listsOf(locale, 'conjunction').format(items),
    either: (items) => listsOf(locale, 'disjunction').format(items),
    figure: (id: FigureId) => speakAs(id, ...told(id)),
    edge: (value) => lengths(us ? value : onRuler(value), us ? value : onRuler(value)),
    end: (id, end) => {
      const [low, high] = told(id);
      const middle = own?.[id] ?? figures[id].typical ?? (low + high) / 2;
      const one = { low, typical: middle, high }[end];
      return speakAs(id, one, one);
    },
    between: (unit, low, high) => speak(unit, low, high),
    span: (low, high) => speakAs(low, told(low)[0], told(high)[1]),
    valueOf: (id) => valueOf(id, own),
    unitOf: (kind: Convertible) => {
      if (kind === 'mm') return us ? labels.inch : 'mm';
      // Volumes are typed in what they are shown in.
      return shown[kind][units].label;
    },
    typed: (kind: Convertible, value: number) =>
      number(kind === 'mm' ? (us ? toUs('mm', value) : value) : value * shown[kind][units].factor),
  };
}
