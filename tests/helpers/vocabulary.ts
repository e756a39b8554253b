import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';

/** A text of the site as it is written, and the file it stands in. */
export interface Written {
  readonly file: string;
  readonly text: string;
}

/** Sentences of a file of words: its strings and the fixed parts of its templates. */
function sentencesIn(file: string): Written[] {
  const source = ts.createSourceFile(file, readFileSync(file, 'utf8'), ts.ScriptTarget.Latest);
  const found: Written[] = [];
  const walk = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node)) return;
    if (ts.isStringLiteralLike(node)) found.push({ file, text: node.text });
    else if (ts.isTemplateExpression(node)) {
      const parts = [node.head.text, ...node.templateSpans.map(({ literal }) => literal.text)];
      found.push({ file, text: parts.join(' ') });
    }
    ts.forEachChild(node, walk);
  };
  walk(source);
  // A single word is an id or a label, and labels stand in sentences elsewhere.
  return found.filter(({ text }) => text.trim().includes(' '));
}

/** The body of an explainer without its tags and the addresses of its links. */
function explainerText(file: string): Written {
  const [, , ...body] = readFileSync(file, 'utf8').split('---');
  const text = body
    .join('---')
    .replace(/<[^>]+>/g, ' ')
    .replace(/\]\([^)]*\)/g, ']');
  return { file, text };
}

const filesIn = (folder: string, ending: string): string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith(ending))
    .map((path) => join(folder, path));

/** Every sentence of the site: `words/` and the explainers. */
export const written = (): readonly Written[] => [
  ...filesIn('src/lib/words/en', '.ts').flatMap(sentencesIn),
  ...filesIn('content/explainers', '.md').map(explainerText),
];

const endings: readonly (readonly [string, string])[] = [
  ['s', ''],
  ['es', ''],
  ['ies', 'y'],
  ['ed', ''],
  ['ed', 'e'],
  ['ied', 'y'],
  ['ing', ''],
  ['ing', 'e'],
  ['er', ''],
  ['er', 'e'],
  ['ers', ''],
  ['est', ''],
  ['ly', ''],
  ['y', ''],
];

/** A word and what it may be a form of. */
export function formsOf(word: string): readonly string[] {
  const doubled = /^(.+)(.)\2(?:ed|ing|er)$/.exec(word);
  return [
    word,
    ...endings
      .filter(([end]) => word.endsWith(end))
      .map(([end, to]) => word.slice(0, -end.length || undefined) + to),
    ...(doubled ? [`${doubled[1]}${doubled[2]}`] : []),
  ];
}

/** The words of a text in small letters, without genitives and numbers. */
export const wordsIn = (text: string): readonly string[] =>
  (text.match(/(?<![A-Za-z-])[A-Za-z][a-z]+(?:’[a-z]+)?/g) ?? []).map((word) =>
    word.toLowerCase().replace(/’s$/, '').replace('’', "'"),
  );
