import { murmurHash3 } from './murmurHash3.js';
import { xoshiro128 } from './xoshiro128.js';

export interface SeededRandom {
  /** The next number strictly between 0 and 1, on a grid of 2^-32. */
  nextUniform(): number;
  /** The next numbers, one for each place. */
  fill(row: Float64Array): void;
}

/**
 * A stream of numbers that the same seed always repeats: xoshiro128**, whose four words of state
 * are MurmurHash3_x86_32 of the seed's UTF-8 bytes with the hash seeds 0, 1, 2 and 3.
 */
export function seededRandom(seed: string): SeededRandom {
  const bytes = new TextEncoder().encode(seed);
  // A state of zeros alone would stay at zero for ever.
  const next = xoshiro128([
    murmurHash3(bytes, 0) || 1,
    murmurHash3(bytes, 1),
    murmurHash3(bytes, 2),
    murmurHash3(bytes, 3),
  ]);
  const nextUniform = () => (next() + 0.5) / 2 ** 32;
  return {
    nextUniform,
    fill(row) {
      for (let place = 0; place < row.length; place += 1) row[place] = nextUniform();
    },
  };
}
