import type { Drawing } from '$lib/drawing/mark';
import type { HazardId } from '$shared/methods';
import { breath, ears, eyes, hands } from './body';
import { chemicals, leadAsbestos, washWater, waterInjection } from './matter';
import { electric, falls, lifting, overhead, slips, structure, weather } from './place';
import { carbonMonoxide } from './air';

/** A sign for every hazard, on a sheet of 48 by 48: a missing one does not compile. */
export const hazardSigns: Readonly<Record<HazardId, () => Drawing>> = {
  silica: breath,
  noise: ears,
  vibration: hands,
  eyes,
  'water-injection': waterInjection,
  'carbon-monoxide': carbonMonoxide,
  electric,
  slips,
  lifting,
  chemicals,
  'lead-asbestos': leadAsbestos,
  structure,
  overhead,
  falls,
  'wash-water': washWater,
  weather,
};
