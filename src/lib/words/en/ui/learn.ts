/** The pages of the library beside its explainers, by address under `/learn/`. */
export const learnNav = {
  label: 'Learn',
  all: 'All explainers',
  pages: {
    'practice/': 'Practice',
    'chart/': 'Field chart',
    'interview-map/': 'How it asks',
    'glossary/': 'Glossary',
    'sources/': 'Sources',
    'search/': 'Search',
  },
  weather: 'Frost from weather records',
} as const;
