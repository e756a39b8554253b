/** A name from the middle of a sentence as it stands at the head of a line. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
