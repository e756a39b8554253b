import { readFileSync } from 'node:fs';

const prefix = '\0numbers:';
/** What is shown beside a figure and never reckoned with. */
const shownOnly = new Set(['note', 'source', 'seen', 'partBasis']);

/**
 * Spares browsers the notes and sources of the figures until a page shows them: what `figures.ts`
 * imports loses both on the way into the build. Outside the build the files are read whole.
 * @returns {import('vite').Plugin}
 */
export function numbersOnly() {
  return {
    name: 'numbers-only',
    enforce: 'pre',
    async resolveId(source, importer) {
      if (!source.endsWith('.json') || !importer?.endsWith('/shared/figures.ts')) return null;
      const found = await this.resolve(source, importer, { skipSelf: true });
      return found && `${prefix}${found.id}`;
    },
    load(id) {
      if (!id.startsWith(prefix)) return null;
      const file = id.slice(prefix.length);
      this.addWatchFile(file);
      const whole = JSON.parse(readFileSync(file, 'utf8'));
      const numbers = JSON.stringify(whole, (key, value) =>
        shownOnly.has(key) ? undefined : value,
      );
      return { code: `export default ${numbers};`, moduleType: 'js' };
    },
  };
}
