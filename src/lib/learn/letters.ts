/** Something in a list by the alphabet; the first under a letter is led to by that letter. */
interface Listed {
  readonly id: string;
}

/** The letters a list begins with, each with the first entry under it. The list is in order already. */
export function lettersOf<T extends Listed>(
  list: readonly T[],
  nameOf: (entry: T) => string,
): readonly { readonly to: string; readonly name: string }[] {
  const first = new Map<string, string>();
  for (const entry of list) {
    const letter = nameOf(entry).normalize('NFD').charAt(0).toUpperCase();
    if (!first.has(letter)) first.set(letter, entry.id);
  }
  return [...first].map(([name, to]) => ({ to, name }));
}
