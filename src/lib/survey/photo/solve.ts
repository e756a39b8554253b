/**
 * Solves a square system of linear equations by elimination with pivoting.
 * @param rows each the coefficients of one equation, with its right side last
 * @returns the unknowns, or null where they are not fixed
 */
export function solve(rows: readonly (readonly number[])[]): readonly number[] | null {
  const left = rows.map((row) => [...row]);
  const size = left.length;
  for (let column = 0; column < size; column += 1) {
    const pivot = left
      .slice(column)
      .reduce((best, row) =>
        Math.abs(row[column] as number) > Math.abs(best[column] as number) ? row : best,
      );
    const divisor = pivot[column] as number;
    if (!(Math.abs(divisor) > 1e-10)) return null;
    left.splice(left.indexOf(pivot), 1);
    left.splice(column, 0, pivot);
    for (const row of left) {
      if (row === pivot) continue;
      const factor = (row[column] as number) / divisor;
      for (let at = column; at <= size; at += 1)
        row[at] = (row[at] as number) - factor * (pivot[at] as number);
    }
  }
  return left.map((row, index) => (row[size] as number) / (row[index] as number));
}
