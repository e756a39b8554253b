import type { FreezeThaw } from '$lib/answers/questions';
import type {
  AmericanClass,
  EuropeanClass,
  FreezeThawReading,
  Frequency,
  Weather,
  WeatheringClass,
  Wetness,
  YearCount,
} from '$lib/climate/types';
import type { ChoiceWords, Named, Say } from '$lib/words/types';

/** The first question: how often it crosses freezing. */
export const frequencyWords = (say: Say): Readonly<Record<Frequency, ChoiceWords>> => ({
  never: { name: 'Hardly ever', hint: 'Some winters have no frost at all.' },
  few: {
    name: 'A handful of days',
    hint: `Ice that is gone by noon, on fewer than ${say.figure('freeze.days.some')} a year.`,
  },
  some: {
    name: 'Some weeks',
    hint: `On ${say.span('freeze.days.some', 'freeze.days.many')} a year.`,
  },
  many: {
    name: 'Most of the winter',
    hint: `Frost at night and a thaw by day, on ${say.figure('freeze.days.many')} a year or more.`,
  },
});

/** The second question: how wet it is when it freezes. */
export const wetnessWords: Readonly<Record<Wetness, ChoiceWords>> = {
  dry: {
    name: 'It stays dry',
    hint: 'Indoors or under a roof. No rain, splash or damp from the ground.',
  },
  drains: {
    name: 'It gets wet, then dries',
    hint: 'Rain runs off it: a wall, a beam, a slope clear of the ground.',
  },
  'stays-wet': {
    name: 'It stays wet',
    hint: 'It lies flat or on the ground, or snow lies on it: drives, steps, paths.',
  },
};

export const answerNames: Readonly<Record<FreezeThaw, string>> = {
  rare: 'Rarely',
  some: 'Some weeks',
  often: 'Often',
};

export const weatheringNames: Readonly<Record<WeatheringClass, string>> = {
  negligible: 'negligible',
  moderate: 'moderate',
  severe: 'severe',
};

/** Exposure classes of ACI 318-19. */
export const americanWords: Readonly<Record<AmericanClass, Named>> = {
  F0: { name: 'F0', line: 'not exposed to freezing and thawing' },
  F1: { name: 'F1', line: 'freezes, with limited water' },
  F2: { name: 'F2', line: 'freezes, with water on it often' },
  F3: { name: 'F3', line: 'freezes, with water and salt on it often' },
};

/** Exposure classes of EN 206. */
export const europeanWords: Readonly<Record<EuropeanClass, Named>> = {
  none: { name: 'No XF class', line: 'no attack by freezing while wet' },
  XF1: { name: 'XF1', line: 'half wet when it freezes, no salt' },
  XF2: { name: 'XF2', line: 'half wet when it freezes, with salt' },
  XF3: { name: 'XF3', line: 'soaked when it freezes, no salt' },
  XF4: { name: 'XF4', line: 'soaked when it freezes, with salt' },
};

const wetClause: Readonly<Record<Wetness, string>> = {
  dry: 'The concrete stays dry, and frost does little to dry concrete.',
  drains: 'The concrete gets wet and dries again.',
  'stays-wet': 'The concrete stays wet, so every frost finds water in it.',
};

const often: Readonly<Record<Frequency, string>> = {
  never: 'Frost hardly ever comes.',
  few: 'It crosses freezing on a handful of days a year.',
  some: 'It crosses freezing for some weeks of the year.',
  many: 'It crosses freezing for most of the winter.',
};

/** As much of the weather as the reason for an answer speaks of. */
export type WeatherSaid = Pick<
  Weather,
  'cycles' | 'index' | 'winterRain' | 'weathering' | 'frequency'
>;

/** What the file said about the frost, in a sentence or two. */
export function weatherSentence(weather: WeatherSaid, say: Say): string {
  const { cycles, index, winterRain, weathering } = weather;
  if (!cycles) return '';
  const days = `Your file has ${say.number(cycles.direct)} days a year that cross freezing`;
  if (index === null || winterRain === null || weathering === null)
    return `${days}. It has no rain to weigh them with.`;
  return `${days}, and ${say.rain(winterRain)} of rain between the first and the last frost. Together that is a weathering index of ${say.number(Math.round(index))}: ${weatheringNames[weathering]}.`;
}

/** Why the answer is what it is. */
export function readingReason(
  { answer, frequency, wetness }: Pick<FreezeThawReading, 'answer' | 'frequency' | 'wetness'>,
  weather: WeatherSaid | null,
  say: Say,
): string {
  const counted =
    weather?.frequency === frequency ? weatherSentence(weather, say) : often[frequency];
  return `${counted} ${wetClause[wetness]} So the answer is “${answerNames[answer]}”.`;
}

/** A year that is left out, said aloud. */
export const leftOutYear = ({ year, missing }: YearCount, yearStarts: number, say: Say): string => {
  const name = yearStarts === 1 ? String(year) : `${year} to ${year + 1}`;
  return `${name}: ${say.number(missing)} ${missing === 1 ? 'day' : 'days'} missing`;
};

/** Labels and sentences of the page. */
export const weatherPageWords = {
  title: 'How hard does it freeze?',
  description:
    'Find the freeze-thaw answer for your concrete: from two questions, or from a daily weather file read on your own device.',
  intro:
    'Water in concrete swells when it freezes. How much harm frost does hangs on two things: how often it comes, and how wet the concrete is when it does.',
  askFrequency: 'How often does it cross freezing?',
  askWetness: 'How wet is the concrete when it freezes?',
  notSure: { name: 'Not sure', hint: 'Carry on. Every possibility stays open.' },
  fileTitle: 'Count it from a weather file',
  fileIntro:
    'Have a daily weather file of a station near you? Most public weather services hand them out free. Each row is a day, with its lowest and highest temperature, and its rain and snow if you have them.',
  privacy:
    'Your file stays on this device. It is read here, works without a network, and nothing is sent.',
  choose: 'Choose a weather file (CSV)',
  reading: 'Reading the file',
  cancel: 'Stop reading',
  count: 'Count the days',
  counting: 'Counting',
  again: 'Choose another file',
  change: 'Change columns or units',
  answerTitle: 'The answer',
  answerOpen: 'Answer both questions to see it.',
  possible: (names: string) => `Still possible: ${names}.`,
  use: (name: string) => `Use “${name}” in my job`,
  useOpen: 'Use what is still possible in my job',
  useHint: 'It opens the frost question with this answer filled in. You can change it there.',
  overruled: (fromFile: string) =>
    `Your file says “${fromFile}”. You chose something else, and your choice counts.`,
  backToFile: 'Go back to what the file says',
  classes: 'Exposure classes',
  american: 'ACI 318-19',
  european: 'EN 206',
  classLine: 'What each class asks of new concrete. Ask for it when you pour.',
  saltOpen: 'You have not said whether salt gets on it, so more than one class is possible.',
  saltLink: 'Answer the salt question',
  airNote: (air: string) => `${air} air`,
  limit: (waterCement: string, strength: string) =>
    `water to cement ${waterCement} at most, ${strength} at least`,
  codesFirst: 'General guidance. Local codes, national annexes and your engineer come first.',
  resultTitle: 'What the file says',
  cyclesLabel: 'Days a year that cross freezing',
  bothWays: (frost: string, ice: string) =>
    `Counted one by one. The same as ${frost} days with frost less ${ice} days frozen all day.`,
  firstFrost: 'Usual first frost',
  lastFrost: 'Usual last frost',
  noFrost: 'None in most winters',
  winterRain: 'Rain between them',
  indexLabel: 'Weathering index',
  noRain: 'The file has no rain, so there is no index. The days alone decide.',
  snowUnknown: 'The file has no snow, so all of it counts as rain. The index is an upper limit.',
  snowLow: (winter: string, january: string) =>
    `Snow is taken off at a tenth of its depth. In snowy winters that takes off too much: the rain can come out ${winter} low, in January ${january}. Snow that melts on the concrete is not counted at all.`,
  noWholeYear: (limit: string) =>
    `No year in this file is whole enough to count. A year may miss ${limit}. Choose a longer file, or allow more missing days.`,
  yearsKept: (kept: string, from: string, to: string) =>
    `Years counted: ${kept}, between ${from} and ${to}.`,
  leftOut: 'Left out',
  noneLeftOut: 'No year is left out.',
  allow: 'Days a year that may be missing',
  allowHint: (usual: string) => `Usual: ${usual}, from the rule of climate researchers.`,
  allowOwn: 'Your own value.',
  byYear: 'Year by year',
  year: 'Year',
  missing: 'Missing',
  crossed: 'Crossed freezing',
  frostDays: 'With frost',
  iceDays: 'Frozen all day',
  rainColumn: 'Rain in frost season',
  chartTitle: 'Frost by month',
  chartLine: 'Days a month, the mean of the years counted.',
  legend: { cycles: 'crosses freezing', ice: 'frozen all day' },
  coldTitle: 'Too cold to repair',
  coldLine: (repair: string, seal: string) =>
    `Cement repairs stop below ${repair}, crack sealing below ${seal}. The maker’s limits come first.`,
  coldAllDay: 'Never warm enough',
  coldAtNight: 'Too cold at night only',
  coldToSeal: 'Too cold to seal cracks',
  month: 'Month',
  coldNights: 'After a night too cold the repair has to be kept warm until it is strong.',
  workerFailed:
    'The file could not be read on this device. Try again, or answer the two questions instead.',
  toAnswer: 'Back up to the answer',
  note: {
    title: 'From your weather',
    link: 'Work it out from the weather',
  },
} as const;
