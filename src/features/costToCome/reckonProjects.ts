import type { ApiContext } from '../../api/kit/apiContext.js';
import { listParameter } from '../../db/dialect.js';
import { groupedBy } from '../../db/groupedBy.js';
import type { Money } from '../../domain/money/money.js';
import { sumInCurrency, type ConvertedSum } from '../../domain/money/sumInCurrency.js';
import { notedPriceAmount } from '../../domain/worth/notedPriceAmount.js';
import { simulateCosts, type CostLine, type CostTrials } from '../../domain/worth/simulateCosts.js';
import type { Standard } from '../../domain/worth/standards.js';
import { threePointAmount } from '../../domain/worth/threePointAmount.js';
import { timesAmount } from '../../domain/worth/uncertainAmount.js';
import {
  forecastOfProjects,
  mostTrials,
  type ForecastOfProject,
} from '../forecast/forecastOfProjects.js';
import { readPlans, type PlannedProject } from '../forecast/plans.reads.js';
import { readNotedPrices } from '../prices/notedPrices.reads.js';
import { ownHourRate } from '../worth/worthOfItems.js';
import { readWorthTerms } from '../worth/worthFacts.reads.js';
import { openMoneyScale, type MoneyScale } from '../worth/moneyScale.js';
import {
  readNeededParts,
  readPlannedCosts,
  type NeededPart,
  type PlannedCostRow,
} from './costLines.reads.js';
import type { PlannedCostKind } from './plannedCostKind.js';

/** One thing that money will go to, as a distribution in the home currency. */
export interface ReckonedLine extends CostLine {
  kind: PlannedCostKind;
  what: string;
  count: number;
  /** Notes that a price rests on; null for a planned cost. */
  noteCount: number | null;
  newestNoteOn: string | null;
  neededFrom: Standard | null;
  partTypeId: string | null;
  plannedCostId: string | null;
}

/** Everything that is reckoned of what a project will still cost. */
export interface ReckonedProject {
  project: PlannedProject;
  lines: ReckonedLine[];
  /** Parts needed that nothing says the price of. */
  unpriced: { what: string; count: number }[];
  inHandCount: number;
  trials: CostTrials;
  trialCount: number;
  forecast: ForecastOfProject;
  ratePerHour: number | null;
  scale: MoneyScale;
  spent: ConvertedSum;
  ceiling: Money | null;
}

export async function reckonProjects(
  context: ApiContext,
  projectIds: readonly string[],
): Promise<ReckonedProject[]> {
  const { reader } = context.database;
  const projects = await readPlans(reader, projectIds);
  const forecasts = await forecastOfProjects(context, projects, {
    isCalibrated: true,
    trials: mostTrials,
  });
  const itemIds = [...new Set(projects.map(({ itemId }) => itemId))];
  const needs = await readNeededParts(context, itemIds);
  const types = [...needs.values()].flatMap(({ parts }) => parts.map((part) => part.partTypeId));
  const prices = await readNotedPrices(reader, 'part_type_id', [...new Set(types)]);
  const planned = groupedBy(await readPlannedCosts(reader, projectIds), (row) => row.projectId);
  const spent = groupedBy(await readSpentAndCeiling(context, projectIds), ({ id }) => id);
  const terms = await readWorthTerms(reader);
  const firstScale = await openMoneyScale(context);
  const day = new Date(context.nowMs).toISOString().slice(0, 10);
  return projects.map((project, index) => {
    const forecast = forecasts[index] as ForecastOfProject;
    const scale = firstScale.fresh();
    const need = needs.get(project.itemId) ?? { parts: [], unknownCount: 0 };
    const unpriced: ReckonedProject['unpriced'] = [];
    const lines = need.parts.flatMap((part): ReckonedLine[] => {
      const count = part.needed - part.inHand;
      if (count <= 0) return [];
      const line = partLine(part, count, prices.get(part.partTypeId) ?? [], day, scale);
      if (line === null) unpriced.push({ what: part.designation, count });
      return line === null ? [] : [line];
    });
    if (need.unknownCount > 0) {
      unpriced.push({ what: 'parts of no known type', count: need.unknownCount });
    }
    lines.push(...(planned.get(project.id) ?? []).flatMap((row) => plannedLine(row, scale) ?? []));
    const ratePerHour = ownHourRate(terms, scale);
    const { totals } = forecast.forecast;
    const [money] = spent.get(project.id) ?? [];
    return {
      project,
      lines,
      unpriced,
      inHandCount: need.parts.reduce((sum, { inHand }) => sum + inHand, 0),
      trials: simulateCosts(lines, ratePerHour === null ? null : { hours: totals, ratePerHour }, {
        seed: project.seed,
        trials: totals.length,
      }),
      trialCount: totals.length,
      forecast,
      ratePerHour,
      scale,
      spent: sumInCurrency(money?.spent ?? [], scale.currency, scale.table),
      ceiling: money?.ceiling ?? null,
    };
  });
}

function partLine(
  { partTypeId, designation }: NeededPart,
  count: number,
  notes: Parameters<typeof notedPriceAmount>[0],
  day: string,
  scale: MoneyScale,
): ReckonedLine | null {
  const price = notedPriceAmount(notes, day);
  const factor = price && scale.factor(price.currency);
  if (!price || factor === null) return null;
  return {
    // The designation, not the id: two collections with the same content draw alike.
    id: `part ${designation}`,
    kind: 'PART',
    what: designation,
    count,
    amount: timesAmount(price.amount, count * factor),
    noteCount: price.noteCount,
    newestNoteOn: price.newestOn,
    neededFrom: null,
    partTypeId,
    plannedCostId: null,
  };
}

function plannedLine(row: PlannedCostRow, scale: MoneyScale): ReckonedLine | null {
  const factor = scale.factor(row.currency);
  if (factor === null) return null;
  const amount = threePointAmount({
    optimistic: row.optimisticMinorUnits,
    likely: row.likelyMinorUnits,
    pessimistic: row.pessimisticMinorUnits,
  });
  return {
    id: `planned ${row.id}`,
    kind: row.kind,
    what: row.description,
    count: 1,
    amount: timesAmount(amount, factor),
    noteCount: null,
    newestNoteOn: null,
    neededFrom: row.neededFrom,
    partTypeId: null,
    plannedCostId: row.id,
  };
}

interface SpentRow {
  id: string;
  ceilingMinorUnits: number | null;
  ceilingCurrency: string | null;
  amount: number | string | null;
  currency: string | null;
}

async function readSpentAndCeiling({ database: { reader } }: ApiContext, ids: readonly string[]) {
  const rows = await reader.rows<SpentRow>(
    `SELECT project.id AS "id", project.ceiling_minor_units AS "ceilingMinorUnits",
       project.ceiling_currency AS "ceilingCurrency", expense.amount_minor_units AS "amount",
       expense.currency AS "currency"
     FROM project LEFT JOIN expense ON expense.project_id = project.id
     WHERE ${reader.dialect.isAnyOf('project.id')}`,
    [listParameter(ids)],
  );
  return [...groupedBy(rows, ({ id }) => id)].map(([id, own]) => {
    const [first] = own;
    const ceiling: Money | null =
      first?.ceilingCurrency && first.ceilingMinorUnits !== null
        ? { minorUnits: Number(first.ceilingMinorUnits), currency: first.ceilingCurrency }
        : null;
    const spent = own.flatMap(({ amount, currency }): Money[] =>
      amount === null || currency === null ? [] : [{ minorUnits: Number(amount), currency }],
    );
    return { id, ceiling, spent };
  });
}
