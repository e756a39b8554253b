import climate from './sources/climate.json';
import covering from './sources/covering.json';
import pages from './sources/pages.json';
import quantities from './sources/quantities.json';
import readiness from './sources/readiness.json';
import safety from './sources/safety.json';
import surface from './sources/surface.json';
import type { Source } from './types';

export const sourceFiles = [surface, safety, readiness, climate, covering, quantities, pages];

const all = {
  ...surface,
  ...safety,
  ...readiness,
  ...climate,
  ...covering,
  ...quantities,
  ...pages,
};
export type SourceId = keyof typeof all;

/** Every published source the site leans on, by id. */
export const sources = all as Readonly<Record<string, unknown>> as Readonly<
  Record<SourceId, Source>
>;
