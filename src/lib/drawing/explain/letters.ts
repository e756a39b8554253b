/** Width of the drawings of the explainers, and roughly of a letter in them at the larger phone size. */
export const sheetWidth = 360;
export const letterWidth = 13.5 * 0.55;
