import type { RowSource } from '../../db/rowSource.js';
import type { Money } from '../../domain/money/money.js';

/** A ceiling with the stretch of days, or the project, that it counts. */
export interface KnownCeiling {
  of: 'PROJECT' | 'MONTH' | 'YEAR';
  projectId: string | null;
  name: string;
  ceiling: Money;
}

interface CeilingRow {
  period: 'PROJECT' | 'MONTH' | 'YEAR';
  id: string;
  title: string | null;
  amount: number | string;
  currency: string;
}

/** The ceilings that spending on a day, perhaps on a project, counts towards. */
export async function readCeilingsOf(
  { rows }: RowSource,
  day: string,
  projectId: string | null,
): Promise<KnownCeiling[]> {
  const found = await rows<CeilingRow>(
    `SELECT 'PROJECT' AS "period", id AS "id", title AS "title",
       ceiling_minor_units AS "amount", ceiling_currency AS "currency"
     FROM project WHERE id = ? AND ceiling_minor_units IS NOT NULL
     UNION ALL
     SELECT period AS "period", id AS "id", NULL AS "title", amount_minor_units AS "amount",
       currency AS "currency"
     FROM spending_ceiling WHERE amount_minor_units IS NOT NULL`,
    [projectId ?? ''],
  );
  const order = ['PROJECT', 'MONTH', 'YEAR'];
  return found
    .map(({ period, id, title, amount, currency }) => ({
      of: period,
      projectId: period === 'PROJECT' ? id : null,
      name: title ?? day.slice(0, period === 'MONTH' ? 7 : 4),
      ceiling: { minorUnits: Number(amount), currency },
    }))
    .sort((one, other) => order.indexOf(one.of) - order.indexOf(other.of));
}

/** Everything spent in a month (`2026-05`) or year: lots, their extra costs, expenses. */
export async function readSpentIn({ rows }: RowSource, period: string): Promise<Money[]> {
  const like = `${period}-%`;
  return asMoneys(
    await rows<SpentSum>(
      `SELECT SUM(amount) AS "amount", currency AS "currency" FROM (
         SELECT price_minor_units AS amount, currency AS currency FROM acquisition
           WHERE acquired_on LIKE ?
         UNION ALL
         SELECT extra_cost.amount_minor_units, extra_cost.currency FROM extra_cost
           JOIN acquisition ON acquisition.id = extra_cost.acquisition_id
           WHERE acquisition.acquired_on LIKE ?
         UNION ALL
         SELECT amount_minor_units, currency FROM expense WHERE spent_on LIKE ?
       ) AS spent GROUP BY currency`,
      [like, like, like],
    ),
  );
}

export const readSpentOn = async ({ rows }: RowSource, projectId: string): Promise<Money[]> =>
  asMoneys(
    await rows<SpentSum>(
      `SELECT SUM(amount_minor_units) AS "amount", currency AS "currency"
       FROM expense WHERE project_id = ? GROUP BY currency`,
      [projectId],
    ),
  );

interface SpentSum {
  amount: number | string;
  currency: string;
}

const asMoneys = (sums: readonly SpentSum[]): Money[] =>
  sums.map(({ amount, currency }) => ({ minorUnits: Number(amount), currency }));
