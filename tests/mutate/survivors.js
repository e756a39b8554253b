/**
 * Writes each change that no test noticed in one line, as soon as it is known.
 * Plain JavaScript: the tool loads it in a process that reads nothing else.
 */
class Survivors {
  /**
   * @typedef {{ line: number, column: number }} Place
   * @param {{ status: string, fileName: string, location: { start: Place, end: Place }, mutatorName: string, replacement?: string }} result
   */
  onMutantTested({ status, fileName, location: { start, end }, mutatorName, replacement }) {
    if (status !== 'Survived' && status !== 'NoCoverage') return;
    const file = fileName.replace(/^.*\/src\//, 'src/');
    const place = `${file}:${start.line}:${start.column}-${end.line}:${end.column}`;
    console.log(`${status} ${place} ${mutatorName} ${replacement?.replace(/\s+/g, ' ')}`);
  }
}

export const strykerPlugins = [{ kind: 'Reporter', name: 'survivors', injectableClass: Survivors }];
