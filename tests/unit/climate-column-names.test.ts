import { describe, expect, test } from 'vitest';
import { findRoles } from '$lib/climate/file/columns';

/** How weather services name their columns: common practice, no published source. */
const alone: Readonly<Record<string, readonly string[]>> = {
  date: ['Date', 'DATES', 'Datetime', 'time', 'YYYYMMDD', 'AAAAMMJJ', 'Datum', 'MESS_DATUM'],
  year: ['Year', 'YYYY', 'YR', 'Jahr'],
  month: ['Month', 'MO', 'MON'],
  day: ['Day', 'DY', 'Day of month', 'DAY__OF__MONTH'],
  min: ['Min', 'Minimum', 'Low', 'Lowest', 'TMIN', 'TN', 'TNK', 'MINT', 'MINTP', 'T Min', 'T N'],
  max: ['Max', 'Maximum', 'High', 'Highest', 'TMAX', 'TX', 'TXK', 'MAXT', 'MAXTP', 'T Max', 'T X'],
  rain: [
    ...['PRCP', 'Precip', 'Precipitation', 'RR', 'RSK', 'PCP', 'PPT', 'PCPN', 'PRECTOTCORR'],
    ...['Rain', 'Rainfall'],
  ],
  snow: ['Snow', 'Snowfall'],
  station: [
    ...['Station', 'STN', 'Station ID', 'STATIONS_ID', 'Station Name', 'Location', 'Site', 'Name'],
    ...['NUM_POSTE', 'Climate ID'],
  ],
};

describe('a column of its own name', () => {
  const cases = Object.entries(alone).flatMap(([role, names]) =>
    names.map((name) => [role, name] as const),
  );
  test.each(cases)('%s: “%s”', (role, name) => {
    // Found whatever stands beside it, in capitals, in spaces, and before one with more in its name.
    for (const text of [name, name.toUpperCase(), ` ${name} `, `"${name}"`, `\ufeff${name}`])
      expect(findRoles(['x', text])).toEqual({ [role]: 1 });
    expect(findRoles([`${name} remarks`, name])[role as 'date']).toBe(1);
  });

  test('goes before one that only holds it, and of equals the first', () => {
    expect(findRoles(['Min air temp', 'Min temperature']).min).toBe(1);
    expect(findRoles(['Max air temp', 'Max temperature']).max).toBe(1);
    expect(findRoles(['Max load', 'Max air temperature']).max).toBe(1);
    expect(findRoles(['Max load', 'Max air t']).max).toBe(1);
    expect(findRoles(['Max load', 'Max attempts']).max).toBe(0);
    expect(findRoles(['Max load', 'Max heat']).max).toBe(0);
    expect(findRoles(['Rain total', 'Total precipitations, rain']).rain).toBe(1);
    expect(findRoles(['New snow', 'Snow temp']).snow).toBe(0);
    expect(findRoles(['Tmin', 'Min']).min).toBe(0);
    expect(findRoles(['Date issued', 'Date']).date).toBe(1);
    expect(findRoles(['Time zone', 'Time']).date).toBe(1);
  });
});

describe('a name with more in it', () => {
  test('is read without its brackets, marks and accents, word by word', () => {
    expect(findRoles(['Date', 'Temp (mean of hours) max [wind]'])).toEqual({ date: 0, max: 1 });
    expect(findRoles(['Date', 'Max (°C) wind (m/s)'])).toEqual({ date: 0 });
    expect(findRoles(['Date', 'max(a)temp'])).toEqual({ date: 0, max: 1 });
    expect(findRoles(['Date', 'maxTemp', 'Témp. Mín'])).toEqual({ date: 0, max: 1, min: 2 });
    expect(findRoles(['(UTC) date of reading', '(C) Max'])).toEqual({ date: 0, max: 1 });
    expect(findRoles(['time (local)', 'x'])).toEqual({ date: 0 });
  });

  test('is a date where it begins as one, and no year, month, day or station for a word in it', () => {
    expect(findRoles(['Date of reading'])).toEqual({ date: 0 });
    expect(findRoles(['Time of reading'])).toEqual({ date: 0 });
    for (const other of [
      'Update',
      'Last update',
      'Valid date',
      'Timezone',
      'Dateline',
      'Quell Datum',
    ])
      expect(findRoles([other])).toEqual({});
    expect(
      findRoles(['Year of record', 'Month name', 'DY no', 'Observer name', 'Site code']),
    ).toEqual({});
    expect(findRoles(['Date', 'Time zone', 'Time basis', 'Time b', 'Time c', 'Time d'])).toEqual({
      date: 0,
    });
    // One column of dates is enough: its parts beside it are not asked.
    expect(findRoles(['Year', 'Month', 'Day', 'Date'])).toEqual({ date: 3 });
  });

  const others = [
    ...['flag', 'quality', 'qc', 'source', 'attribute', 'attributes', 'grass', 'ground', 'grnd'],
    ...['soil', 'hum', 'humidity', 'relhum', 'relhumidity', 'rh', 'wind', 'gust', 'gusts', 'spd'],
    ...['speed', 'dir', 'pressure', 'dew', 'apparent', 'feels', 'chill', 'hour', 'hours', 'hmdx'],
    ...['depth', 'lying', 'cover', 'water', 'equivalent', 'swe', 'probability', 'type'],
    ...['intensity', 'rate', 'day', 'days', 'sunshine', 'mean', 'avg', 'average', 'extreme'],
  ];
  test.each(others)('is not the day’s own temperature, rain or snow: %s', (word) => {
    for (const name of ['max', 'min', 'rain', 'snow'])
      for (const text of [`${name} ${word}`, `${word} ${name}`, `${name}_${word}_2`])
        expect(findRoles(['date', text])).toEqual({ date: 0 });
    // Only as a word of its own.
    if (!/^hum|^relhum|^gust|^attribute$|^hour$|^day$/.test(word))
      expect(findRoles(['date', `max ${word}z`])).toEqual({ date: 0, max: 1 });
    if (word !== 'hum') expect(findRoles(['date', `max z${word}`])).toEqual({ date: 0, max: 1 });
  });

  test('that begins as a number is a value', () => {
    for (const value of ['12 max', '-1 max', '+1 max', '.5 max', ''])
      expect(findRoles(['date', value])).toEqual({ date: 0 });
  });
});
