/** The part of the reference library that the checks use; it ships no types. */
declare module 'jstat' {
  const jstat: {
    readonly studentt: { inv(probability: number, degrees: number): number };
    readonly normal: {
      inv(probability: number, mean: number, deviation: number): number;
      pdf(value: number, mean: number, deviation: number): number;
    };
    readonly lognormal: {
      inv(probability: number, mu: number, sigma: number): number;
      pdf(value: number, mu: number, sigma: number): number;
    };
    mean(values: readonly number[]): number;
    stdev(values: readonly number[], sample: boolean): number;
  };
  export default jstat;
}
