/** The little that the tests use of a package that has no types of its own. */
declare module 'jstat' {
  interface Distribution {
    inv(probability: number, ...parameters: number[]): number;
    pdf(at: number, ...parameters: number[]): number;
  }
  const jstat: Record<'beta' | 'lognormal' | 'normal' | 'triangular', Distribution>;
  export = jstat;
}
