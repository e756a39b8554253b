import type { BaseIssue } from 'valibot';
import { describe, harmless, pathOf, type Expected, type Found, type Problem } from './problem';

const get = (value: unknown, key: string | number): unknown =>
  typeof value === 'object' && value !== null && Object.hasOwn(value, key)
    ? (value as Record<string | number, unknown>)[key]
    : undefined;

/** The first refusal of a shape as a problem. `root` is the value that was read. */
export function problemOf(issue: BaseIssue<unknown>, root: unknown): Problem {
  const keys = (issue.path ?? []).map(({ key }) => key as string | number);
  const said = JSON.parse(issue.message) as Expected;
  const at = (upTo: readonly (string | number)[]) => upTo.reduce<unknown>(get, root);

  if (issue.type === 'strict_object' && said.id === 'object' && issue.expected !== 'Object') {
    const field = String(keys.at(-1));
    return issue.expected === 'never'
      ? {
          path: pathOf(keys),
          expected: { id: 'known-field', fields: said.fields },
          found: { id: 'field', field: harmless(field) },
        }
      : { path: pathOf(keys), expected: { id: 'field', field }, found: { id: 'nothing' } };
  }
  const place = closer(keys, said, at(keys));
  return { path: pathOf(place.keys), expected: place.expected, found: place.found };
}

/** Goes on to the first wrong item of a list of choices, or the first wrong field of `{yes, maybe}`. */
function closer(
  keys: readonly (string | number)[],
  said: Expected,
  value: unknown,
): { keys: readonly (string | number)[]; expected: Expected; found: Found } {
  if (Array.isArray(value) && 'choices' in said) {
    const wrong = value.findIndex((item) => !said.choices.includes(item));
    if (wrong >= 0)
      return { keys: [...keys, wrong], expected: said, found: describe(value[wrong]) };
  } else if (said.id === 'choices' && typeof value === 'object' && value !== null) {
    for (const [field, part] of Object.entries(value)) {
      const inside = [...keys, field];
      if (field !== 'yes' && field !== 'maybe')
        return {
          keys: inside,
          expected: { id: 'known-field', fields: ['yes', 'maybe'] },
          found: { id: 'field', field: harmless(field) },
        };
      const list: Expected = { id: 'names', choices: said.choices };
      if (!Array.isArray(part) || part.some((item) => !said.choices.includes(item)))
        return closer(inside, list, part);
    }
  }
  return { keys, expected: said, found: describe(value) };
}
