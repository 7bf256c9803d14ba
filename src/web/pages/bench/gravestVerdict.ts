import type { VerdictWord } from '../../gql/graphql.js';

const byGravity: readonly VerdictWord[] = [
  'BELOW_LIMIT',
  'ABOVE_LIMIT',
  'WITHIN_LIMITS',
  'NO_LIMIT',
];

/** Of several readings of one part the one that says most against it; undefined for none. */
export const gravestVerdict = (words: readonly VerdictWord[]): VerdictWord | undefined =>
  byGravity.find((word) => words.includes(word)) ?? words[0];
