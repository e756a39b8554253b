/** What the plan and the records say of squares that were tried; the page about them has more words. */
export const triedWords = {
  passes: (passes: number) => (passes === 1 ? 'One pass' : `${String(passes)} passes in all`),
  triedHere: 'tried',
  /** What of the pace is learnt: the rate, the passes, or both. */
  learntOf: (rate: string, passes: string) =>
    rate && passes ? `${rate} a pass, ${passes}` : rate || passes,
  times: (passes: string) => `${passes} passes`,
  ownFigure: 'from your test square',
} as const;

/** "Ramp: 9 to 14 m²/h for shotblasting, from your test square." */
export const fromPatchLine = (zone: string, step: string, learnt: string): string =>
  `${zone}: ${learnt} for ${step}, from your test square.`;

/** What a record of readiness says of the patch. */
export const recordLine = (count: number, settings: string, outcome: string): string =>
  `${String(count)} ${count === 1 ? 'square' : 'squares'} tried; the last: ${settings}. ${outcome}.`;
export const recordTitle = 'Test square';
