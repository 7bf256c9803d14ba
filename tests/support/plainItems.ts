import { v7 as uuidv7 } from 'uuid';
import { queryInWork } from '../../src/db/queryInWork.js';
import { ItemCostEntity } from '../../src/features/standing/itemCost.entity.js';
import { ItemStandingEntity } from '../../src/features/standing/itemStanding.entity.js';
import { globalId } from '../../src/api/kit/globalId.js';
import type { TestApi } from './testApi.js';

export interface PlainItem {
  number: string;
  name?: string | null;
  /** Null: its standing is not computed yet. */
  standing?: {
    hours?: number;
    completion?: number;
    rank?: number;
    checksValidUntil?: string;
  } | null;
  /** Minor units by currency. */
  costs?: Record<string, number>;
}

/** Puts rigs with given standings straight into the tables, at a place of their own. */
export async function plainItems(
  api: TestApi,
  placeId: string | null,
  items: readonly PlainItem[],
): Promise<string> {
  const own = placeId ?? uuidv7();
  const now = new Date(api.nowMs).toISOString();
  const act = { action: 'plainItems', actorId: null, now };
  await api.database.write(act, async (work) => {
    if (placeId === null) {
      await queryInWork(
        work,
        'INSERT INTO place (id, version, recorded_at, changed_at, name) VALUES (?, 1, ?, ?, ?)',
        [own, now, now, own],
      );
    }
    for (const { number, name = null, standing = {}, costs = {} } of items) {
      const id = uuidv7();
      await queryInWork(
        work,
        `INSERT INTO item (id, version, recorded_at, changed_at, kind, inventory_number, name, place_id)
         VALUES (?, 1, ?, ?, 'RIG', ?, ?, ?)`,
        [id, now, now, number, name, own],
      );
      if (standing !== null) {
        const { hours = 0, completion, rank = 1, checksValidUntil = null } = standing;
        const { columns } = work.manager.connection.getMetadata(ItemStandingEntity);
        const empty = columns
          .filter((column) => !column.isNullable)
          .map((column) => [column.propertyName, column.type === 'simple-json' ? {} : 0]);
        await work.manager.insert(ItemStandingEntity, {
          ...(Object.fromEntries(empty) as object),
          itemId: id,
          computedAt: now,
          investedSeconds: Math.round(hours * 3600),
          completionBasisPoints: completion === undefined ? -1 : Math.round(completion * 10_000),
          completenessBasisPoints: -1,
          readinessRank: rank,
          checksValidUntil,
        });
      }
      for (const [currency, total] of Object.entries(costs)) {
        await work.manager.insert(ItemCostEntity, {
          itemId: id,
          currency,
          priceMinorUnits: total,
          extraMinorUnits: 0,
          expenseMinorUnits: 0,
          totalMinorUnits: total,
        });
      }
    }
  });
  return globalId('Place', own);
}
