import { expect, test } from 'vitest';
import { findRoles } from '$lib/climate/file/columns';

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
