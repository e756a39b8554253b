/** The part of the reference library that the checks use; it ships no types. */
declare module 'jstat' {
  const jstat: {
    readonly studentt: { inv(probability: number, degrees: number): number };
    mean(values: readonly number[]): number;
    stdev(values: readonly number[], sample: boolean): number;
  };
  export default jstat;
}
