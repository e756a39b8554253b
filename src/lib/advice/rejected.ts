import type { Rejection } from './types';

/** How a method that is not advised stands: it could do it too, would do more harm than needed, or is out. */
export const stands = ['could', 'harsher', 'out'] as const;
export type Stand = (typeof stands)[number];

const tooMuch: readonly Rejection['rule'][] = [
  'harsher-than-needed',
  'would-bruise-sound-concrete',
];

export function standOf({ wouldDo, rule }: Rejection): Stand {
  if (!wouldDo) return 'out';
  return tooMuch.includes(rule) ? 'harsher' : 'could';
}

/** How many methods stand how. */
export function countRejections(rejections: readonly Rejection[]): Readonly<Record<Stand, number>> {
  const counts = { could: 0, harsher: 0, out: 0 };
  for (const each of rejections) counts[standOf(each)] += 1;
  return counts;
}
