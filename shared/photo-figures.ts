import photo from './figures/photo.json';
import type { FigureNumbers } from './types';

type PhotoFigureId = keyof typeof photo;

/**
 * Figures of measuring on a photo, by id, for the one page that measures: what every page carries of
 * `figures.ts` comes to a browser without them (`facts-for-pages.js`).
 */
const photoFigures = photo as Readonly<Record<string, unknown>> as Readonly<
  Record<PhotoFigureId, FigureNumbers>
>;

/** A figure that is one number, in its unit. */
export function photoValue(id: PhotoFigureId): number {
  const { value } = photoFigures[id];
  if (value === undefined) throw new Error(`${id} is a range`);
  return value;
}

/** What a taped distance is taken for, mm. */
export const tapeRange = photoFigures['limit.photo-tape'].range as readonly [number, number];
