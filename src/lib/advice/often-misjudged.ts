import type { SiteQuestion, ZoneQuestion } from '$lib/answers/questions';

export type Asked = SiteQuestion | ZoneQuestion;

/**
 * The questions a reader is likeliest to have misjudged, first.
 * Source: common practice, no published source: ears and scrapers mislead before eyes do.
 */
export const oftenMisjudged: readonly Asked[] = [
  'looseness',
  'depth',
  'contamination',
  'cracks',
  'steel',
  'texture',
  'barLoss',
  'makerProfile',
  'warnings',
  'finish',
  'freezeThaw',
  'salts',
  'element',
  'setting',
];
