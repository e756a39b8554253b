import type { Element } from '$lib/answers/questions';
/** What stands round every page. */
export const frameWords = {
  name: 'Down to Sound',
  /** What a device says of the site when it installs it. */
  installed: 'How to prepare damaged concrete before a repair. Works without a network.',
  skip: 'Skip to the page',
  nav: 'Pages',
  assess: 'Assess',
  advice: 'Advice',
  job: 'Job',
  plan: 'Plan',
  ready: 'Ready?',
  crew: 'Crew’s day',
  learn: 'Learn',
  practice: 'Practice',
  jobs: 'Your jobs',
  units: 'Units',
  metric: 'mm, m',
  us: 'in, ft',
  metricLong: 'Millimetres and metres',
  usLong: 'Inches and feet',
  deferral:
    'General guidance. The law, local codes, the maker’s instructions and a licensed professional come first.',
  privacy: 'Privacy',
  licences: 'Licences',
  licencePage: {
    title: 'Licences',
    own: 'This site is free software, under this licence:',
    libraries: 'It holds parts of these libraries, each under the licence of its makers:',
  },
  /** How much of the site is on the device. */
  offline: {
    whole: 'The whole site is on this device. It opens without a network.',
    filling: 'The site is being kept on this device, so that it opens without a network.',
    partly:
      'A part of the site is not on this device yet. It follows the next time you open the site with a network.',
    spared: 'Your device saves data. The site is not kept here, so it needs a network.',
    keep: 'Keep it here all the same',
  },
  framed: {
    line: 'This page does not work inside another page. Somebody could lay something over it and have you press what you do not see.',
    open: 'Open it on its own',
  },
  stays: 'What you enter stays on this device until you share it.',
  /** Said only when everything in hand is on the device. */
  kept: 'Saved',
  saving: {
    quota:
      'The last answer is not saved: this device has no room left. Keep this tab open, and save the job to a file.',
    unavailable:
      'The last answer is not saved: storage did not respond. Keep this tab open, and save the job to a file.',
    invalid: 'The last answer is not saved: something in the job could not be read back.',
    newer:
      'This job was changed in another tab after you opened it here. Nothing is overwritten. If you take the other tab’s, what you changed here since is gone.',
  },
  cleared:
    'Everything this site kept on this device was deleted in another tab. What you see here is not kept any more.',
  gone: 'This job is no longer kept on this device: it was deleted in another tab, or with the data of this site. What you see here is still in this tab.',
  again: 'Try again',
  toFile: 'Save to a file',
  takeTheirs: 'Take the other tab’s',
  asCopy: 'Keep mine as a copy',
  keepHere: 'Keep it as a job',
  letGo: 'Let it go',
  update: {
    name: 'New version',
    line: 'A new version of this site is ready. The page loads anew; your jobs stay.',
    take: 'Use it now',
    later: 'Later',
  },
  lost: {
    title: 'There is no page here',
    line: 'The address may be misspelled, or the page has moved. Nothing you entered is lost.',
    back: 'To the start',
  },
} as const;

/**
 * What somebody stands in front of, where it stands alone: as a choice, and as what an unnamed job is about. It stands
 * here since every page has these words: a file of its own would be one more to fetch.
 */
export const elementTitles: Readonly<Record<Element, string>> = {
  slab: 'Slab on the ground',
  steps: 'Steps on the ground',
  'suspended-steps': 'Suspended steps',
  'suspended-slab': 'Suspended slab',
  wall: 'Wall',
  soffit: 'Soffit',
};
