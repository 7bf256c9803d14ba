import { createHash, randomBytes } from 'node:crypto';

export interface DrawnToken {
  /** Shown once and kept nowhere. */
  text: string;
  handle: string;
  digest: string;
}

const handleBytes = 6;
/** 256 bits: nobody guesses it, so a plain digest is enough and wrong guesses need no counting. */
const secretBytes = 32;

/** A new token: a word that scanners for lost secrets can look for, an open half, a secret half. */
export function drawToken(): DrawnToken {
  const handle = randomBytes(handleBytes).toString('hex');
  const text = `reglow_${handle}_${randomBytes(secretBytes).toString('base64url')}`;
  return { text, handle, digest: tokenDigest(text) };
}

export const tokenDigest = (text: string): string =>
  createHash('sha256').update(text, 'utf8').digest('hex');

/** @returns the open half, or null when this is no token of ours. */
export const handleOfToken = (text: string): string | null =>
  /^reglow_([0-9a-f]{12})_[\w-]{43}$/.exec(text)?.[1] ?? null;
