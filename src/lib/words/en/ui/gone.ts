/** Where an address names what is not there, or something would be lost. */
export const goneWords = {
  zone: (id: string) => `Zone “${id}” is not in this job`,
  zoneLine:
    'It may have been deleted, here or in another tab, or the address belongs to another job. Nothing has been written. These zones are here:',
  toJob: 'To the zones of the job',
  /** Before what was ticked. */
  typed: 'What you had ticked or typed here',
  typedLine: 'It is written nowhere. Copy it, if you still need it.',
  copy: 'Copy it',
  copied: 'Copied.',
  byHand: 'It is marked. Copy it with your browser.',
  drop: 'Let it go',
  notAsked: 'This question is not asked here:',
  onward: 'Continue with the questions',
  toAdvice: 'See the advice',
  otherJob: (name: string) =>
    `Another job is open now${name ? `: ${name}` : ''}. What you ticked was for the one before, and is not written into this one.`,
  changed:
    'Another tab has changed what this answer is about. What you ticked here is not given yet.',
  keepMine: 'Keep what I ticked',
  takeTheirs: 'Take the other tab’s',
  day: (day: string) => `The plan has no day “${day}”. Choose one of its days.`,
  /** The job of the last visit is not there. */
  jobLost:
    'The job you last worked on is not on this device any more, or can no longer be read. This is an empty one.',
  leave: {
    title: 'This would be lost',
    draft:
      'You have ticked or typed something and not pressed “Continue”. This browser cannot keep it while you are away.',
    job: 'Your open job is in this tab only. The page you go to takes its place. Save the job to a file first.',
    stay: 'Stay here',
    save: 'Save to a file',
    go: 'Leave all the same',
  },
} as const;
