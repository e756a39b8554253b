import type { HazardId } from '$shared/methods';

/** Hazards under their signs, where there is room for a word or two. */
export const hazardShort: Readonly<Record<HazardId, string>> = {
  silica: 'Silica dust',
  noise: 'Noise',
  vibration: 'Vibration',
  eyes: 'Flying pieces',
  'water-injection': 'Water jet',
  'carbon-monoxide': 'Fumes',
  electric: 'Shock',
  slips: 'Slips',
  lifting: 'Lifting',
  chemicals: 'Chemicals',
  'lead-asbestos': 'Lead, asbestos',
  structure: 'Collapse',
  overhead: 'Falling pieces',
  falls: 'Falls',
  'wash-water': 'Slurry',
  weather: 'Frost, heat',
};
