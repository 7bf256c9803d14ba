import { createHash } from 'node:crypto';

/**
 * SHA-256 of what was sent under a key of the sender's own, to tell a repeat from another content.
 * Fields count by name, in whatever order; what is null and what is left out are the same.
 */
export const contentDigest = (content: object): string =>
  createHash('sha256')
    .update(JSON.stringify(content, (_name, value: unknown) => inOrder(value)))
    .digest('hex');

const inOrder = (value: unknown): unknown =>
  typeof value === 'object' && value !== null && !Array.isArray(value)
    ? Object.fromEntries(
        Object.entries(value)
          .filter(([, field]) => field !== null && field !== undefined)
          .sort(([left], [right]) => (left < right ? -1 : 1)),
      )
    : value;
