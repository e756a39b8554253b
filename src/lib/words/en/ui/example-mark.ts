/** How the name of every example job ends: by it the site knows one. */
export const exampleMark = '(invented example)';
