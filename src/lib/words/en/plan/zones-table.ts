/** What stands round a table of zones, pasted, read from a file or saved as one. */
export const zonesTableWords = {
  zone: 'Zone',
  place: 'No.',
  notSure: 'not sure',
  none: 'none',
  maybe: (name: string) => `maybe ${name}`,
  title: 'Zones from a table',
  line: 'Paste from a spreadsheet, or choose a file (CSV). The first row names the columns: “Zone” for the name, then questions in our words. An empty cell is no answer yet.',
  columns: 'Columns and what goes in them',
  label: 'Your table',
  file: 'Choose a file',
  preview: 'What we read',
  answers: (count: number) => (count === 1 ? '1 answer' : `${count} answers`),
  add: (count: number) => (count === 1 ? 'Add this zone' : `Add these ${count} zones`),
  empty: 'There is no zone in it yet. Below the row of names, each row is a zone.',
  unnamed: 'No name',
  wrong: (count: number) =>
    count === 1 ? '1 thing to mend before it can be added:' : `${count} things to mend first:`,
  more: (count: number) => `… and ${count} more.`,
  added: (count: number) => (count === 1 ? '1 zone added.' : `${count} zones added.`),
  save: 'Save the zones as a table (CSV)',
  cellOf: (row: number, column: string) => `Row ${row}, ${column}: `,
  columnOf: (column: number) => `Column ${column}: `,
  expected: (what: string) => `Expected ${what}.`,
  unread: (text: string) => `“${text}” cannot be read.`,
  expects: {
    one: (names: string) =>
      `one of: ${names}; or “not sure”. More than one possible? Put “;” between.`,
    many: (names: string) =>
      `any of: ${names}; with “;” between; or “none” or “not sure”. “maybe” goes before one you cannot tell.`,
    number: (unit: string, least: string, most: string) =>
      `a number in ${unit} from ${least} to ${most}, or “not sure”`,
    depth: (number: string, names: string) => `${number}, or one of: ${names}`,
    column: (names: string) => `“Zone” or a question: ${names}`,
    cells: 'no more cells than the first row has names',
    name: (most: number) => `a name of at most ${most} characters, without signs nobody can see`,
    once: 'each question once',
    zone: 'at least one question or “Zone” in the first row',
    zones: (most: string, left: string) =>
      `at most ${most} zones in a job; there is room for ${left}`,
    slab: (thickness: string) => `no more than the slab, which is ${thickness} thick`,
    ways: (one: string, other: string) => `${one} or ${other}: it can be read in two ways`,
    size: 'a table of at most 4 million characters',
  },
} as const;
