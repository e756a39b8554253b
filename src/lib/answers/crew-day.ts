import type { UnitSystem } from './units';
import type { StepId } from '$shared/methods';
import type { ToolId } from '$shared/tools';
import type { Setting } from './questions';

/** What the reader knows of a tool of theirs: laid over the published levels, or put where there are none. */
export interface ToolLevel {
  /** At the operator's ear, dB(A). */
  readonly noise?: number;
  /** At the hand, m/s2. */
  readonly vibration?: number;
  /** Whether the vibration was measured at work; otherwise it is what the maker declares. */
  readonly measured?: boolean;
  /** Diameter of the wheel or disc, mm. */
  readonly wheel?: number;
}
export type ToolLevels = Readonly<Partial<Record<ToolId, ToolLevel>>>;

/** A task of a mix the reader puts together without a plan. */
export interface MixTask {
  readonly step: StepId;
  readonly tool: ToolId;
  /** Minutes with the tool running. */
  readonly minutes: number;
}

/** Whose rules are quoted first. Elsewhere the controls are the same and the reader's country has the word. */
export const regions = ['us', 'elsewhere'] as const;
export type Region = (typeof regions)[number];

/** Who runs the machines there is only one of: the same person, or everybody in equal turns. */
export const turnsIds = ['one-operator', 'equal'] as const;
export type Turns = (typeof turnsIds)[number];

/** Which hours the four of the table are held against. */
export const dustHoursIds = ['at-task', 'tool-running'] as const;
export type DustHours = (typeof dustHoursIds)[number];

/** What the reader chose for the crew's day. */
export interface CrewDay {
  readonly region?: Region;
  readonly turns?: Turns;
  /** Which hours the dust table counts; those at the task when not given, the stricter reading. */
  readonly dustHours?: DustHours;
  /** The tool of a step, where it is not the usual one. */
  readonly tools?: Readonly<Partial<Record<StepId, ToolId>>>;
  /** One person's day put together by hand. */
  readonly mix?: readonly MixTask[];
  /** Where that day is worked; open air when not given. */
  readonly mixSetting?: Setting;
}

/** Whose rules come first: as chosen, or as the reader's units have it. */
export const regionOf = (crewDay: CrewDay | undefined, units: UnitSystem): Region =>
  crewDay?.region ?? (units === 'us' ? 'us' : 'elsewhere');
