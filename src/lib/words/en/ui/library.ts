import type { Group } from '$lib/learn/kinds';

/** The pages to learn from, beside the explainers themselves. */
export const libraryWords = {
  learn: 'Learn',
  title: 'Learn: preparing damaged concrete',
  description:
    'Plain explanations of every method, test, danger and word of the trade, with their sources.',
  doors: {
    practice: { name: 'Practice', line: 'Decide on invented cases.' },
    chart: { name: 'Field chart', line: 'Two taps, or one page to print.' },
  },
  groups: 'Groups of explainers',
  groupTitles: {
    start: 'Start here',
    method: 'Ways to take concrete off',
    question: 'Reading the damage',
    test: 'Small tests on the spot',
    step: 'The work around the main method',
    steel: 'Cracks and steel',
    hazard: 'What can hurt you',
    check: 'Is it ready?',
    finish: 'What goes on next',
    stop: 'Reasons to stop',
  } satisfies Record<Group, string>,
  /** The heading under which the second depth of a page stands. */
  tradeDetail: 'Trade detail',
  pages: (count: number) => `${count} pages`,
  readers: {
    works: 'people who do the work',
    owns: 'owners',
    explains: 'people who explain it',
  },
  audience: (readers: string) => `For ${readers}.`,
  note: (number: number, basis: string) => `Note ${number}: ${basis}`,
  figures: 'Figures on this page',
  sources: 'Sources',
  noSources: 'Common practice of the trade. No published source stands behind this page.',
  related: 'Read on',
  reviewed: (day: string) => `Last reviewed ${day}.`,
  more: (title: string) => `Read more: ${title}`,
  glossary: {
    title: 'Glossary',
    description: 'Every trade term used on this site, in plain words.',
    lead: 'Every term of the trade that this site uses, in plain words.',
  },
  sourcesPage: {
    description:
      'Every published source of this site, and every figure with how far it can be trusted.',
    lead: 'Every number on this site says where it comes from. This page lists each source with the figures that lean on it, and then the figures that have no source.',
    trust: 'How far a figure can be trusted',
    namedIn: 'Named in:',
    none: 'Figures without a published source',
    noneLine: 'Common practice, memory, or arithmetic. Use your own values where you have them.',
    kinds: {
      standard: 'standard',
      regulation: 'regulation',
      guide: 'guide',
      research: 'research',
      manual: 'manual',
      trade: 'trade',
      data: 'data',
    },
    looked: 'Looked for',
    otherWork: { 'pull-off': 'pull-off test', sounding: 'sounding' },
    aspects: {
      reach: 'Reach',
      profile: 'Profile left',
      dust: 'Dust',
      noise: 'Noise',
      vibration: 'Vibration',
      rate: 'Rate',
    },
    lookedLine:
      'For each method: what was found in print, and where it was looked for when that is not enough. Ask the maker, or measure.',
  },
  search: {
    title: 'Search',
    noScript: 'Searching needs JavaScript. These are complete without it:',
    list: 'the list of explainers',
    glossary: 'the glossary',
    label: 'What are you looking for?',
    failed: 'The search index could not be loaded. This is complete:',
    such: 'Moss, cost',
    go: 'Search',
    type: 'Type a word, such as “hollow” or “dust”.',
    loading: 'Loading the index.',
    nothing: (words: string) => `Nothing found for “${words}”. Try one shorter word.`,
    rest: (count: number) => (count === 1 ? 'Show 1 more' : `Show ${count} more`),
    found: (count: number) =>
      count === 1 ? '1 page or term found.' : `${count} pages and terms found.`,
  },
} as const;
