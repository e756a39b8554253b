/** The number at the head of a spoken value, fractions and thousands read back. */
export function heard(text: string): number {
  const [, whole = '', top, bottom] =
    /^([\d,.]+(?= |$|%)(?! ?\/))?\s*(?:(\d+)\/(\d+))?/.exec(text) ?? [];
  return Number(whole.replaceAll(',', '') || 0) + (top ? Number(top) / Number(bottom) : 0);
}

/** Feet in "3 ft 7 1/4 in", "4 ft" or "11 3/4 in". */
export function onTape(text: string): number {
  const [, feet = '', inches = ''] = /^(?:([\d,]+) ft ?)?(?:(.+) in)?$/.exec(text) ?? [];
  return heard(feet || '0') + heard(inches || '0') / 12;
}
