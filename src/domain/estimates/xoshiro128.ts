/**
 * The pseudo-random generator xoshiro128** 1.1: each call gives the next of its 32-bit numbers.
 *
 * Source: D. Blackman and S. Vigna, xoshiro128starstar.c, https://prng.di.unimi.it/ (public domain).
 *
 * @param state four 32-bit words, not all of them 0.
 */
export function xoshiro128(state: readonly [number, number, number, number]): () => number {
  let [s0, s1, s2, s3] = state;
  return () => {
    const product = Math.imul(s1, 5);
    const result = Math.imul((product << 7) | (product >>> 25), 9) >>> 0;
    const shifted = s1 << 9;
    s2 ^= s0;
    s3 ^= s1;
    s1 ^= s2;
    s0 ^= s3;
    s2 ^= shifted;
    s3 = (s3 << 11) | (s3 >>> 21);
    return result;
  };
}
