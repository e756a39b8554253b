/** The start page. */
export const homeWords = {
  title: 'What to do with damaged concrete before you repair it',
  lead: 'Most repairs that fail, fail at the surface under them. Answer a few questions about what is in front of you. You get the way to prepare it, the steps in order, what can hurt you, and how to tell that it is ready.',
  drawing:
    'Drawing of a slab cut through: broken concrete on top, and a line where sound concrete begins.',
  start: 'Start with your concrete',
  resume: 'Go on with your job',
  fresh: 'Start a new job',
  unnamed: 'Job without a name',
  vanished: 'That job is no longer here, or can no longer be read.',
  zones: (count: number) => (count === 1 ? '1 zone' : `${count} zones`),
  changed: (when: string) => `changed ${when}`,
  changedUnknown: 'nobody knows when it was changed',
  jobs: 'Jobs on this device',
  lookAfter: 'Your jobs: save, open, share or delete',
  open: 'Open',
  openOf: (name: string) => `Open: ${name}`,
  damaged: 'cannot be read',
  reader: {
    legend: 'How do you want to read it?',
    hint: 'The advice stays the same. What comes first changes.',
    work: { name: 'I work on it', hint: 'Steps, tools and how to stay unhurt first.' },
    own: { name: 'I own it', hint: 'Plain words, and what to leave to others.' },
    explain: { name: 'I explain it', hint: 'Reasons and evidence first.' },
  },
  gets: [
    {
      name: 'It asks, and shows you how to look',
      line: 'One question at a time, each with a drawing. “Not sure” is an answer.',
    },
    {
      name: 'It decides, with reasons',
      line: 'Why this way, why not each other one, and what would change it.',
    },
    {
      name: 'It says no',
      line: 'When concrete should not be repaired, or an engineer must look first, it tells you so.',
    },
  ],
  example: {
    picture:
      'A driveway seen from above: five places boxed for sawing, a crack, two zones, and the rest left alone.',
    name: 'It draws the job',
    line: 'What is sound, what comes off, where to saw. This driveway is invented.',
    open: 'Open an example',
  },
  learn: 'Read about methods, hazards and tests',
  free: 'Free, and no account. Nothing you enter leaves this device unless you share it.',
} as const;
