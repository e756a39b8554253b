/** The page with the advice for a zone. */
export const advicePageWords = {
  title: 'Advice',
  waiting: 'Fetching your answers from this device.',
  noScript:
    'Working out the advice is done in your own browser, and needs JavaScript, which is switched off.',
} as const;
