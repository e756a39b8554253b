const cases = (count: number): string => (count === 1 ? '1 case' : `${count} cases`);

/** The page with the practice cases. */
export const practiceWords = {
  title: 'Practice',
  description:
    'Invented slabs, steps and walls to decide on: pick the method, the steps and the cautions, and see what the rules say to it.',
  lead: 'Look at an invented spot, decide, and see what the rules of this site say to it.',
  wait: 'Looking for what you practised on this device …',
  noScript:
    'Practising needs JavaScript: your picks are graded in your own browser, and kept on this device. The explainers need none.',
  back: 'Learn',
  invented: 'Invented',
  atLevel: (level: number, most: number) => `Level ${level} of ${most}`,
  level: (level: number, most: number, name: string) => `Level ${level} of ${most}: ${name}`,
  pickLevel: {
    label: 'Level',
    own: 'grows with you',
    only: (level: number) => `${level} only`,
  },
  comesBack: 'You missed something here before',
  facts: 'What you find out',
  more: 'Also known',
  ask: {
    call: 'Which method?',
    waits: 'Do not start yet',
    who: 'Who or what comes first?',
    steps: 'Which work goes with it?',
    stepsHint: 'Tick what this case calls for. Making safe and the last checks always go with it.',
    hazards: 'What could hurt somebody?',
    hazardsHint: 'Tick what is there in this work, at this place.',
  },
  check: 'Check it',
  pickFirst: {
    call: 'Pick a method, or that it has to wait.',
    who: 'Pick who or what comes first.',
  },
  result: {
    said: (name: string) => `${name}. The answer is below.`,
    yours: 'You picked',
    answer: 'The rules come to',
    because: 'Because',
    before: 'What stands before the work',
    pick: (name: string, why: string) => `${name}: ${why}`,
    senior: 'Somebody long in the trade',
    others: 'Other ways',
    steps: 'The work around it',
    stepsRight: 'You ticked all that is called for, and nothing else.',
    stepsLater: 'Neither work nor dangers are judged here: nothing is done until that is cleared.',
    stepsHere: (names: string) => `Around it: ${names}.`,
    missed: 'Left out',
    spare: 'Not called for',
    found: (names: string) => `You had: ${names}.`,
    hazards: 'What could hurt somebody',
    hazardsRight: 'You ticked every danger that was asked about.',
    by: (steps: string) => `It comes with: ${steps}.`,
    extra: (names: string) => `Not named for this work: ${names}. Looking out for it does no harm.`,
    besides: (names: string) => `There too, though not asked: ${names}.`,
    readOn: 'Read on',
    again: (when: string) => `This case comes back in ${when}.`,
    next: 'Next case',
  },
  standing: {
    title: 'Your progress',
    line: (tried: number, right: number) =>
      tried === 0
        ? 'You have tried no case yet.'
        : `You have tried ${cases(tried)}. The last time, you had all of it right in ${right}.`,
    due: (count: number) =>
      count === 0 ? 'None has come back just now.' : `${cases(count)} came back and wait for you.`,
    how: 'New cases get harder as you get them right. What you miss comes back within minutes, then after days. What you know comes back less and less often.',
    stays: 'It is kept in this browser, on this device.',
    toFile: 'Save my progress to a file',
    fileName: 'practice.down-to-sound.json',
    fromFile: 'Add progress from a file',
    added: (count: number) =>
      count === 0 ? 'All of it was here already.' : `${count} results were added.`,
    refused: (problem: string) =>
      `The file was not read, and your progress is as it was. ${problem}`,
    forget: 'Forget my progress',
    forgotten: 'Your progress is forgotten.',
    undo: 'Undo',
    back: 'Your progress is back.',
    failed: 'The storage of this browser did not answer. Nothing was changed.',
  },
  trouble: {
    quota:
      'The last result is not kept: this device has no room left. It stays in this tab. Save your progress to a file.',
    unavailable:
      'The last result is not kept: the storage of this browser did not answer. It stays in this tab. Save your progress to a file.',
    damaged: (problem: string) =>
      `What is kept here of your practice cannot be read, and was left as it is. ${problem}. You can go on; what you do stays in this tab until you start afresh, which deletes what cannot be read.`,
    rawToFile: 'Save what is there to a file',
    afresh: 'Start afresh',
  },
  memory:
    'This browser keeps no data for this site just now. You can practise, but your progress is gone when you close the tab. Save it to a file before that.',
  set: {
    title: 'A set of cases',
    line: (count: number) => `Somebody chose ${cases(count)} for you.`,
    place: (at: number, of: number) => `Case ${at} of ${of} in the set`,
    broken: (problem: string) => `This link was not opened. ${problem}`,
    leave: 'Practise without the set',
    done: 'The set is done',
    score: (right: number, of: number) => `You had all of it right in ${right} of ${of}.`,
    goesOn: 'What you missed comes back in your own practice.',
    again: 'Do the set again',
  },
  builder: {
    title: 'Make a set',
    line: 'Tick cases, add as many new ones as you like, and send the link. It holds the names of the cases and nothing else.',
    level: (level: number, name: string) => `Level ${level}: ${name}`,
    count: (most: number) => `New cases to draw, up to ${most}`,
    answers: 'Show what each case comes to',
    badCount: (most: number) => `A whole number from 0 to ${most}.`,
    others: 'Draw other ones',
    none: 'Tick a case, or ask for new ones, to get a link.',
    label: (count: number) => `Link to a set of ${cases(count)}`,
    copy: 'Copy the link',
    copied: 'The link is copied.',
    byHand: 'The link is marked. Copy it by hand.',
    clear: 'Take all ticks away',
  },
} as const;
