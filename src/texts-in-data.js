import { existsSync, readFileSync } from 'node:fs';
import { relative, resolve } from 'node:path';
import { contentFolder, language } from './language.js';

/** Data with texts in it, and under what names they stand: notes of the facts, names in the example jobs. */
const speaking = [
  { folder: 'shared/', names: ['note', 'looked'] },
  { folder: 'src/lib/keep/demos/', names: ['name'] },
];

/**
 * The data with the texts of the language at the same places.
 * @param {any} value
 * @param {any} texts
 * @param {readonly string[]} names under what names every text has to have its counterpart
 * @param {string} place
 * @returns {unknown}
 * @throws Error where a text has no counterpart: nothing falls back to English unseen.
 */
function laidOver(value, texts, names, place) {
  if (typeof value !== 'object' || value === null) return value;
  const turned = Object.entries(value).map(([key, each]) => {
    const text = texts?.[key];
    if (!names.includes(key) || typeof each !== 'string')
      return [key, laidOver(each, text, names, `${place}/${key}`)];
    if (typeof text !== 'string')
      throw new Error(`${place}/${key}: expected a text in ${language}`);
    return [key, text];
  });
  return Array.isArray(value) ? turned.map(([, each]) => each) : Object.fromEntries(turned);
}

/**
 * Gives the texts in data the language of the build: another language than English has them in
 * `content/…/facts`, under the path of the file they belong to, each at its place.
 * @returns {import('vite').Plugin}
 */
export function textsInData() {
  return {
    name: 'texts-in-data',
    enforce: 'pre',
    load(id) {
      const path = relative(resolve('.'), id);
      const kind = speaking.find(({ folder }) => path.startsWith(folder));
      if (language === 'en' || !kind || !path.endsWith('.json')) return null;
      const own = `${contentFolder}/facts/${path}`;
      const texts = existsSync(own) ? JSON.parse(readFileSync(own, 'utf8')) : undefined;
      const data = JSON.parse(readFileSync(id, 'utf8'));
      return JSON.stringify(laidOver(data, texts, kind.names, path));
    },
  };
}
