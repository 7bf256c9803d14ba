import type { Relation, Row } from '../../api/kit/typeReads.js';
import { listParameter } from '../../db/dialect.js';
import type { RowSource } from '../../db/rowSource.js';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { readinessAt } from '../../domain/readiness/readinessAt.js';
import { zoneOfBench } from '../pace/zoneOfBench.js';
import { shownBasis, type StandingFacts } from './standingFacts.js';

const factsKey = Symbol('facts of the item');
const itemKey = Symbol('item of the project');

/**
 * The kept facts of an item, read once for however many of its fields are asked for. They hang on
 * its row and go with it: a weak map would keep every row alive through the quick collections.
 */
type Holder = Row & { [factsKey]?: Promise<StandingFacts | null>; [itemKey]?: Holder };

/** Projects stand by the facts of their item, which are then read for both together. */
export function standByItem(projects: readonly Row[], item: Row): void {
  for (const project of projects as Holder[]) project[itemKey] = item;
}

async function factsOf(
  { database: { reader } }: ApiContext,
  rows: readonly Row[],
  itemIdOf: (row: Row) => string,
): Promise<(StandingFacts | null)[]> {
  const holders = (rows as Holder[]).map((row) => row[itemKey] ?? row);
  const unread = new Map<Holder, string>();
  holders.forEach((holder, index) => {
    const row = rows[index];
    if (row && holder[factsKey] === undefined) unread.set(holder, itemIdOf(row));
  });
  if (unread.size > 0) {
    const facts = keptFacts(reader, [...new Set(unread.values())]);
    for (const [holder, itemId] of unread) {
      holder[factsKey] = facts.then((ofItems) => ofItems.get(itemId) ?? null);
    }
  }
  return Promise.all(holders.map((holder) => holder[factsKey] ?? Promise.resolve(null)));
}

async function keptFacts(
  reader: RowSource,
  itemIds: readonly string[],
): Promise<Map<string, StandingFacts>> {
  const kept = await reader.rows<{ itemId: string; facts: string }>(
    `SELECT item_id AS "itemId", facts AS "facts" FROM item_standing
     WHERE ${reader.dialect.isAnyOf('item_id')}`,
    [listParameter(itemIds)],
  );
  return new Map(kept.map(({ itemId, facts }) => [itemId, JSON.parse(facts) as StandingFacts]));
}

/** A computed field of an item or of a project; null until its standing has been computed. */
const computed =
  (
    itemIdOf: (row: Row) => string,
    show: (facts: StandingFacts, row: Row, nowMs: number) => unknown,
  ): Relation =>
  async (context, parents) => {
    const facts = await factsOf(context, parents, itemIdOf);
    const values = parents.map((row, index) => {
      const own = facts[index];
      return own ? show(own, row, context.nowMs) : null;
    });
    return { values, children: [], childType: null };
  };

const itself = (row: Row): string => row.id;

export const standingRelationsOfItem: Record<string, Relation> = {
  hours: computed(itself, (facts) => facts.hours),
  completion: computed(itself, (facts) => facts.completion),
  remaining: computed(itself, (facts) => facts.remaining),
  completeness: computed(itself, (facts) => facts.completeness),
  cost: computed(itself, (facts) => facts.cost),
  readiness: async (context, parents, ...rest) => {
    const zone = await zoneOfBench(context.database.reader);
    const shown = computed(itself, (facts, _row, nowMs) => shownReadiness(facts, nowMs, zone));
    return shown(context, parents, ...rest);
  },
};

type ProjectStanding = StandingFacts['projects'][string];

const ofProject = (field: keyof ProjectStanding): Relation =>
  computed(
    (row) => row['itemId'] as string,
    (facts, row) => facts.projects[row.id]?.[field] ?? null,
  );

/** Project rows must have their `itemId`. */
export const standingRelationsOfProject: Record<string, Relation> = {
  hours: ofProject('hours'),
  completion: ofProject('completion'),
  remaining: ofProject('remaining'),
  cost: ofProject('cost'),
};

function shownReadiness(facts: StandingFacts, nowMs: number, zone: string) {
  const { level, blockers, cautions, checksValidUntilMs, basis } = readinessAt(
    facts.readiness,
    nowMs,
    zone,
  );
  return {
    level,
    blockers,
    cautions,
    checksValidUntil:
      checksValidUntilMs === null ? null : new Date(checksValidUntilMs).toISOString(),
    basis: shownBasis(basis, nowMs),
  };
}
