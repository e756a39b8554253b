import type { FreezeThaw } from '$lib/answers/questions';
import type { CalendarDate, MonthDay } from './calendar';

/** One day of weather. Null where nobody measured, or the value could not be used. */
export interface Day extends CalendarDate {
  /** Days since 1 January 1970. */
  readonly at: number;
  /** Air temperature, C */
  readonly min: number | null;
  readonly max: number | null;
  /** Rain and melted snow, mm of water */
  readonly rain: number | null;
  /** Fresh snow, mm of depth */
  readonly snow: number | null;
}

/** How often the surface passes through freezing, as asked or as counted. */
export const frequencies = ['never', 'few', 'some', 'many'] as const;
export type Frequency = (typeof frequencies)[number];

/** How wet the surface is when it freezes. */
export const wetnesses = ['dry', 'drains', 'stays-wet'] as const;
export type Wetness = (typeof wetnesses)[number];

export type WeatheringClass = 'negligible' | 'moderate' | 'severe';

/** Exposure classes of ACI 318-19; and of EN 206, where `none` stands for no XF class. */
export type AmericanClass = 'F0' | 'F1' | 'F2' | 'F3';
export type EuropeanClass = 'none' | 'XF1' | 'XF2' | 'XF3' | 'XF4';

/** Twelve months of one station, counted from the first of `start` in `year`. */
export interface YearCount {
  readonly year: number;
  /** Days whose minimum is at or below freezing. */
  readonly frost: number;
  /** Days whose maximum is at or below freezing. */
  readonly ice: number;
  /** Days counted one by one: minimum at or below freezing, maximum above it. */
  readonly cycles: number;
  /** Days without both temperatures. */
  readonly missing: number;
  /** Whether it counts; a year with too many days missing does not. */
  readonly kept: boolean;
  /** Rain between the usual first and last frost, mm; null where too many days lack it. */
  readonly winterRain: number | null;
}

/** Mean days a month over the years kept. */
export interface MonthCount {
  /** 1 to 12 */
  readonly month: number;
  readonly frost: number;
  readonly ice: number;
  readonly cycles: number;
  /** Never warm enough for cementitious repair. */
  readonly coldAllDay: number;
  /** Warm enough by day, too cold by night. */
  readonly coldAtNight: number;
  /** Never warm enough to seal a crack. */
  readonly coldToSeal: number;
}

/** The usual frosts: the middle of all winters in the file. */
export interface Frosts {
  readonly first: MonthDay | null;
  readonly last: MonthDay | null;
  /** Winters whose first frost, and whose last, is known. */
  readonly winters: number;
}

/** Everything read from one station's days. Means are over the years kept. */
export interface Weather {
  readonly from: CalendarDate;
  readonly to: CalendarDate;
  /** Whether the seasons are those south of the equator. */
  readonly south: boolean;
  /** The month in which its years begin: 1, unless the file holds no whole calendar year. */
  readonly yearStarts: number;
  readonly years: readonly YearCount[];
  readonly months: readonly MonthCount[];
  /** Freezing-cycle days a year, counted one by one and as a difference of counts; null without a whole year. */
  readonly cycles: { readonly direct: number; readonly byDifference: number } | null;
  readonly frosts: Frosts;
  /** mm; null where the file has no precipitation, or no year with enough of it */
  readonly winterRain: number | null;
  /** Whether snow could be taken off; where not, the winter rainfall is an upper limit. */
  readonly snowKnown: boolean;
  /** Freezing-cycle days times inches of winter rain. */
  readonly index: number | null;
  readonly weathering: WeatheringClass | null;
  readonly frequency: Frequency | null;
}

/** What the reader's concrete gets out of it: the answer to the question, with what it rests on. */
export interface FreezeThawReading {
  readonly answer: FreezeThaw;
  readonly frequency: Frequency;
  readonly wetness: Wetness;
  readonly american: AmericanClass;
  readonly european: EuropeanClass;
}
