import { inTenths, wholeNumber } from '$lib/words/by-language';
import { bring } from './bring';
import { homeWords } from './home';

const megabytes = (bytes: number) => `${inTenths(Math.max(0.1, bytes / 1e6))} MB`;

/** The page of the jobs on this device, and what a shared link or a file asks on other pages. */
export const jobsWords = {
  title: 'Your jobs',
  description: 'The jobs kept on this device: open, save to a file, share, copy or delete them.',
  wait: 'Looking at what is on this device …',
  noScript: 'This page needs JavaScript: the jobs are kept by your browser, on this device.',
  lead: 'They are kept in this browser, on this device. Nobody else has them until you share one.',
  none: 'No job is kept here yet. One is kept as soon as you answer its first question.',
  start: 'Start a new job',
  list: 'Jobs on this device',
  unnamed: homeWords.unnamed,
  zones: (count: number) => (count === 1 ? '1 zone' : `${count} zones`),
  changed: (when: string) => `changed ${when}`,
  changedUnknown: 'nobody knows when it was changed',
  inHand: 'open now',
  open: 'Open',
  goOn: 'Continue',
  openOf: (name: string) => `Open: ${name}`,
  goOnOf: (name: string) => `Continue: ${name}`,
  more: 'Rename, save, share, delete',
  moreOf: (name: string) => `Rename, save, share, delete: ${name}`,
  rename: 'Rename',
  name: 'Name of the job',
  keepName: 'Keep this name',
  badName: (problem: string) => `The name was not changed. ${problem}`,
  cancel: 'Cancel',
  copy: 'Make a copy',
  copyOf: (name: string) => `${name} (copy)`,
  copied: (name: string) => `“${name}” is in your list.`,
  toFile: 'Save to a file',
  share: 'Share a link',
  delete: 'Delete',
  deleted: (name: string) => `“${name}” is deleted.`,
  undo: 'Undo',
  undoOf: (name: string) => `Undo: delete ${name}`,
  undone: (name: string) => `“${name}” is back.`,
  undoFailed: (name: string) =>
    `“${name}” was not put back: a job is kept in its place again, or the device refused.`,
  photosLeft: 'Its photos did not come along: this device has no room for them, or refused.',
  vanished: homeWords.vanished,
  changedElsewhere: 'That job was changed in another tab. Nothing was overwritten. Try again.',
  storageFailed: 'The storage of this browser did not answer. Nothing was changed.',
  lost: 'The jobs kept on this device were deleted while this page was open. What this page still shows can be kept again.',
  everything: {
    title: 'Delete everything',
    line: 'This deletes all that this site keeps in this browser, on this device.',
    privacy: 'What is kept where',
    start: 'Delete everything …',
    what: 'This will go:',
    jobs: (count: number) => (count === 1 ? '1 job' : `${count} jobs`),
    photos: (count: number) => (count === 1 ? '1 photo' : `${count} photos`),
    results: (count: number) =>
      count === 1 ? '1 result of your practice' : `${count} results of your practice`,
    given: (count: number) =>
      count === 1 ? '1 result of a learner' : `${count} results of learners`,
    settings: (count: number) =>
      count === 1
        ? '1 setting or note of this browser'
        : `${count} settings and notes of this browser`,
    files: (count: number) => `the copy for work without a network: ${count} files`,
    unknown: (what: string) => `${what}: this browser does not say how much`,
    parts: {
      jobs: 'jobs',
      photos: 'photos',
      results: 'practice',
      given: 'results of learners',
      settings: 'settings',
      files: 'the copy for work without a network',
    },
    sure: 'Your jobs, photos and results cannot be brought back. Save what you want to keep to a file first. The copy for work without a network comes back when you visit the site again.',
    yes: 'Yes, delete it all',
    no: 'Keep it',
    done: 'All of it is deleted. Nothing of yours is left in this browser.',
    partly: (parts: string) =>
      `Not all of it could be deleted. Still there: ${parts}. Try again, or clear the data of this site in your browser.`,
  },
  bring,
  damaged: {
    name: 'A job that cannot be read',
    line: (problem: string) => `What is kept here is not a whole job. ${problem}`,
    save: 'Save what is there to a file',
    delete: 'Delete for good',
    sure: 'It cannot be brought back.',
    yes: 'Yes, delete it',
    no: 'Keep it',
  },
  file: {
    title: 'Open a file',
    line: 'Choose a job file, or drop it here. It becomes a new job in your list. Nothing is overwritten.',
    choose: 'Choose a file',
    refused: (file: string, problem: string) =>
      `“${file}” was not opened, and your jobs are as they were. ${problem}`,
    unreadable: 'The browser could not read the file.',
    added: (name: string) => `“${name}” is in your list as a new job.`,
    toAdvice: 'See its advice',
    toJob: 'See the job',
    notKept: (name: string, why: string) => `“${name}” was read but not kept. ${why}`,
  },
  save: {
    photos: (count: number, bytes: number) =>
      `With ${count === 1 ? 'its photo' : `its ${count} photos`} (${megabytes(bytes)})`,
    without: 'Without photos',
    line: 'To another device of yours: with them. Whoever has the file can see what is in it.',
    tooMany: (most: number) =>
      `The photos are too large for one file: at most ${megabytes(most)}. Delete some first.`,
  },
  link: {
    label: (name: string) => `Link to “${name}”`,
    wait: 'Making the link …',
    leaves: 'What leaves when you share',
    line: 'The whole job is in the link, and no photo. Whoever has the link can read it. No server gets it by itself.',
    copy: 'Copy the link',
    copied: 'The link is copied.',
    byHand:
      'The browser would not copy it. The link is marked: copy it with your keyboard or menu.',
    sheet: 'Send it',
    failed: 'The link could not be made in this browser. Save the job to a file and send that.',
    tooLong: (length: number, most: number) =>
      `This job is too large for a link: it would take ${wholeNumber(length)} characters, and some programs cut links off after ${wholeNumber(most)}. Save it to a file and send that.`,
    close: 'Close',
  },
  leave: {
    title: 'Your open job is not saved',
    line: (name: string) =>
      `“${name}” holds something that could not be saved on this device. If you go on, what was not saved is gone.`,
    save: 'Save it to a file',
    go: 'Continue without it',
    stay: 'Stay with it',
  },
  shared: {
    title: 'A shared job',
    line: (name: string, zones: string) => `The link carries the job “${name}” (${zones}).`,
    zones: 'Its zones',
    more: (count: number) => `and ${count} more`,
    ask: 'Add it to your jobs? It becomes a new job; nothing is overwritten.',
    add: 'Add it',
    no: 'No, leave it',
    broken: (problem: string) =>
      `The link carries a job that cannot be read. Your jobs are as they were. ${problem}`,
    close: 'Close',
  },
} as const;
