import type { QuestionId } from '$lib/answers/questions';

/** What each state of the machine asks for, for whoever reads the machine. Readers see `words/` instead. */
export const descriptions: Readonly<Record<QuestionId, string>> = {
  element: 'What the concrete is: decides which machines can stand on it.',
  setting: 'Under a roof or not: decides dust, engines and weather.',
  salts: 'Whether salt reaches it: decides what steel needs.',
  freezeThaw: 'How often it freezes wet: decides cracks and bruised skin.',
  thickness: 'How thick it is: decides when a repair goes full depth.',
  warnings: 'Signs that somebody else has to look first.',
  depth: 'How deep the damage goes: decides which methods reach.',
  looseness: 'How loose it is: decides which methods clear it.',
  contamination: 'What lies on it: decides what comes off first.',
  texture: 'How rough it is: decides whether a flat tool rides over it.',
  cracks: 'What the cracks are like: decides whether they are chased, routed or left.',
  crackLength: 'How long the cracks are: sizes the work.',
  steel: 'Whether steel shows: decides whether bars are freed.',
  barLoss: 'How much of a bar is gone: decides whether an engineer comes first.',
  barCover: 'How deep the bar lies: decides how deep the hole gets.',
  barDiameter: 'How thick the bar is: decides how deep the hole gets.',
  barSpacing: 'How far apart the bars are: sizes the freeing of bars.',
  barLength: 'How many metres of bar are to be freed: sizes the work.',
  finish: 'What goes on next: decides the profile.',
  makerProfile: 'The roughness the data sheet asks for: outranks the usual table.',
  makerMoisture: 'Damp or dry by the data sheet: decides the last wash and the checks.',
  area: 'How large the zone is: sizes the work.',
  borderLength: 'How much of the edge meets something upright: the strip a machine leaves.',
};
