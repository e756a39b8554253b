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
  let line = 1;
  let start = 0;
  for (let at = text.indexOf('\n'); at !== -1 && at < offset; at = text.indexOf('\n', at + 1)) {
    line += 1;
    start = at + 1;
  }
  return { line, column: offset - start + 1 };
}
