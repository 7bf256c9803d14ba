import type { ApiContext } from '../../api/kit/apiContext.js';
import type { Relation } from '../../api/kit/typeReads.js';
import type { ReadinessLevel } from '../../domain/readiness/readinessLevel.js';
import { moneyAmount } from '../money/moneyAmount.js';
import {
  readCostSums,
  readHourSums,
  readReadinessCounts,
  readSessionCounts,
  readWorkSums,
} from './collectionStanding.reads.js';
import { hourSums } from './hourSums.js';
import { remainingOfSums } from './remainingOfSums.js';
import { hundredths, shownBasis } from './standingFacts.js';
import { readinessRanks } from './writeStandings.js';

/** A figure of the collection as a whole. */
const ofCollection =
  (compute: (context: ApiContext) => Promise<object>): Relation =>
  async (context, parents) => {
    const value = await compute(context);
    return { values: parents.map(() => value), children: [], childType: null };
  };

export const standingRelationsOfCollection: Record<string, Relation> = {
  hours: ofCollection(hours),
  completion: ofCollection(completion),
  remaining: ofCollection(async ({ database, nowMs }) =>
    remainingOfSums(await readWorkSums(database.reader), nowMs),
  ),
  completeness: ofCollection(completeness),
  cost: ofCollection(cost),
  readiness: ofCollection(readiness),
};

async function hours({ database: { reader }, nowMs }: ApiContext) {
  const sums = await readHourSums(reader);
  const { running, sessions = 0, repeatedSeconds = 0 } = await readSessionCounts(reader);
  return {
    ...hourSums(sums),
    repeatedSeconds,
    repeatedHours: hundredths(repeatedSeconds / 3600),
    runningSince: running,
    basis: shownBasis(
      {
        method:
          'The hours of every item, past ones too. A minute of one person counts once in the whole collection, for the session that started first.',
        counted: [
          { what: 'finished sessions', count: sessions },
          { what: 'running timers not yet counted', count: running.length },
        ],
      },
      nowMs,
    ),
  };
}

async function completion({ database, nowMs }: ApiContext) {
  const sums = await readWorkSums(database.reader);
  const { budgetedMinutes, earnedMinutes } = sums;
  return {
    share:
      budgetedMinutes === 0
        ? null
        : Math.round((earnedMinutes / budgetedMinutes) * 10_000) / 10_000,
    budgetedHours: hundredths(budgetedMinutes / 60),
    earnedHours: hundredths(earnedMinutes / 60),
    basis: shownBasis(
      {
        method:
          'Earned hours of every item that is in the collection over their budgeted hours: earned value, weighted by the means of the estimates.',
        counted: [{ what: 'items', count: sums.items }],
      },
      nowMs,
    ),
  };
}

async function completeness({ database, nowMs }: ApiContext) {
  const { requiredPositions, presentPositions, items } = await readWorkSums(database.reader);
  return {
    share:
      requiredPositions === 0
        ? null
        : Math.round((presentPositions / requiredPositions) * 10_000) / 10_000,
    required: requiredPositions,
    present: presentPositions,
    basis: shownBasis(
      {
        method:
          'Required positions known to be filled over required positions, of every item that is in the collection.',
        counted: [
          { what: 'items', count: items },
          { what: 'required positions', count: requiredPositions },
        ],
      },
      nowMs,
    ),
  };
}

async function cost({ database, nowMs }: ApiContext) {
  const sums = await readCostSums(database.reader);
  return {
    byCurrency: sums.map(({ currency, price, extras, expenses, total }) => ({
      currency,
      price: moneyAmount(price, currency),
      extras: moneyAmount(extras, currency),
      expenses: moneyAmount(expenses, currency),
      total: moneyAmount(total, currency),
    })),
    basis: shownBasis(
      {
        method:
          'What every item has cost so far, past ones too, currency by currency; nothing is converted.',
        counted: sums.map(({ currency, items }) => ({
          what: `items with money in ${currency}`,
          count: items,
        })),
      },
      nowMs,
      ['Sundries of a lot that are no item are not in it.'],
    ),
  };
}

async function readiness({ database, nowMs }: ApiContext) {
  const counts = await readReadinessCounts(database.reader, new Date(nowMs).toISOString());
  const levels = Object.entries(readinessRanks) as [ReadinessLevel, number][];
  return {
    byLevel: levels
      .sort(([, left], [, right]) => right - left)
      .map(([level, rank]) => ({
        level,
        rigs: counts.find((count) => count.rank === rank)?.rigs ?? 0,
      })),
    basis: shownBasis(
      {
        method:
          'Each rig that is in the collection judged by itself; where rigs share an accessory, they are not all ready at once.',
        counted: [{ what: 'rigs', count: counts.reduce((sum, { rigs }) => sum + rigs, 0) }],
      },
      nowMs,
    ),
  };
}
