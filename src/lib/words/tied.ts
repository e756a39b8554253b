/** The same text with its last word tied to the one before: a unit never stands on a line of its own. */
export const lastTied = (text: string): string => text.replace(/ (?=\S+$)/, '\u00A0');
