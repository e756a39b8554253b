import { readdirSync, readFileSync } from 'node:fs';

/** A text that readers see, and the file it stands in. */
export interface Written {
  readonly file: string;
  readonly text: string;
}

/** The files of a folder and those below it that end so, by name. */
export const filesIn = (folder: string, ending: string): string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith(ending))
    .map((path) => `${folder}/${path}`)
    .sort();

/** The texts between quotes of a source file: no comment, no import, no id of one word in lower case. */
function quoted(source: string): string[] {
  const code = source
    .replace(/\/\*[\s\S]*?\*\//g, '')
    .replace(/^\s*\/\/.*$/gm, '')
    .replace(/^import [\s\S]*?;$/gm, '');
  const found = [
    ...code.matchAll(/'((?:[^'\\\n]|\\.)*)'|`((?:[^`\\]|\\.)*)`|"((?:[^"\\\n]|\\.)*)"/g),
  ];
  return found
    .map(([, one, two, three]) => (one ?? two ?? three ?? '').replace(/\$\{[^}]*\}/g, '#'))
    .filter((text) => !/^[a-z0-9.-]*$/.test(text));
}

/** Every text in `words/`, as it is written. */
export const wordsWritten = (): Written[] =>
  filesIn('src/lib/words/en', '.ts').flatMap((file) =>
    quoted(readFileSync(file, 'utf8')).map((text) => ({ file, text })),
  );

/** Texts in JSON under names that are read by people. */
function spokenIn(value: unknown, names: ReadonlySet<string>): string[] {
  if (Array.isArray(value)) return value.flatMap((each) => spokenIn(each, names));
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([name, each]) =>
    typeof each === 'string' ? (names.has(name) ? [each] : []) : spokenIn(each, names),
  );
}
const readByPeople = new Set(['title', 'text', 'senior', 'term', 'says']);

/** Every text in `content/`: the explainers without what their heads hold for the machine, terms, cases. */
export function contentWritten(): Written[] {
  const pages = filesIn('content/explainers', '.md').map((file) => ({
    file,
    text: readFileSync(file, 'utf8')
      .replace(/^(?:group|readers|sources|related|reviewed|covers): .*$/gm, '')
      .replace(/<[^>]+>/g, '#')
      .replace(/\]\([^)]*\)/g, ']'),
  }));
  const others = [...filesIn('content/practice', '.json'), 'content/glossary.json'].flatMap(
    (file) =>
      spokenIn(JSON.parse(readFileSync(file, 'utf8')), readByPeople).map((text) => ({
        file,
        text,
      })),
  );
  return [...pages, ...others];
}
