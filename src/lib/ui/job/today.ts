import { dayWords } from '$lib/words/by-language';

/** Today as it stands on a sheet of paper, and as it stands in a table. */
export const today = () => {
  const now = new Date();
  return {
    long: dayWords(now),
    iso: `${now.getFullYear()}-${String(now.getMonth() + 1).padStart(2, '0')}-${String(now.getDate()).padStart(2, '0')}`,
  };
};
