/** A text as the beginning of a sentence. */
export const capitalised = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** A sentence as it goes on after a colon. */
export const lowered = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);
