import { describe, expect, test } from 'vitest';
import { findRoles, hasDate } from '$lib/climate/file/columns';

/**
 * Column names in use by public weather services (common practice, no published source).
 * The days below them are invented.
 */
const layouts: [string, string[], Record<string, number>][] = [
  [
    'American daily summaries',
    ['STATION', 'NAME', 'DATE', 'PRCP', 'SNOW', 'SNWD', 'TMAX', 'TMIN'],
    { station: 0, date: 2, rain: 3, snow: 4, max: 6, min: 7 },
  ],
  [
    'American summaries with attributes',
    [
      'STATION',
      'DATE',
      'PRCP',
      'PRCP_ATTRIBUTES',
      'TMAX',
      'TMAX_ATTRIBUTES',
      'TMIN',
      'TMIN_ATTRIBUTES',
    ],
    { station: 0, date: 1, rain: 2, max: 4, min: 6 },
  ],
  [
    'Canadian daily data',
    [
      'Longitude (x)',
      'Latitude (y)',
      'Station Name',
      'Climate ID',
      'Date/Time',
      'Year',
      'Month',
      'Day',
      'Data Quality',
      'Max Temp (°C)',
      'Max Temp Flag',
      'Min Temp (°C)',
      'Min Temp Flag',
      'Mean Temp (°C)',
      'Mean Temp Flag',
      'Total Rain (mm)',
      'Total Rain Flag',
      'Total Snow (cm)',
      'Total Snow Flag',
      'Total Precip (mm)',
      'Total Precip Flag',
      'Snow on Grnd (cm)',
      'Spd of Max Gust (km/h)',
    ],
    { station: 2, date: 4, max: 9, min: 11, snow: 17, rain: 19 },
  ],
  [
    'German daily data',
    [
      'STATIONS_ID',
      'MESS_DATUM',
      'QN_3',
      'FX',
      'FM',
      'QN_4',
      'RSK',
      'RSKF',
      'SDK',
      'SHK_TAG',
      'NM',
      'VPM',
      'PM',
      'TMK',
      'UPM',
      'TXK',
      'TNK',
      'TGK',
      'eor',
    ],
    { station: 0, date: 1, rain: 6, max: 15, min: 16 },
  ],
  [
    'French daily data',
    [
      'NUM_POSTE',
      'NOM_USUEL',
      'LAT',
      'LON',
      'ALTI',
      'AAAAMMJJ',
      'RR',
      'QRR',
      'TN',
      'QTN',
      'HTN',
      'TX',
      'QTX',
    ],
    { station: 0, date: 5, rain: 6, min: 8, max: 11 },
  ],
  [
    'Irish daily data',
    ['date', 'ind', 'maxtp', 'ind', 'mintp', 'igmin', 'gmin', 'ind', 'rain', 'cbl', 'wdsp'],
    { date: 0, max: 2, min: 4, rain: 8 },
  ],
  [
    'model data by day',
    [
      'time',
      'temperature_2m_max (°C)',
      'temperature_2m_min (°C)',
      'precipitation_sum (mm)',
      'snowfall_sum (cm)',
      'precipitation_hours (h)',
    ],
    { date: 0, max: 1, min: 2, rain: 3, snow: 4 },
  ],
  [
    'separate year, month and day',
    ['YEAR', 'MO', 'DY', 'T2M_MAX', 'T2M_MIN', 'PRECTOTCORR'],
    { year: 0, month: 1, day: 2, max: 3, min: 4, rain: 5 },
  ],
  [
    'names run together',
    ['Date', 'MaxTemperature', 'MinTemperature', 'Precipitation', 'Snowfall', 'SnowDepth'],
    { date: 0, max: 1, min: 2, rain: 3, snow: 4 },
  ],
  [
    'plain words',
    ['Date', 'Minimum temperature', 'Maximum temperature', 'Rainfall'],
    { date: 0, min: 1, max: 2, rain: 3 },
  ],
];

test.each(layouts)('columns of %s', (_name, columns, roles) => {
  expect(findRoles(columns)).toEqual(roles);
});

/** Each word alone, as services and spreadsheets of many countries have it. Common practice, no source. */
const alone: Record<string, string[]> = {
  date: [
    'Date',
    'dates',
    'DateTime',
    'time',
    'YYYYMMDD',
    'AAAAMMJJ',
    'Datum',
    'MESS_DATUM',
    'Fecha',
  ],
  min: ['Min', 'minimum', 'LOW', 'lowest', 'TMIN', 'tn', 'TNK', 'mint', 'mintp', 'MinTemperature'],
  max: [
    'Max',
    'maximum',
    'HIGH',
    'highest',
    'TMAX',
    'tx',
    'TXK',
    'maxt',
    'maxtp',
    'MaxTemperature',
  ],
  rain: [
    ...['PRCP', 'precip', 'Precipitation', 'RR', 'RSK', 'PCP', 'ppt', 'pcpn', 'PRECTOTCORR'],
    ...['Rain', 'Rainfall'],
  ],
  snow: ['Snow', 'Snowfall'],
  station: [
    ...['Station', 'STN', 'Station ID', 'STATIONS_ID', 'Station name', 'Location', 'Site', 'Name'],
    ...['NUM_POSTE', 'Climate ID'],
  ],
};
test.each(Object.entries(alone).flatMap(([role, names]) => names.map((name) => [name, role])))(
  '%s is the %s',
  (name, role) => expect(findRoles([name])).toEqual({ [role]: 0 }),
);

const calendars = [
  ['year', 'month', 'day'],
  ['yyyy', 'mo', 'dy'],
  ['yr', 'mon', 'day of month'],
  ['Jahr', 'month', 'day'],
  ['Año', 'Mes', 'Día'],
  ['anio', 'mes', 'dia'],
];
test.each(calendars)('%s, %s and %s are the date in three', (...columns) => {
  expect(findRoles(columns)).toEqual({ year: 0, month: 1, day: 2 });
});

test('columns in Spanish are found, with their accents and without', () => {
  expect(findRoles(['Fecha', 'Temp. mínima', 'Temp. máxima', 'Lluvia', 'Nieve'])).toEqual({
    ...{ date: 0, min: 1, max: 2 },
    ...{ rain: 3, snow: 4 },
  });
  expect(findRoles(['estacion', 'fecha', 'tmin', 'tmax', 'prec'])).toEqual({
    ...{ station: 0, date: 1, min: 2 },
    ...{ max: 3, rain: 4 },
  });
});

test('a date in one column is taken, whatever stands in three beside it', () => {
  expect(findRoles(['Year', 'Month', 'Day', 'Date/Time', 'Min'])).toEqual({ date: 3, min: 4 });
});

/** What stands beside the weather that is wanted: other quantities, flags, times. Common practice, no source. */
test.each([
  ...['Min temp flag', 'Max temp quality', 'QC max', 'Rain source', 'Max attributes'],
  ...['Grass min', 'Ground min', 'Snow on grnd', 'Soil max temp', 'Min humidity', 'Max RH'],
  ...['Max wind', 'Max gust', 'Max spd', 'Max speed', 'Dir of max', 'Max pressure', 'Min dew'],
  ...['Apparent max', 'Max feels like', 'Min chill', 'Rain hours', 'Max hmdx', 'Snow depth'],
  ...['Snow lying', 'Snow cover', 'Snow water', 'Snow equivalent', 'Snow SWE', 'Rain days'],
  ...['Rain probability', 'Rain type', 'Rain intensity', 'Rain rate', 'Max sunshine'],
  ...['Máxima del viento', 'Mínima del suelo', 'Media mínima', 'Horas de lluvia', 'Presión máxima'],
  ...['Temperatura máxima del punto de rocío', 'Racha máxima', 'Días de nieve'],
  ...['Mean max', 'Avg low', 'Average high', 'Extreme max', 'Max attribute', 'Rain hour'],
  ...['Rain day', 'Min relhum', 'wind', '', '12', '-3.5', '.5'],
])('%j is none of them', (name) => {
  expect(findRoles([name])).toEqual({});
});

describe('of two columns that could be it', () => {
  test.each([
    ['the one that says temperature', ['Daily max', 'Max temp (°C)'], { max: 1 }],
    ['the first of two alike', ['Max temp', 'Max temp'], { max: 0 }],
    ['the one that says precipitation, of rain', ['Total rain', 'Total precip'], { rain: 1 }],
    ['the whole name before a part of one', ['Local date', 'Date'], { date: 1 }],
    ['a date that begins a name, where nothing is a date alone', ['Date (UTC) local'], { date: 0 }],
    ['accents or none', ['Mínimum'], { min: 0 }],
    ['words run together', ['dateTime', 'TempMax'], { date: 0, max: 1 }],
    ['square brackets', ['Rain [mm]'], { rain: 0 }],
    ['a column is one thing', ['Min Max temp'], { min: 0 }],
    ['temperature by its letter', ['Daily max', 'T max'], { max: 1 }],
  ])('%s', (_what, columns, roles) => {
    expect(findRoles(columns)).toEqual(roles);
  });
});

test.each([
  [{ date: 0 }, true],
  [{ year: 0, month: 1, day: 2 }, true],
  [{ year: 0, month: 1 }, false],
  [{ year: 0, day: 1 }, false],
  [{ month: 0, day: 1 }, false],
  [{}, false],
])('%j holds a whole date: %s', (roles, whole) => expect(hasDate(roles)).toBe(whole));
