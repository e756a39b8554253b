import { outcomeNames } from './outcomes';

/** The page on which reading a square is practised. */
export const patchPracticeWords = {
  title: 'Practise: read a square',
  description:
    'Invented squares that were tried: say what comes next, and see what the rules of this site say.',
  lead: 'A square has been tried. Read it, and say what comes next. Every place and finding is invented.',
  link: 'Practise reading a square',
  due: (count: number) => (count ? `(${String(count)} come back)` : ''),
  tried: (tried: number, of: number) => `${String(tried)} of ${String(of)} read`,
  back: 'Practice cases',
  set: 'Set',
  before: 'The square before',
  wanted: (damage: string, profile: string) =>
    `To come off: ${damage}. Roughness asked for: ${profile}.`,
  depths: 'Depths',
  chip: 'Chip',
  ask: 'What comes next?',
  right: 'So it is',
  wrong: 'Not this time',
  yours: (picked: string) => `You picked: ${picked}.`,
  answer: (answer: string) => `The rules say: ${answer}.`,
  senior: 'Somebody long in the trade',
  next: 'The next square',
  choices: outcomeNames,
} as const;
