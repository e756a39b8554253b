import * as v from 'valibot';
import type { Entry } from '$lib/answers/readiness-record';
import { figures, rangeOf, type FigureId } from '$shared/figures';
import { bounds } from './bounds';
import { canBeSeen, type Expected } from './problem';

/**
 * The building blocks of the job file's shape. Every check carries what it expected as its
 * message, so that a refusal can say it; `refusal.ts` reads it back.
 */
export const says = (expected: Expected): string => JSON.stringify(expected);

type Run = { '~run': (dataset: { value: unknown }, config: never) => unknown };

/** The same schema behind a cheap look at the value: what fails the look is not gone through. */
export function behind<S extends Run>(schema: S, passes: (value: unknown) => boolean): S {
  const run: Run['~run'] = (dataset, config) =>
    schema['~run'](passes(dataset.value) ? dataset : { value: undefined }, config);
  return { ...schema, '~run': run };
}

/** An object with these fields and no other. Lists are not objects here. */
export function object<const E extends v.ObjectEntries>(entries: E) {
  const expected = says({ id: 'object', fields: Object.keys(entries) });
  return behind(v.strictObject(entries, expected), (value) => !Array.isArray(value));
}

/** A list of at most `most` items; a longer one is refused before its items are looked at. */
export function list<const S extends v.GenericSchema>(item: S, most: number) {
  const expected = says({ id: 'list', most });
  return v.pipe(
    behind(v.array(item, expected), (value) => Array.isArray(value) && value.length <= most),
    v.maxLength(most, expected),
  );
}

/** Nothing twice. */
export const unique = <T>() =>
  v.check<T[], string>((items) => new Set(items).size === items.length, says({ id: 'unique' }));

export const picked = <const C extends string>(choices: readonly C[], expected: Expected) =>
  v.picklist(choices, says(expected));

/** A number within a range, both ends included. Minus zero is read as zero. */
export const within = ([low, high]: readonly [number, number], expected: Expected) =>
  v.pipe(
    v.number(says(expected)),
    v.minValue(low, says(expected)),
    v.maxValue(high, says(expected)),
    v.transform((value) => value + 0),
  );

/** A whole number within a range. */
export const whole = ([low, high]: readonly [number, number]) => {
  const expected = says({ id: 'count', range: [low, high] });
  return v.pipe(
    v.number(expected),
    v.integer(expected),
    v.minValue(low, expected),
    v.maxValue(high, expected),
    v.transform((value) => value + 0),
  );
};

/** An amount of the trade, within its own limits. */
export const measured = (limit: FigureId) => {
  const range = rangeOf(limit);
  return within(range, { id: 'amount', unit: figures[limit].unit, range });
};

/**
 * A name a reader typed. Control characters, line ends, half characters and the characters that
 * turn the direction of the text round are refused rather than taken out: a name comes back
 * exactly as it was saved, and nobody types these. Marks that right-to-left and joined scripts
 * need (U+200C to U+200F) stay. So does a name of spaces alone, which is soon typed; one that is
 * made of other things nobody can see is refused.
 */
export const name = v.pipe(
  v.string(says({ id: 'name', most: bounds.nameLength })),
  v.regex(
    new RegExp(
      `^[^\\u0000-\\u001f\\u007f-\\u009f\\u2028-\\u202e\\u2066-\\u2069\\ud800-\\udfff]{0,${bounds.nameLength}}$`,
      'u',
    ),
    says({ id: 'name', most: bounds.nameLength }),
  ),
  v.check((text) => /^ *$/.test(text) || canBeSeen(text), says({ id: 'seen' })),
);

/** Names every object inherits; an id among them could be mistaken for a field that is there. */
const inherited = Object.getOwnPropertyNames(Object.prototype);

/** A zone's id: letters, digits, dot, dash, underscore. */
export const zoneId = v.pipe(
  v.string(says({ id: 'zone-id', most: bounds.idLength })),
  v.regex(
    new RegExp(`^[A-Za-z0-9][A-Za-z0-9._-]{0,${bounds.idLength - 1}}$`),
    says({ id: 'zone-id', most: bounds.idLength }),
  ),
  v.notValues(inherited, says({ id: 'zone-id', most: bounds.idLength })),
);

const entryExpected = { id: 'entry', most: bounds.nameLength } as const;

/**
 * A value as the reader typed it: a number, or the text that could not be read as one. Whoever
 * reads it says what is wrong with it; refusing the file for it would lose the rest.
 */
export const entry: v.GenericSchema<Entry, Entry> = v.union(
  [within([-bounds.entry, bounds.entry], entryExpected), name],
  says(entryExpected),
);
