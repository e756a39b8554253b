import type { Language } from '$lib/words/language-types';

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
  times: (many) => `${many} times`,
  longer: 1,
  units: {
    inch: 'in',
    foot: 'ft',
    squareFoot: 'sq ft',
    cubicFoot: 'cu ft',
    cubicYard: 'cu yd',
    pound: 'lb',
    usTon: 'US tons',
    mile: 'miles',
    gallon: 'gal',
    gallonsPerMinute: 'gpm',
    cubicFeetPerMinute: 'cfm',
    years: 'years',
    points: 'points',
    per: (one, other) => `${one} per ${other}`,
    tonneAndKm: 'tonne and km',
    tonAndMile: 'US ton and mile',
    ofWater: (unit) => `${unit} of water`,
  },
};
