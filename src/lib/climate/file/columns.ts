import type { DepthUnit, Role, Roles, TemperatureUnit } from './types';

/**
 * Column names in use by public weather services, as words. Each service has its own; all of them
 * say minimum, maximum and precipitation in one of these ways. Source: common practice, no published source.
 */
const words: Readonly<Record<Role, readonly string[]>> = {
  date: [
    'date',
    'dates',
    'datetime',
    'time',
    'yyyymmdd',
    'aaaammjj',
    'datum',
    'mess datum',
    'fecha',
  ],
  year: ['year', 'yyyy', 'yr', 'jahr', 'ano', 'anio'],
  month: ['month', 'mo', 'mon', 'mes'],
  day: ['day', 'dy', 'day of month', 'dia'],
  min: [
    'min',
    'minimum',
    'low',
    'lowest',
    'tmin',
    'tn',
    'tnk',
    'mint',
    'mintp',
    'mintemperature',
    'minima',
    'minimo',
  ],
  max: [
    'max',
    'maximum',
    'high',
    'highest',
    'tmax',
    'tx',
    'txk',
    'maxt',
    'maxtp',
    'maxtemperature',
    'maxima',
    'maximo',
  ],
  rain: [
    'prcp',
    'precip',
    'precipitation',
    'rr',
    'rsk',
    'pcp',
    'ppt',
    'pcpn',
    'prectotcorr',
    'rain',
    'rainfall',
    'lluvia',
    'precipitacion',
    'prec',
  ],
  snow: ['snow', 'snowfall', 'nieve', 'nevada'],
  station: [
    'station',
    'stn',
    'station id',
    'stations id',
    'station name',
    'location',
    'site',
    'name',
    'num poste',
    'climate id',
    'estacion',
    'nombre',
  ],
};

/** A column with one of these words holds something else: another quantity, a flag, a time. */
const otherThings =
  /\b(flag|quality|qc|source|attributes?|grass|ground|grnd|soil|(?:rel)?hum\w*|rh|wind|gust\w*|spd|speed|dir|pressure|dew|apparent|feels|chill|hours?|hmdx|depth|lying|cover|water|equivalent|swe|probability|type|intensity|rate|days?|sunshine|mean|avg|average|extreme|media|suelo|viento|racha|presion|rocio|horas?|dias)\b/;

/** A name in small letters, words apart, without brackets and their contents. */
const plainName = (name: string): string =>
  name
    .normalize('NFKD')
    .replace(/[\u0300-\u036f\ufeff]/g, '')
    .replace(/[([].*?[)\]]/g, ' ')
    .replace(/([a-z])([A-Z])/g, '$1 $2')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, ' ')
    .trim();

const wholeName: readonly Role[] = ['date', 'year', 'month', 'day', 'station'];

/** How well a plain name fits a role: 0 not at all, more is better. */
function fit(plain: string, role: Role): number {
  if (!plain) return 0;
  if (words[role].includes(plain) || words[role].includes(plain.replaceAll(' ', ''))) return 3;
  if (wholeName.includes(role)) return /^(date|time)\b/.test(plain) && role === 'date' ? 2 : 0;
  if (otherThings.test(plain)) return 0;
  const parts = plain.split(' ');
  if (!parts.some((part) => words[role].includes(part))) return 0;
  if (role === 'rain') return parts.some((part) => part.startsWith('prec')) ? 2 : 1;
  const temperature = parts.some((part) => part.startsWith('temp') || part === 't');
  return role === 'snow' || temperature ? 2 : 1;
}

/** The roles that a row of column names gives away. The best fit wins; of equals, the first. */
export function findRoles(columns: readonly string[]): Roles {
  const found: Partial<Record<Role, number>> = {};
  const taken = new Set<number>();
  // A cell that begins like a number is no name; most rows are left here.
  const names = columns.map((name) => (/^[-+.\d]/.test(name) ? '' : plainName(name)));
  for (const role of Object.keys(words) as Role[]) {
    let best = 0;
    for (const [index, name] of names.entries()) {
      const score = taken.has(index) ? 0 : fit(name, role);
      if (score <= best) continue;
      best = score;
      found[role] = index;
    }
    if (found[role] !== undefined) taken.add(found[role]);
  }
  if (found.date !== undefined) {
    delete found.year;
    delete found.month;
    delete found.day;
  }
  return found;
}

/** Whether the roles hold a date, in one column or in three. */
export const hasDate = (roles: Roles): boolean =>
  roles.date !== undefined ||
  (roles.year !== undefined && roles.month !== undefined && roles.day !== undefined);

/** The unit of a temperature that a column name gives away. */
export function temperatureHint(name: string): TemperatureUnit | null {
  const text = name.normalize('NFKC').toLowerCase();
  if (/tenth|0[.,]1\s*°?\s*c|1\/10/.test(text)) return 'tenths-C';
  if (/°\s*f|[([_\s-]f[)\]]?$|fahrenheit/.test(text)) return 'F';
  return /°\s*c|[([_\s-]c[)\]]?$|celsius/.test(text) ? 'C' : null;
}

/** The unit of a depth of rain or snow that a column name gives away. */
export function depthHint(name: string): DepthUnit | null {
  const text = name.normalize('NFKC').toLowerCase();
  if (/tenth|0[.,]1\s*mm|1\/10/.test(text)) return 'tenths-mm';
  if (/[([_\s-]mm[)\]]?$|millimet/.test(text)) return 'mm';
  if (/[([_\s-]cm[)\]]?$|centimet/.test(text)) return 'cm';
  return /[([_\s-](in|inch|inches)[)\]]?$|inches/.test(text) ? 'in' : null;
}
