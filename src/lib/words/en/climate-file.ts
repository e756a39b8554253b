import type {
  OddityId,
  DateOrder,
  DepthUnit,
  Problem,
  ProblemId,
  Role,
  TemperatureUnit,
} from '$lib/climate/file/types';
import type { Say } from '$lib/words/types';

export const roleNames: Readonly<Record<Role, string>> = {
  date: 'Date',
  year: 'Year',
  month: 'Month',
  day: 'Day of the month',
  min: 'Lowest temperature',
  max: 'Highest temperature',
  rain: 'Rain and melted snow',
  snow: 'Fresh snow',
  station: 'Station',
};

export const temperatureUnitNames: Readonly<Record<TemperatureUnit, string>> = {
  C: '°C',
  F: '°F',
  'tenths-C': 'tenths of °C (−31 is −3.1 °C)',
};

export const depthUnitNames: Readonly<Record<DepthUnit, string>> = {
  mm: 'mm',
  'tenths-mm': 'tenths of mm (25 is 2.5 mm)',
  cm: 'cm',
  in: 'inches',
};

export const dateOrderNames: Readonly<Record<DateOrder, string>> = {
  ymd: 'Year first, or the month in letters',
  dmy: 'Day first: 31/12/2020',
  mdy: 'Month first: 12/31/2020',
};

/** The labels of the page on which the reader confirms how a file is read. */
export const confirmWords = {
  title: 'Is this right?',
  line: 'We read your file this way. Change what is wrong, then count.',
  none: 'Not in this file',
  temperatureUnit: 'Unit of the temperatures',
  rainUnit: 'Unit of the rain',
  snowUnit: 'Unit of the snow',
  order: 'Order of the dates',
  orderAsk: 'Choose: nothing in the file tells',
  station: 'Station to read',
  stationAsk: 'Choose one',
  guessed: 'Guessed from the numbers. Please check.',
  preview: 'Some of its days, as we read them',
  rows: (days: string, rows: string) => `${days} days out of ${rows} rows.`,
  problems: 'Left out',
  look: 'Please look again',
  more: (count: string) => `… and ${count} more.`,
} as const;

const at = (row: number | undefined, say: Say): string =>
  row === undefined ? '' : `Row ${say.number(row)}: `;
const here = (text: string | undefined): string => (text ? `“${text}”` : 'nothing');

/** What is wrong, where, and what was expected. */
const problemSentences: Readonly<Record<ProblemId, (problem: Problem, say: Say) => string>> = {
  empty: () => 'The file is empty. We need a row of column names, then a row for each day.',
  binary: () =>
    'This is not a text file. A spreadsheet can save its sheet as CSV; choose that file.',
  'too-large': ({ count }, say) =>
    `The file is over ${say.number(count ?? 0)} MB. The daily weather of one station is far smaller.`,
  'too-many-rows': ({ row, count }, say) =>
    `${at(row, say)}the file goes on past ${say.number(count ?? 0)} rows. We read the daily weather of one station: one row a day.`,
  'no-columns': ({ row }, say) =>
    `${at(row, say)}no column names found. We need a row with a name for the date, the lowest and the highest temperature.`,
  'headers-only': ({ row }, say) =>
    `${at(row, say)}there are column names, and no days below them.`,
  'no-date-column': ({ row }, say) =>
    `${at(row, say)}no column of dates. Choose it below, or year, month and day.`,
  'no-temperature-column': ({ row }, say) =>
    `${at(row, say)}we need a column for the lowest and one for the highest temperature of the day. Choose them below.`,
  'order-unknown': ({ row, text }, say) =>
    `${at(row, say)}${here(text)} could be read two ways. Choose whether the day or the month comes first.`,
  'order-conflict': ({ row, other }, say) =>
    `${at(row, say)}the day comes first, but in row ${say.number(other ?? 0)} the month does. All dates must be written one way.`,
  'mixed-units': ({ row, text }, say) =>
    `${at(row, say)}the lowest and highest temperatures are in two different units (${here(text)}). We need one.`,
  'two-stations': ({ row, text, count }, say) =>
    `${at(row, say)}a second station begins here (${here(text)}). There are ${say.number(count ?? 2)} in the file. Choose one below.`,
  'not-daily': ({ row, other }, say) =>
    `${at(row, say)}this date was in row ${say.number(other ?? 0)} already, with other values, and many more are given twice. We need one row a day, of one station.`,
  'too-many-bad': ({ row, count }, say) =>
    `${at(row, say)}this is the first of ${say.number(count ?? 0)} rows we cannot use. That is too many: a column, a unit or the order of the dates may be wrong.`,
  'bad-date': ({ row, text }, say) => `${at(row, say)}${here(text)} is not a date we can read.`,
  'bad-number': ({ row, text, column }, say) =>
    `${at(row, say)}${here(text)} in “${column}” is not a number.`,
  'min-above-max': ({ row, text }, say) =>
    `${at(row, say)}the lowest temperature is above the highest (${text}).`,
  'beyond-record': ({ row, text, column }, say) =>
    `${at(row, say)}${here(text)} in “${column}” is beyond any weather on record. Is the unit right?`,
  'wide-day': ({ row, text }, say) =>
    `${at(row, say)}no day has swung so far from cold to warm (${text}).`,
  'same-day-twice': ({ row, other }, say) =>
    `${at(row, say)}this date was in row ${say.number(other ?? 0)} already, with other values. The day counts for neither.`,
  'short-row': ({ row }, say) => `${at(row, say)}the row ends before its date.`,
  'year-jump': ({ row, text }, say) =>
    `${at(row, say)}the year ${text} is far warmer or colder than the others. Did the unit change?`,
  'snow-lying': () =>
    'There is far more snow than the rain column can account for. This may be snow lying on the ground. We need fresh snow of the day, or none.',
  'out-of-order': () => 'The days were not in order. We have put them in order.',
  'odd-encoding': () =>
    'Letters with accents may look wrong: the file uses an old way of writing text. Numbers are not affected.',
};

export const problemSentence = (problem: Problem, say: Say): string =>
  problemSentences[problem.id](problem, say);

/** Something the reader should look at, though it is counted. */
const looks: Readonly<Record<OddityId, true>> = {
  'year-jump': true,
  'snow-lying': true,
  'out-of-order': true,
  'odd-encoding': true,
};
export const isOddity = ({ id }: Problem): boolean => id in looks;
