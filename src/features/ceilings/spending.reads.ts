import { groupedBy } from '../../db/groupedBy.js';
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

/** Lots, their extra costs and expenses. */
const allSpending = `(
  SELECT acquired_on AS day, price_minor_units AS amount, currency AS currency FROM acquisition
  UNION ALL
  SELECT acquisition.acquired_on, extra_cost.amount_minor_units, extra_cost.currency FROM extra_cost
    JOIN acquisition ON acquisition.id = extra_cost.acquisition_id
  UNION ALL
  SELECT spent_on, amount_minor_units, currency FROM expense
) AS spent`;

/** Everything spent in a month (`2026-05`) or year. */
export async function readSpentIn({ rows }: RowSource, period: string): Promise<Money[]> {
  return asMoneys(
    await rows<SpentSum>(
      `SELECT SUM(amount) AS "amount", currency AS "currency" FROM ${allSpending}
       WHERE day LIKE ? GROUP BY currency`,
      [`${period}-%`],
    ),
  );
}

/** Everything spent, by month (`2026-05`); months without spending are not there. */
export async function readSpentByMonth({ rows }: RowSource): Promise<Map<string, Money[]>> {
  const sums = await rows<SpentSum & { month: string }>(
    `SELECT SUBSTR(day, 1, 7) AS "month", SUM(amount) AS "amount", currency AS "currency"
     FROM ${allSpending} GROUP BY SUBSTR(day, 1, 7), currency ORDER BY 1, 3`,
  );
  const months = groupedBy(sums, ({ month }) => month);
  return new Map([...months].map(([month, ofMonth]) => [month, asMoneys(ofMonth)]));
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
