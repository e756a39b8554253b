/** Whole things counted: "1 zone", "3 zones". */
export const count = (number: number, one: string, many: string): string =>
  number === 1 ? `1 ${one}` : `${number} ${many}`;
