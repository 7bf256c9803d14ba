import type { ReadingTier, TypedLimitFragment, VerdictWord } from '../../gql/graphql.js';
import { typedNumber } from '../../locale/typedNumber.js';
import { ucumUnit } from '../../locale/ucumUnit.js';

interface Typed {
  quantity: string;
  unit: string;
  tier: ReadingTier;
  value: string;
}

/**
 * What the limits will say of a value while it is typed. A word in advance: the verdict that counts
 * is the program's, which also converts units.
 * @returns null when no number is typed, or when the limit is in another unit
 */
export function typedVerdict(
  typed: Typed,
  limits: readonly TypedLimitFragment[],
): VerdictWord | null {
  const number = typedNumber(typed.value);
  if (number === null) return null;
  const applying = limits.filter(
    ({ quantity, tier }) =>
      sameName(quantity, typed.quantity) && (tier === null || tier === typed.tier),
  );
  if (applying.length === 0) return 'NO_LIMIT';
  if (applying.some(({ unit }) => unit !== ucumUnit(typed.unit))) return null;
  const value = Number(number);
  if (applying.some(({ lower }) => lower !== null && value < Number(lower))) return 'BELOW_LIMIT';
  if (applying.some(({ upper }) => upper !== null && value > Number(upper))) return 'ABOVE_LIMIT';
  return 'WITHIN_LIMITS';
}

const sameName = (one: string, other: string): boolean => nameOf(one) === nameOf(other);

const nameOf = (name: string): string => name.trim().replace(/\s+/g, ' ').toLowerCase();
