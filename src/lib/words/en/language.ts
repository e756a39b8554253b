import type { Language } from '$lib/words/types';

/** English, spelled the British way; its lists carry no comma before "and". */
export const ownLanguage: Language = {
  locale: 'en-GB',
  to: 'to',
  fractions: [
    { ratio: 1 / 4, word: 'a quarter' },
    { ratio: 1 / 3, word: 'a third' },
    { ratio: 1 / 2, word: 'half' },
    { ratio: 2 / 3, word: 'two thirds' },
    { ratio: 3 / 4, word: 'three quarters' },
  ],
};
