import type { Element } from './questions';

const carries = {
  slab: false,
  steps: false,
  'suspended-steps': true,
  'suspended-slab': true,
  wall: true,
  soffit: true,
} as const;

/** Whether concrete overhead, or with air or a room below it, or holding something up. */
export const carriesLoad = (element: Element): boolean => carries[element];

/** What somebody could stand under. */
export const hasAirBelow = (element: Element): boolean =>
  element === 'soffit' || element === 'suspended-slab' || element === 'suspended-steps';
