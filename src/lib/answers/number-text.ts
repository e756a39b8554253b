/**
 * Numbers as people write them: what a text can mean, before anybody asks whether it fits.
 * Which separator parts thousands and which decimals depends on where the reader comes from,
 * so nothing here assumes either.
 */

/** One way in which a text can be read. */
export interface Way {
  /** The same text, written so that it can be read in this way only. */
  readonly text: string;
  /** The number that could be read differently. */
  readonly number: number;
}

/** One to three digits, one separator, three digits: a thousand and more, or one and a bit. */
const twoWays = /(?<![\d.,]|\d )([1-9]\d{0,2})[.,](\d{3})(?![\d.,]| \d{3}(?!\d))/;

/** Digits that stand alone, without what could be read differently: "1.25", "1.2340" (never "1.234"). */
const decimalText = (whole: string, decimals: string): string => {
  const counted = decimals.replace(/0+$/, '');
  if (!counted) return whole;
  return `${whole}.${counted.length === 3 ? `${counted}0` : counted}`;
};

/** All ways to read a text: itself alone, or two for each number in it that can be read both ways. */
export function waysOf(text: string): readonly Way[] {
  const found = twoWays.exec(text);
  if (!found) return [{ text, number: NaN }];
  const [all, whole = '', decimals = ''] = found;
  const put = (digits: string): Way[] =>
    waysOf(text.replace(all, digits)).map((way) => ({ ...way, number: Number(digits) }));
  return [...put(whole + decimals), ...put(decimalText(whole, decimals))];
}

const signs: Readonly<Record<string, string>> = {
  '¼': '1/4',
  '½': '1/2',
  '¾': '3/4',
  '⅓': '1/3',
  '⅔': '2/3',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

/** Digits with their separators; null for what is no number. The last separator of two kinds is the decimal one. */
function digitsIn(text: string): number | null {
  const tight = text.trim().replace(/(\d) (?=\d{3}(?!\d))/g, '$1');
  if (/^(\d+[.,]?\d*|[.,]\d+)$/.test(tight)) return Number(tight.replace(',', '.'));
  if (/^\d{1,3}(,\d{3})+(\.\d*)?$/.test(tight)) return Number(tight.replaceAll(',', ''));
  if (/^\d{1,3}(\.\d{3})+(,\d*)?$/.test(tight))
    return Number(tight.replaceAll('.', '').replace(',', '.'));
  return null;
}

/**
 * The number a text is: "12.5", "12,5", "1 000", "1,250.50", "3/4", "1 1/2", "1½", "-4".
 * @param text read in one way only (see `waysOf`)
 * @returns null for what is no number
 */
export function numberIn(text: string): number | null {
  let plain = text.replace(/[\s\u00a0\u2007\u2009\u202f]+/g, ' ').replace('\u2212', '-');
  for (const [sign, fraction] of Object.entries(signs)) plain = plain.replace(sign, ` ${fraction}`);
  const parts = /^([+-]?) ?(?:(\d[\d ]*?) )??(?:(\d+) ?\/ ?(\d+))$/.exec(plain.trim());
  const [, sign = '', whole, top, bottom] = parts ?? /([+-]?) ?(.*)/.exec(plain.trim()) ?? [];
  const fraction = top === undefined ? 0 : Number(top) / Number(bottom);
  if (!Number.isFinite(fraction)) return null;
  const size = whole === undefined ? 0 : digitsIn(whole);
  return size === null ? null : sign === '-' ? -(size + fraction) : size + fraction;
}
