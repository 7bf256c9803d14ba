/**
 * MurmurHash3_x86_32 of some bytes: 32 bits, well mixed, no secret kept.
 *
 * Source: Austin Appleby's SMHasher, MurmurHash3.cpp (public domain).
 */
export function murmurHash3(bytes: Uint8Array, seed: number): number {
  let hash = seed;
  const wholeWords = bytes.length & ~3;
  for (let at = 0; at < wholeWords; at += 4) {
    const word =
      bytes[at]! | (bytes[at + 1]! << 8) | (bytes[at + 2]! << 16) | (bytes[at + 3]! << 24);
    hash = rotateLeft(hash ^ scramble(word), 13);
    hash = (Math.imul(hash, 5) + 0xe6546b64) | 0;
  }
  let rest = 0;
  for (let at = bytes.length - 1; at >= wholeWords; at -= 1) rest = (rest << 8) | bytes[at]!;
  hash ^= scramble(rest) ^ bytes.length;
  hash = Math.imul(hash ^ (hash >>> 16), 0x85ebca6b);
  hash = Math.imul(hash ^ (hash >>> 13), 0xc2b2ae35);
  return (hash ^ (hash >>> 16)) >>> 0;
}

function scramble(word: number): number {
  return Math.imul(rotateLeft(Math.imul(word, 0xcc9e2d51), 15), 0x1b873593);
}

function rotateLeft(word: number, bits: number): number {
  return (word << bits) | (word >>> (32 - bits));
}
