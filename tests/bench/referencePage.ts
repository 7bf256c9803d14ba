import type { Reader } from '../../src/db/reader.js';
import type { readinessAt } from '../../src/domain/readiness/readinessAt.js';
import type { StandingFacts } from '../../src/features/standing/standingFacts.js';
import { benchNowMs } from './benchClock.js';

interface PageRow {
  id: string;
  inventoryNumber: string;
  name: string | null;
  modelId: string | null;
  maker: string;
  designation: string;
  placeId: string | null;
  place: string;
  facts: string;
}

const pageSql = `SELECT item.id AS "id", item.inventory_number AS "inventoryNumber",
    item.name AS "name", model.id AS "modelId", model.maker AS "maker",
    model.designation AS "designation", place.id AS "placeId", place.name AS "place",
    item_standing.facts AS "facts"
  FROM item LEFT JOIN model ON model.id = item.model_id LEFT JOIN place ON place.id = item.place_id
  JOIN item_standing ON item_standing.item_id = item.id
  WHERE item.kind = 'RIG' AND item.retired_at IS NULL
  ORDER BY item.inventory_number, item.id LIMIT ?`;

const servicesSql = `SELECT item_service.rig_id AS "rigId", item_service.role AS "role",
    item.id AS "id", item.inventory_number AS "inventoryNumber"
  FROM item_service JOIN item ON item.id = item_service.accessory_id
  WHERE item_service.ended_at IS NULL
    AND item_service.rig_id IN (SELECT value FROM json_each(?)) ORDER BY item_service.id`;

/** What `schema/operations/rigs-page.graphql` asks, in two statements. */
export async function readPage(reader: Reader, first: number, judge: typeof readinessAt) {
  const all = await reader.rows<PageRow>(pageSql, [first + 1]);
  const rows = all.slice(0, first);
  const served = new Map<string, object[]>(rows.map(({ id }) => [id, []]));
  const services = await reader.rows<Record<'rigId' | 'role' | 'id' | 'inventoryNumber', string>>(
    servicesSql,
    [JSON.stringify(rows.map(({ id }) => id))],
  );
  for (const { rigId, role, id, inventoryNumber } of services) {
    served.get(rigId)?.push({ role, accessory: { id: `Accessory_${id}`, inventoryNumber } });
  }
  const nodes = rows.map((row) => {
    const facts = JSON.parse(row.facts) as StandingFacts;
    const { hours, completion, remaining, completeness, cost } = facts;
    const { level, blockers } = judge(facts.readiness, benchNowMs);
    return {
      id: `Rig_${row.id}`,
      inventoryNumber: row.inventoryNumber,
      name: row.name,
      model: row.modelId && {
        id: `Model_${row.modelId}`,
        maker: row.maker,
        designation: row.designation,
      },
      place: row.placeId && { id: `Place_${row.placeId}`, name: row.place },
      hours: {
        hours: hours.hours,
        byTaskKind: hours.byTaskKind.map((kind) => ({
          taskKind: kind.taskKind,
          hours: kind.hours,
        })),
      },
      completion: {
        share: completion.share,
        budgetedHours: completion.budgetedHours,
        earnedHours: completion.earnedHours,
      },
      remaining: {
        expectedHours: remaining.expectedHours,
        p50Hours: remaining.p50Hours,
        p80Hours: remaining.p80Hours,
        p95Hours: remaining.p95Hours,
      },
      completeness: { share: completeness.share, missing: completeness.missing },
      cost: {
        byCurrency: cost.byCurrency.map(({ currency, total }) => ({
          currency,
          total: { amount: total.amount },
        })),
      },
      readiness: {
        level,
        blockers: blockers.map(({ code, message, wouldBeMetBy }) => ({
          code,
          message,
          wouldBeMetBy,
        })),
      },
      servedBy: served.get(row.id),
    };
  });
  const last = rows.at(-1);
  const endCursor = last
    ? Buffer.from(
        JSON.stringify(['Rig INVENTORY_NUMBER ASC', last.inventoryNumber, last.id]),
      ).toString('base64url')
    : null;
  return { rigs: { nodes, pageInfo: { hasNextPage: all.length > first, endCursor } } };
}
