import { describe, expect, it } from 'vitest';
import { murmurHash3 } from '../../src/domain/estimates/murmurHash3.js';
import { seededRandom } from '../../src/domain/estimates/seededRandom.js';
import { xoshiro128 } from '../../src/domain/estimates/xoshiro128.js';

it('xoshiro128** gives the output of its authors’ xoshiro128starstar.c 1.1 from 1, 2, 3, 4', () => {
  // As kept by the Rust project's rand_xoshiro, made with https://prng.di.unimi.it/.
  const next = xoshiro128([1, 2, 3, 4]);
  expect(Array.from({ length: 10 }, next)).toEqual([
    11520, 0, 5927040, 70819200, 2031721883, 1637235492, 1287239034, 3734860849, 3729100597,
    4258142804,
  ]);
});

describe('MurmurHash3_x86_32', () => {
  it.each([
    ['', 0, 0],
    ['', 1, 0x514e28b7],
    ['', 0xffffffff, 0x81f16f39],
    ['aaaa', 0x9747b28c, 0x5a97808a],
    ['abc', 0x9747b28c, 0xc84a62dd],
    ['Hello, world!', 0x9747b28c, 0x24884cba],
    ['The quick brown fox jumps over the lazy dog', 0x9747b28c, 0x2fa826cd],
  ])('of "%s" with seed %d is as commonly published', (text, seed, hash) => {
    expect(murmurHash3(new TextEncoder().encode(text), seed)).toBe(hash);
  });

  it('passes the verification of its author’s SMHasher (0xB0F57EE3, main.cpp; from memory)', () => {
    const results = new Uint8Array(4 * 256);
    for (let length = 0; length < 256; length += 1) {
      const key = Uint8Array.from({ length }, (_, index) => index);
      new DataView(results.buffer).setUint32(4 * length, murmurHash3(key, 256 - length), true);
    }
    expect(murmurHash3(results, 0)).toBe(0xb0f57ee3);
  });
});

describe('a seeded stream', () => {
  const draw = (seed: string, count: number) => {
    const random = seededRandom(seed);
    return Array.from({ length: count }, () => random.nextUniform());
  };

  it('repeats itself, and another seed gives another', () => {
    expect(draw('rig 7', 50)).toEqual(draw('rig 7', 50));
    expect(draw('rig 7', 50)).not.toEqual(draw('rig 8', 50));
  });

  it('is even between 0 and 1 and has nothing to do with its neighbour', () => {
    const count = 20_000;
    const one = draw('task 1', count);
    const other = draw('task 2', count);
    const bins = new Array<number>(20).fill(0);
    for (const value of one) bins[Math.floor(value * 20)]! += 1;
    const chiSquare = bins.reduce((sum, n) => sum + (n - count / 20) ** 2 / (count / 20), 0);
    // The 0.999 quantile of chi square with 19 degrees of freedom, from the usual tables (memory).
    expect(chiSquare).toBeLessThan(43.82);
    const covariance = one.reduce((sum, x, i) => sum + (x - 0.5) * (other[i]! - 0.5), 0) / count;
    expect(Math.abs(covariance * 12)).toBeLessThan(4 / Math.sqrt(count));
  });
});
