/** What to do with either result of the sample of an old coating. */
export const coatingResult: readonly string[] = [
  'No lead or asbestos found: answer that “Lead or asbestos” is not there, and keep the report.',
  'Found: answer that it is. Work waits until a firm licensed for it has taken the coating off and cleared the place. Then answer that it is not.',
];
