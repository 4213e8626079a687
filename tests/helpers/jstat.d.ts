/** The parts of the reference library that the tests compare with; it ships no types of its own. */
declare module 'jstat' {
  export const jStat: {
    readonly binomial: {
      pdf(k: number, n: number, p: number): number;
      cdf(k: number, n: number, p: number): number;
    };
    readonly beta: {
      cdf(x: number, a: number, b: number): number;
      pdf(x: number, a: number, b: number): number;
      inv(p: number, a: number, b: number): number;
    };
    readonly normal: {
      cdf(x: number, mean: number, sd: number): number;
      inv(p: number, mean: number, sd: number): number;
    };
    readonly studentt: { inv(p: number, freedom: number): number };
    betaln(a: number, b: number): number;
    combinationln(n: number, k: number): number;
  };
}
