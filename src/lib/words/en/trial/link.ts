/** On the link of a settled zone to the page on which its method is tried. */
export const toTrial = 'Try a small square first';
