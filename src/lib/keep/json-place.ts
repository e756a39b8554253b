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
  const before = text.slice(0, offset).split(/\r\n|\r|\n/);
  return { line: before.length, column: (before.at(-1) ?? '').length + 1 };
}
