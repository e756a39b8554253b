/** What to do with either result of the sample of an old coating. */
export const coatingResult: readonly string[] = [
  'No lead or asbestos found: take the tick off “Lead or asbestos”, and keep the report.',
  'Found: leave the tick. Work waits until a firm licensed for it has taken the coating off and cleared the place. Then take the tick off.',
];
