import type { RowSource } from '../../db/rowSource.js';
import type { Money } from '../../domain/money/money.js';
import { sumByCurrency } from '../../domain/money/sumByCurrency.js';
import { sumInCurrency } from '../../domain/money/sumInCurrency.js';
import { ceilingAfter } from '../../domain/worth/ceilingAfter.js';
import { moneyAmount } from '../money/moneyAmount.js';
import { rateInWords, readRateTable } from '../rates/rateTable.reads.js';
import { shownBasis } from '../standing/standingFacts.js';
import type { CeilingStanding } from './ceilings.type.js';
import { readCeilingsOf, readSpentIn, readSpentOn, type KnownCeiling } from './spending.reads.js';

export interface Purchase {
  amounts: readonly Money[];
  /** ISO 8601 date. */
  day: string;
  projectId: string | null;
  /** It is recorded already, and so among what was spent. */
  isRecorded: boolean;
}

/** Where a purchase leaves, or has left, every ceiling that it counts towards. */
export async function ceilingsAfter(
  source: RowSource,
  { amounts, day, projectId, isRecorded }: Purchase,
  nowMs: number,
): Promise<CeilingStanding[]> {
  const ceilings = await readCeilingsOf(source, day, projectId);
  if (ceilings.length === 0) return [];
  const table = await readRateTable(source, day);
  const negative = amounts.map(({ minorUnits, currency }) => ({
    minorUnits: -minorUnits,
    currency,
  }));
  const standings: CeilingStanding[] = [];
  for (const known of ceilings) {
    const recorded =
      known.projectId === null
        ? await readSpentIn(source, known.name)
        : await readSpentOn(source, known.projectId);
    const before = isRecorded ? sumByCurrency([...recorded, ...negative]) : recorded;
    const { currency, minorUnits: ceiling } = known.ceiling;
    const spent = sumInCurrency(before, currency, table);
    const added = sumInCurrency(amounts, currency, table);
    const money = (minorUnits: number) => moneyAmount(minorUnits, currency);
    const rates = [spent, added].flatMap((sum) =>
      sum.kind === 'SUM' ? sum.usedRates.map(rateInWords) : [sum.why],
    );
    const shown = {
      of: known.of,
      projectId: known.projectId === null ? null : `Project_${known.projectId}`,
      name: known.name,
      ceiling: money(ceiling),
      basis: shownBasis(
        {
          method:
            known.of === 'PROJECT'
              ? 'Expenses recorded on the project, and the amount, against its ceiling.'
              : 'Prices and extra costs of lots, and expenses, by their own days, and the amount, against the ceiling.',
          counted: [{ what: 'currencies spent in', count: before.length }],
        },
        nowMs,
        [...new Set(rates)],
      ),
    };
    if (spent.kind === 'REFUSED' || added.kind === 'REFUSED') {
      const why = spent.kind === 'REFUSED' ? spent.why : added.kind === 'REFUSED' ? added.why : '';
      const warning = `Whether ${nameOf(known)} holds cannot be said. ${why}`;
      standings.push({ ...shown, spentSoFar: null, leftAfter: null, isBroken: false, warning });
      continue;
    }
    const soFar = spent.total.minorUnits;
    const { left, isBroken } = ceilingAfter({
      ceiling,
      spent: soFar,
      added: added.total.minorUnits,
    });
    const warning = isBroken
      ? `This takes ${nameOf(known)} ${money(-left).amount} ${currency} beyond its ${money(ceiling).amount}: ${whatGives(known)}.`
      : null;
    standings.push({
      ...shown,
      spentSoFar: money(soFar),
      leftAfter: money(left),
      isBroken,
      warning,
    });
  }
  return standings;
}

const nameOf = ({ of, name }: KnownCeiling): string =>
  of === 'PROJECT' ? `the ceiling of the project “${name}”` : `the ceiling for ${name}`;

const whatGives = ({ of }: KnownCeiling): string =>
  of === 'PROJECT'
    ? 'a cost of the project must be given up, or the ceiling raised'
    : of === 'MONTH'
      ? 'so much must wait for another month, or the ceiling be raised'
      : 'so much must be given up or brought in this year, or the ceiling be raised';
