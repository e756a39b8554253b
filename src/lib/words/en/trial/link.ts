/** On the link of a settled zone to the page on which its method is tried. */
export const toTrial = 'Try a small square first';
/** The same where somebody else does the work. */
export const toTrialOfCrew = 'What a crew tries on a small square first';
