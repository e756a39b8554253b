/** The three readers, as they name themselves. */
export const readerNames = {
  work: 'I work on it',
  own: 'I own it',
  explain: 'I explain it',
} as const;
