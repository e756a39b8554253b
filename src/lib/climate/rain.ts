import { toUs } from '$lib/answers/units';
import { valueOf, type OwnFigures } from '$shared/figures';
import type { WeatheringClass } from './types';

/**
 * Rain in a period: all precipitation less a tenth of the depth of fresh snow, never below nothing.
 * @param precipitation mm of water
 * @param snow mm of depth
 * @returns mm
 */
export const rainWithoutSnow = (precipitation: number, snow: number, own?: OwnFigures): number =>
  Math.max(0, precipitation - snow * valueOf('snow.water', own));

/**
 * The weathering index of ASTM C62: freezing-cycle days a year times inches of winter rain.
 * @param cycles days a year
 * @param winterRain mm a year
 */
export const weatheringIndex = (cycles: number, winterRain: number): number =>
  cycles * toUs('mm', winterRain);

/** Below 50 negligible, from 500 severe, moderate between. */
export function weatheringClass(index: number, own?: OwnFigures): WeatheringClass {
  if (index < valueOf('weathering.moderate', own)) return 'negligible';
  return index < valueOf('weathering.severe', own) ? 'moderate' : 'severe';
}
