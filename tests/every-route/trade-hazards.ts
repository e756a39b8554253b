import type { TradeSite, TradeZone } from './trade-types';

/** The hazards of a piece of work at a place, written from the trade and apart from the program. */

const dusty = [
  'grind',
  'abrasive-blast',
  'scarify',
  'shotblast',
  'needle-scale',
  'break-out',
  'saw-cut',
  'chase-crack',
  'route-crack',
  'free-bar',
  'edge-work',
  'blast-clean',
  'clean-bar',
];
const steadyHanded = ['abrasive-blast'];
const wet = ['pressure-wash', 'final-wash', 'water-jet'];
const engines = [
  'pressure-wash',
  'scarify',
  'shotblast',
  'abrasive-blast',
  'break-out',
  'saw-cut',
  'blast-clean',
  'final-wash',
];
const carries = ['suspended-slab', 'suspended-steps', 'wall', 'soffit'];

/**
 * What a step has to warn of. Common practice, no source, except the engines: no combustion engine
 * indoors nor in partly enclosed places (NIOSH 96-118).
 */
export function expectedHazards(
  step: string,
  site: TradeSite & { readonly setting: 'indoors' | 'sheltered' | 'open' },
  zone: TradeZone,
): readonly string[] {
  const hazards: string[] = [];
  if (dusty.includes(step)) {
    hazards.push('silica', 'noise', 'eyes');
    if (!steadyHanded.includes(step)) hazards.push('vibration');
    if (site.element === 'soffit' || site.element === 'wall') hazards.push('overhead');
    if (zone.contamination.some((each) => each.endsWith('-coating'))) hazards.push('lead-asbestos');
  }
  if (wet.includes(step)) {
    hazards.push('water-injection', 'slips', 'electric', 'eyes', 'wash-water');
    if (site.setting !== 'indoors') hazards.push('weather');
  }
  if (engines.includes(step) && site.setting !== 'open') hazards.push('carbon-monoxide');
  if (step === 'degrease') hazards.push('chemicals', 'wash-water');
  if (step === 'break-out' && carries.includes(site.element)) hazards.push('structure');
  // Walls, soffits, steps and suspended edges: whatever is done there, somebody can fall.
  if (site.element !== 'slab') hazards.push('falls');
  return hazards;
}
