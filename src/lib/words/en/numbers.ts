import type { NumberMessages } from '$lib/words/types';

/** What is wrong with a typed number, in English. Each says what to do; what was typed stays in the field. */
export const numberMessages: NumberMessages = {
  empty: 'Type a number, or choose “Not sure”.',
  notNumber: (typed) =>
    `“${typed}” is not a number. Type digits, with a point or a comma for decimals: 12.5.`,
  twoWays: (typed) => `“${typed}” can be read in two ways. Which one do you mean?`,
  notWhole: 'Type a whole number, such as 3.',
  aboveZero: 'Type a number above zero.',
  otherUnit: (unit) => `That unit does not measure this. Type the number in ${unit}.`,
  negative: 'A size cannot be less than zero. Take the minus sign away.',
  tooSmall: (least) => `That is very small. Type ${least} or more, and check the unit.`,
  tooLarge: (most) => `That is very large. Type ${most} or less, and check the unit.`,
  deeperThanSlab: (thickness) =>
    `That is deeper than the slab, which you said is ${thickness} thick. Change the depth or the thickness. If the damage goes all the way, choose “Right through”.`,
};
