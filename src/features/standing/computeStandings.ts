import { groupedBy } from '../../db/groupedBy.js';
import type { RowSource } from '../../db/rowSource.js';
import { countedSlices } from '../../domain/hours/countedSlices.js';
import { tallySeconds, type MonthTally } from '../../domain/hours/tallySeconds.js';
import { readinessStanding } from '../../domain/readiness/readinessStanding.js';
import { completenessStanding } from './completenessStanding.js';
import {
  asMoney,
  costStanding,
  costSums,
  type CostInputs,
  type CurrencySum,
} from './costStanding.js';
import { hoursStanding, type HoursInputs } from './hoursStanding.js';
import { projectStandings } from './projectStandings.js';
import { readItemRecords, type ItemRecords } from './itemRecords.js';
import { readinessFactsOf } from './readinessFactsOf.js';
import type { StandingFacts } from './standingFacts.js';
import type { StandingItem } from './standingItems.reads.js';
import { taskWorkStanding } from './taskWorkStanding.js';

/** What is computed of one item, and the figures by which lists sort and filter. */
export interface ItemStanding {
  itemId: string;
  facts: StandingFacts;
  tallies: MonthTally[];
  costs: CurrencySum[];
  varianceHours: number;
}

/** How some items stand at an instant, from their records alone. */
export async function computeStandings(
  source: RowSource,
  itemIds: readonly string[],
  nowMs: number,
): Promise<ItemStanding[]> {
  const records = await readItemRecords(source, itemIds);
  const finished = records.sessions.filter(({ endedAtMs }) => endedAtMs !== null);
  const counted = countedSlices(finished, nowMs);
  const shared = {
    overlaps: counted.overlaps,
    sessions: groupedBy(records.sessions, ({ itemId }) => itemId),
    tallies: groupedBy(tallySeconds(counted.slices), ({ itemId }) => itemId),
  };
  return itemIds.flatMap((id) => {
    const item = records.items.get(id);
    return item ? [standingOf(item, records, shared, nowMs)] : [];
  });
}

interface CountedHours {
  overlaps: HoursInputs['overlaps'];
  sessions: ReadonlyMap<string, HoursInputs['sessions']>;
  tallies: ReadonlyMap<string, MonthTally[]>;
}

function standingOf(
  item: StandingItem,
  records: ItemRecords,
  counted: CountedHours,
  nowMs: number,
): ItemStanding {
  const tasks = records.tasks.get(item.id) ?? [];
  const sessions = counted.sessions.get(item.id) ?? [];
  const tallies = counted.tallies.get(item.id) ?? [];
  const { overlaps } = counted;
  const secondsByTask = new Map<string, number>();
  for (const { taskId, seconds } of tallies) {
    if (taskId !== null) secondsByTask.set(taskId, (secondsByTask.get(taskId) ?? 0) + seconds);
  }
  const work = taskWorkStanding(tasks, secondsByTask, { seed: item.inventoryNumber, nowMs });
  const facts = records.completeness.get(item.id) ?? { fitOut: [], checks: [], fittings: [] };
  const { completeness, positions } = completenessStanding(facts, nowMs);
  const cost = costInputsOf(item.id, records);
  return {
    itemId: item.id,
    tallies,
    costs: costSums(cost),
    varianceHours: work.varianceHours,
    facts: {
      hours: hoursStanding({ sessions, tallies, overlaps }, nowMs),
      completion: work.completion,
      remaining: work.remaining,
      completeness,
      cost: costStanding(cost, nowMs),
      readiness: readinessStanding(readinessFactsOf(item, positions, records, nowMs)),
      projects: projectStandings(
        {
          projectIds: records.projects.get(item.id)?.map(({ id }) => id) ?? [],
          seed: item.inventoryNumber,
          tasks,
          sessions,
          tallies,
          overlaps,
          secondsByTask,
          expenses: records.expenses.get(item.id) ?? [],
        },
        nowMs,
      ),
    },
  };
}

function costInputsOf(itemId: string, records: ItemRecords): CostInputs {
  const [lot] = records.lots.get(itemId) ?? [];
  const expenses = records.expenses.get(itemId) ?? [];
  return {
    price: lot?.price ?? null,
    extras: lot?.extras ?? [],
    lineCount: lot?.lineCount ?? 0,
    extraCostCount: lot?.extraCostCount ?? 0,
    expenses: expenses.map(asMoney),
  };
}
