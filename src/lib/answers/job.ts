import type { OwnFigures } from '$shared/figures';
import type { SiteAnswers, ZoneAnswers } from './answers';
import type { CrewDay, ToolLevels } from './crew-day';
import type { DayLog } from './day-log';
import type { ReadinessRecord } from './readiness-record';
import type { Survey } from './survey';
import type { PatchTried } from './trial-record';

/** A rectangle on the surface, mm: x and y of its lower left corner from the reader's own corner. */
export interface Rectangle {
  readonly x: number;
  readonly y: number;
  readonly length: number;
  readonly width: number;
}

/** A part of the surface with one condition. */
export interface Zone {
  /** Short, unique in its job, stable for the job's life. */
  readonly id: string;
  readonly name: string;
  readonly answers: ZoneAnswers;
  /** Damaged spots as rectangles on the surface, mm; absent where only the area is known. */
  readonly patches?: readonly Rectangle[];
  /** What was found when the prepared surface was checked; absent while nothing was. */
  readonly readiness?: ReadinessRecord;
  /** Square metres tried before the work, oldest first; absent while none was. */
  readonly trial?: readonly PatchTried[];
  /** What the crew told of its steps here; absent before work began. */
  readonly log?: DayLog;
}

export const weekdays = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'] as const;
export type Weekday = (typeof weekdays)[number];

/** When the work begins, and when nobody works. Dates as in ISO 8601, "2026-05-04". */
export interface WorkCalendar {
  /** Day 1; absent while the reader has not said. */
  readonly start?: string;
  /** Days of every week on which nobody works; they count once there is a start. */
  readonly weekly?: readonly Weekday[];
  /** Single days on which nobody works. */
  readonly off?: readonly string[];
}

/** The reader's own prices, in whatever money they think in; there are no others. */
export interface Prices {
  /** One person, an hour. */
  readonly perHour?: number;
  /** A bag of repair material. */
  readonly perBag?: number;
  /** Concrete delivered, a m3. */
  readonly perConcrete?: number;
  /** Debris taken away, a tonne. */
  readonly perTonne?: number;
}

/** A site with its zones. Holds only what the reader said, never anything derived. */
export interface Job {
  readonly name: string;
  readonly site: SiteAnswers;
  readonly zones: readonly Zone[];
  /** Ids of the machines the crew has; absent when the reader has not said. */
  readonly machines?: readonly string[];
  /** People on the crew; absent when the reader has not said. */
  readonly crew?: number;
  /** Hours they work in a day; absent when the reader has not said. */
  readonly hoursPerDay?: number;
  /** Start and days off; absent when the reader has not said. */
  readonly calendar?: WorkCalendar;
  /** What things cost where the reader is; absent where they have not said. */
  readonly prices?: Prices;
  /** The whole surface, m2; absent when the reader has not said. */
  readonly totalArea?: number;
  /** Id of the zone that is whatever the others leave of the whole. Its area follows theirs. */
  readonly rest?: string;
  /** Figures of the trade the reader has put a value of their own over. */
  readonly own?: OwnFigures;
  /** What the reader knows of their own tools. */
  readonly toolLevels?: ToolLevels;
  /** Choices made for the crew's day. */
  readonly crewDay?: CrewDay;
  /** The surface as drawn, with what was found on it; absent while nothing is drawn. */
  readonly survey?: Survey;
  /** What the crew told of the steps that are done once for the job. */
  readonly log?: DayLog;
}
