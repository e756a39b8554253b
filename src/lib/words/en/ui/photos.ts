/** The way to the photos of a zone, from other pages. */
export const photoLinks = {
  link: 'Photos',
  linkOf: (zone: string) => `Photos of ${zone}`,
} as const;
