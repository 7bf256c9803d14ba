import { globalId } from '../../api/kit/globalId.js';
import type { ApiContext } from '../../api/kit/apiContext.js';
import type { Row } from '../../api/kit/typeReads.js';
import { rankSteps, type RankBy, type RankedStep } from '../../domain/shack/rankSteps.js';
import { shackSteps } from '../../domain/shack/shackSteps.js';
import { currencyExponent } from '../money/currencyExponent.js';
import { moneyAmount } from '../money/moneyAmount.js';
import { readOpenTasks } from '../readiness/openTasks.reads.js';
import { hundredths, shownBasis } from '../standing/standingFacts.js';
import { readShack } from './readShack.js';
import { readStepPrices, type StepPrice } from './stepPrices.reads.js';

/** What could be done next, ranked, as rows. */
export async function nextSteps(
  { database: { reader }, nowMs }: ApiContext,
  by: RankBy,
  first: number,
): Promise<Row> {
  const { model } = await readShack(reader, nowMs);
  const tasks = await readOpenTasks(reader, [...model.items.keys()]);
  const [home] = await reader.rows<{ currency: string }>(
    `SELECT home_currency AS "currency" FROM collection LIMIT 1`,
  );
  const currency = home?.currency ?? 'EUR';
  const steps = shackSteps(model, tasks);
  const priceOf = await readStepPrices(reader, steps, currency, nowMs);
  const { before, ranked } = rankSteps(
    model,
    steps,
    (step) => priceOf(step)?.minorUnits ?? null,
    by,
  );
  return {
    id: 'next steps',
    readyAlone: before.alone,
    readyAtOnce: before.atOnce,
    compared: ranked.length,
    steps: ranked.slice(0, first).map((step, index) => ({
      ...shownStep(step, priceOf(step), currency),
      rank: index + 1,
    })),
    basis: shownBasis(
      {
        method:
          'Each step is taken as done and readiness counted anew, alone and at once; the change is divided by the hours, or by the price.',
        counted: [
          { what: 'steps compared', count: ranked.length },
          { what: 'rigs', count: model.rigs.length },
          { what: 'open tasks', count: [...tasks.values()].flat().length },
        ],
      },
      nowMs,
      [
        'A task settles what its sort of work mends on its item: testing the final checks, tubes the components, bench work the findings.',
        'Hours of what is not planned are our own usual figures; getting an accessory counts as 2 hours.',
        'The price of an accessory is the median of what was paid for those of its role, else of price notes of their models; that of a part is nothing when one lies on the shelf, else the median of its recent price notes, else the ceiling of a want. Nothing is converted from other currencies.',
        ...(before.isProven ? [] : ['The count at once was cut short at its limit of search.']),
      ],
    ),
  };
}

function shownStep(step: RankedStep, price: StepPrice | null, currency: string): Row {
  const { kind, action, itemId, hours, hoursRestOn, gainAlone, gainAtOnce, reason } = step;
  const taskIds = step.taskIds.map((id) => globalId('Task', id));
  const units = price && price.minorUnits / 10 ** (currencyExponent(currency) ?? 2);
  return {
    id: action,
    kind,
    action,
    itemId,
    gainAlone,
    gainAtOnce,
    bringsRigIds: step.bringsRigIds,
    roughly: { hours: hundredths(hours), restsOn: hoursRestOn, taskIds },
    price: price && moneyAmount(price.minorUnits, currency),
    priceRestsOn: price?.restsOn ?? null,
    atOncePerHour: Math.round((gainAtOnce / Math.max(hours, 0.01)) * 10_000) / 10_000,
    atOncePerMoney: units && Math.round((gainAtOnce / units) * 1_000_000) / 1_000_000,
    taskIds,
    reason,
  };
}
