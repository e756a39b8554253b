/** Files of facts in this folder whose every word is held against types of the program. */
export const typedFacts = ['methods', 'steps'] as const;

/**
 * Facts as types of their own: what stands in a JSON file is "film" to the compiler, not any string,
 * so that a word the program does not know does not compile. What JSON writes is a type as it stands.
 * @param json the text of the file
 */
export const literalTypes = (json: string): string =>
  `// Written by \`npm run facts\`.\ndeclare const facts: ${JSON.stringify(JSON.parse(json))};\nexport default facts;\n`;
