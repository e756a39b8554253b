import { cpSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { filesIn } from '../helpers/texts';
import { pseudo } from './rule';

/** What stands in Markdown and is not read: tags, targets of links. */
const notRead = /(<[^>]+>|\]\([^)]*\))/;
const spokenInHead = /^(?:title|summary): /;

const turnedMarkdown = (text: string): string =>
  text
    .split(notRead)
    .map((part, place) => (place % 2 ? part.replace(/(?<=caption=")[^"]*/g, pseudo) : pseudo(part)))
    .join('');

function turnedExplainer(text: string): string {
  const [, head = '', body = ''] = /^---\n([\s\S]*?)\n---\n([\s\S]*)$/.exec(text) ?? [];
  const lines = head
    .split('\n')
    .map((line) =>
      line.replace(/^([a-z]+: )(.*)$/, (whole, name: string, value: string) =>
        spokenInHead.test(name) ? name + pseudo(value) : whole,
      ),
    );
  return `---\n${lines.join('\n')}\n---\n${turnedMarkdown(body)}`;
}

/** A copy of data in which the texts under some names are in the pseudo-language. */
function turnedData(value: unknown, names: ReadonlySet<string>, inside = false): unknown {
  if (typeof value === 'string') return inside ? pseudo(value) : value;
  if (Array.isArray(value)) return value.map((each) => turnedData(each, names, inside));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([name, each]) => [name, turnedData(each, names, names.has(name))]),
  );
}

/** The texts under some names alone, at their places; undefined where there is none. */
function textsOf(value: unknown, names: ReadonlySet<string>, inside = false): unknown {
  if (typeof value === 'string') return inside ? pseudo(value) : undefined;
  if (typeof value !== 'object' || value === null) return undefined;
  const found = Object.entries(value)
    .map(([name, each]) => [name, textsOf(each, names, names.has(name))] as const)
    .filter(([, each]) => each !== undefined);
  return found.length ? Object.fromEntries(found) : undefined;
}

const read = (path: string): unknown => JSON.parse(readFileSync(path, 'utf8'));
function write(path: string, text: string) {
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, text);
}

const spoken = new Set(['title', 'text', 'senior']);
const terms = new Set(['term', 'forms', 'near', 'unless', 'says']);

/**
 * Writes what lies in `content/`, and what is said in the facts and the examples, into a folder in
 * the pseudo-language.
 */
export function writeContent(to: string): void {
  for (const path of filesIn('content/explainers', '.md'))
    write(path.replace('content', to), turnedExplainer(readFileSync(path, 'utf8')));
  for (const path of filesIn('content/practice', '.json'))
    write(path.replace('content', to), JSON.stringify(turnedData(read(path), spoken)));
  write(`${to}/glossary.json`, JSON.stringify(turnedData(read('content/glossary.json'), terms)));
  cpSync('content/search-words.json', `${to}/search-words.json`);
  for (const path of filesIn('shared', '.json')) {
    const texts = textsOf(read(path), new Set(['note', 'looked']));
    if (texts) write(`${to}/facts/${path}`, JSON.stringify(texts));
  }
  for (const path of filesIn('src/lib/keep/demos', '.json'))
    write(`${to}/facts/${path}`, JSON.stringify(textsOf(read(path), new Set(['name']))));
}
