/** What stands round every page. */
export const frameWords = {
  name: 'Down to Sound',
  skip: 'Skip to the page',
  nav: 'Pages',
  assess: 'Assess',
  advice: 'Advice',
  job: 'Job',
  plan: 'Plan',
  ready: 'Ready?',
  crew: 'Crew’s day',
  learn: 'Learn',
  units: 'Units',
  metric: 'mm, m',
  us: 'in, ft',
  metricLong: 'Millimetres and metres',
  usLong: 'Inches and feet',
  deferral:
    'General guidance only. The law, local codes, the maker’s instructions and a licensed professional come first.',
  stays: 'What you enter stays on this device until you share it.',
  notDurable:
    'This browser does not let the site keep anything. Your answers last only while this tab is open.',
  saving: {
    quota: 'The last answer is not saved: this device has no room left. Keep this tab open.',
    unavailable: 'The last answer is not saved: storage did not respond. Keep this tab open.',
    invalid: 'The last answer is not saved: something in the job could not be read back.',
    newer: 'This job was changed in another tab.',
  },
  again: 'Try again',
  keepMine: 'Keep what is here',
  takeTheirs: 'Take the other tab’s',
  lost: {
    title: 'There is no page here',
    line: 'The address may be misspelled, or the page has moved. Nothing you entered is lost.',
    back: 'To the start',
  },
} as const;
