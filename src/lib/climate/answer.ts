import type { FreezeThaw, Salts } from '$lib/answers/questions';
import { valueOf, type OwnFigures } from '$shared/figures';
import {
  frequencies,
  wetnesses,
  type AmericanClass,
  type EuropeanClass,
  type FreezeThawReading,
  type Frequency,
  type WeatheringClass,
  type Wetness,
} from './types';

/**
 * The answer by how often it freezes and how wet it is then. Water does the damage, so dry concrete
 * stands one lower and concrete that stays wet never lower than concrete that drains.
 * Source: common practice, no published source; the classes of the weathering index are its columns.
 */
const answers: Readonly<Record<Frequency, Readonly<Record<Wetness, FreezeThaw>>>> = {
  never: { dry: 'rare', drains: 'rare', 'stays-wet': 'rare' },
  few: { dry: 'rare', drains: 'rare', 'stays-wet': 'some' },
  some: { dry: 'rare', drains: 'some', 'stays-wet': 'some' },
  many: { dry: 'some', drains: 'often', 'stays-wet': 'often' },
};

export const freezeThawAnswer = (frequency: Frequency, wetness: Wetness): FreezeThaw =>
  answers[frequency][wetness];

/**
 * Exposure class of ACI 318-19. Any freezing at all is F1 at least; salts count where water is frequent.
 * Sea water is taken as de-icing salt is: it does the same to a wet surface that freezes.
 */
export function americanClass(frequency: Frequency, wetness: Wetness, salts: Salts): AmericanClass {
  if (frequency === 'never') return 'F0';
  if (wetness !== 'stays-wet') return 'F1';
  return salts === 'none' ? 'F2' : 'F3';
}

/** Exposure class of EN 206, which speaks of concrete that is wet while it freezes. */
export function europeanClass(frequency: Frequency, wetness: Wetness, salts: Salts): EuropeanClass {
  if (frequency === 'never' || wetness === 'dry') return 'none';
  if (wetness === 'drains') return salts === 'none' ? 'XF1' : 'XF2';
  return salts === 'none' ? 'XF3' : 'XF4';
}

/** All that two settled answers and the salts give. */
export const readFreezeThaw = (
  frequency: Frequency,
  wetness: Wetness,
  salts: Salts,
): FreezeThawReading => ({
  answer: freezeThawAnswer(frequency, wetness),
  frequency,
  wetness,
  american: americanClass(frequency, wetness, salts),
  european: europeanClass(frequency, wetness, salts),
});

/** What two answers give when some of it is not sure: every reading still possible, without repeats. */
export function possibleReadings(
  frequency: readonly Frequency[],
  wetness: readonly Wetness[],
  salts: readonly Salts[],
): readonly FreezeThawReading[] {
  const often = frequencies.filter((one) => frequency.includes(one));
  const wet = wetnesses.filter((one) => wetness.includes(one));
  return often.flatMap((f) => wet.flatMap((w) => salts.map((s) => readFreezeThaw(f, w, s))));
}

/** How often it freezes, from counted days alone. */
export function frequencyOfDays(cycles: number, own?: OwnFigures): Frequency {
  if (cycles < valueOf('freeze.days.none', own)) return 'never';
  if (cycles < valueOf('freeze.days.some', own)) return 'few';
  return cycles < valueOf('freeze.days.many', own) ? 'some' : 'many';
}

const ofClass: Readonly<Record<WeatheringClass, Frequency>> = {
  negligible: 'few',
  moderate: 'some',
  severe: 'many',
};

/** How hard it freezes, from counted days and the class of the index, which knows the rain as well. */
export const frequencyOfWeather = (
  cycles: number,
  weathering: WeatheringClass | null,
  own?: OwnFigures,
): Frequency =>
  weathering === null || cycles < valueOf('freeze.days.none', own)
    ? frequencyOfDays(cycles, own)
    : ofClass[weathering];
