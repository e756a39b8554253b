import { visit } from 'jsonc-parser';

/**
 * Where a text stops being JSON. The platform's own parser says so in some browsers only.
 * @returns line and column from 1, or nothing where the place could not be told
 */
export function placeOfError(text: string): { line: number; column: number } | undefined {
  let offset: number | undefined;
  visit(
    text,
    { onError: (_code, at) => (offset ??= at) },
    { disallowComments: true, allowTrailingComma: false },
  );
  if (offset === undefined) return undefined;
  return placeAt(text, offset);
}

function placeAt(text: string, offset: number): { line: number; column: number } {
  let line = 1;
  let start = 0;
  for (let at = text.indexOf('\n'); at !== -1 && at < offset; at = text.indexOf('\n', at + 1)) {
    line += 1;
    start = at + 1;
  }
  return { line, column: offset - start + 1 };
}

/** The first field that stands twice in one object: the way to it, and where it stands again, from 1. */
export function placeOfRepeat(
  text: string,
): { keys: (string | number)[]; line: number; column: number } | undefined {
  let found: { keys: (string | number)[]; offset: number } | undefined;
  const seen: Set<string>[] = [];
  visit(text, {
    onObjectBegin: () => void seen.push(new Set()),
    onObjectEnd: () => void seen.pop(),
    onObjectProperty: (name, offset, _length, _line, _column, path) => {
      if (!found && seen.at(-1)?.has(name)) found = { keys: [...path(), name], offset };
      seen.at(-1)?.add(name);
    },
  });
  return found && { keys: found.keys, ...placeAt(text, found.offset) };
}
