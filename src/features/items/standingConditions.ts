import { argumentProblem } from '../../api/kit/argumentProblem.js';
import type { Condition } from '../../api/kit/conditions.js';
import { parseAmount } from '../../domain/money/parseAmount.js';
import { currencyExponent } from '../money/currencyExponent.js';
import { readinessRanks } from '../standing/writeStandings.js';
import type { CostRangeInput, ItemFilter } from './itemFilter.inputs.js';
import {
  completionBasisPoints,
  costMinorUnits,
  investedSeconds,
  readinessRank,
} from './standingColumns.js';

const basisPoints = 10_000;
const secondsPerHour = 3600;
/** A million hours are more than a century. */
const mostHours = 500_000;

/** Conditions on how an item stands. @throws GraphQLError for a range that makes no sense. */
export function standingConditions(filter: ItemFilter, nowMs: number): Condition[] {
  const { completionAtLeast, completionAtMost, hoursAtLeast, hoursAtMost } = filter;
  const isComplete = [
    ...bound(completionBasisPoints, '>=', scaled('completionAtLeast', completionAtLeast, 1)),
    ...bound(completionBasisPoints, '<=', scaled('completionAtMost', completionAtMost, 1)),
  ];
  const hasTasks = { sql: `${completionBasisPoints} >= 0`, parameters: [] };
  return [
    ...(filter.readiness ? [isReadyTo(filter.readiness, nowMs)] : []),
    ...(isComplete.length > 0 ? [hasTasks, ...isComplete] : []),
    ...bound(investedSeconds, '>=', scaled('hoursAtLeast', hoursAtLeast, mostHours)),
    ...bound(investedSeconds, '<=', scaled('hoursAtMost', hoursAtMost, mostHours)),
    ...(filter.cost ? costs(filter.cost) : []),
  ];
}

const bound = (expression: string, sign: '>=' | '<=', value: number | null): Condition[] =>
  value === null ? [] : [{ sql: `${expression} ${sign} ?`, parameters: [value] }];

/** A share in basis points, or hours in seconds. */
function scaled(
  name: `${'completion' | 'hours'}${string}`,
  value: number | null | undefined,
  most: number,
): number | null {
  if (value === null || value === undefined) return null;
  if (value < 0 || value > most) throw argumentProblem(`"${name}" must be from 0 to ${most}.`);
  return Math.round(value * (name.startsWith('hours') ? secondsPerHour : basisPoints));
}

function isReadyTo(levels: NonNullable<ItemFilter['readiness']>, nowMs: number): Condition {
  const rank = readinessRank(nowMs);
  const ranks = [...new Set(levels)].map((level) => readinessRanks[level]);
  // Whole numbers of our own, so they may stand in the statement.
  return { sql: `${rank.sql} IN (${[-2, ...ranks].join(', ')})`, parameters: rank.parameters };
}

function costs({ currency, atLeast, atMost }: CostRangeInput): Condition[] {
  const cost = costMinorUnits(currency);
  const compared = (sign: '>=' | '<=', minorUnits: number): Condition => ({
    sql: `${cost.sql} ${sign} ?`,
    parameters: [...cost.parameters, minorUnits],
  });
  const given = (amount: string | null | undefined, sign: '>=' | '<='): Condition[] =>
    typeof amount === 'string' ? [compared(sign, minorUnitsOf(amount, currency))] : [];
  return [compared('>=', 0), ...given(atLeast, '>='), ...given(atMost, '<=')];
}

function minorUnitsOf(amount: string, currency: string): number {
  const exponent = currencyExponent(currency);
  if (exponent === null) throw argumentProblem(`"${currency}" is not a currency of ISO 4217.`);
  const parsed = parseAmount(amount, exponent);
  if (parsed.kind === 'amount') return parsed.minorUnits;
  throw argumentProblem(parsed.why);
}
