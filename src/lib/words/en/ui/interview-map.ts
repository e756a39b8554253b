/** What stands on and round the map of the interview. */
export const mapWords = {
  title: 'How the interview asks',
  description:
    'Every question of the interview in order, and when it is skipped. Drawn from the interview itself.',
  lead: 'The interview asks about the site once, and then about each zone. It leaves out every question whose answer could no longer change the advice.',
  how: 'This map is drawn from the interview itself. Follow it down. A line at the side shows a jump, with the reason for it.',
  any: 'You can go back to any question. What then counts again is asked next. “Not sure” is always an answer, and it never makes the interview skip a question that could matter.',
  drawing: 'Map of the interview: the questions from top to bottom, with the jumps beside them',
  start: 'Start',
  next: 'The first question that can matter and has no answer yet',
  site: 'The site',
  zone: 'The zone',
  done: 'Advice',
  list: 'The same in words',
  goes: (name: string) => `Then: ${name}.`,
  /** A question that stands earlier in the list: this answer may show that it counts after all. */
  back: (name: string) => `Or back to ${name}, where this answer makes it count after all.`,
  jumps: (why: string, to: string, over: string) =>
    `${why} Then it goes on to ${to}. Not asked: ${over}.`,
  open: 'Open the question',
  about: 'What it means',
  printed: (version: string, day: string) => `Drawn from version ${version} on ${day}.`,
} as const;
