const small = [
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen',
  'fifteen sixteen seventeen eighteen nineteen',
]
  .join(' ')
  .split(' ');
const tens = '  twenty thirty forty fifty sixty seventy eighty ninety'.split(' ');
const nameOf = (list: readonly string[], place: number): string => list[place] ?? '';

/** A whole number below a million in words. */
function wholeInWords(value: number): string {
  if (value < 20) return nameOf(small, value);
  if (value < 100) {
    const ones = value % 10;
    return nameOf(tens, Math.floor(value / 10)) + (ones ? `-${nameOf(small, ones)}` : '');
  }
  const [size, name] = value < 1000 ? [100, 'hundred'] : [1000, 'thousand'];
  const rest = value % size;
  const joint = rest === 0 ? '' : rest < 100 ? ' and ' : ' ';
  const more = rest ? wholeInWords(rest) : '';
  return `${wholeInWords(Math.floor(value / size))} ${name}${joint}${more}`;
}

const parts: Readonly<Record<string, string>> = {
  '25': 'a quarter',
  '5': 'a half',
  '75': 'three quarters',
};

/**
 * A number in words, for whoever has to say which of two they mean.
 * @param value from zero to below a million, with three decimals at most
 */
export function numberInWords(value: number): string {
  const [whole = '', decimals = ''] = String(value).split('.');
  const first = wholeInWords(Number(whole));
  if (!decimals) return first;
  const known = parts[decimals];
  if (known) return `${first} and ${known}`;
  return `${first} point ${[...decimals].map((digit) => nameOf(small, Number(digit))).join(' ')}`;
}
