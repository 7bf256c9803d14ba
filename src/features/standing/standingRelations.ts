import type { Relation, Row } from '../../api/kit/typeReads.js';
import { listParameter } from '../../db/dialect.js';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { readinessAt } from '../../domain/readiness/readinessAt.js';
import { todayAtBench } from '../pace/todayAtBench.js';
import { shownBasis, type StandingFacts } from './standingFacts.js';

/** The kept facts of items, read once for however many of their fields are asked for. */
const known = new WeakMap<Row, Promise<StandingFacts | null>>();

async function factsOf(
  context: ApiContext,
  rows: readonly Row[],
  itemIdOf: (row: Row) => string,
): Promise<(StandingFacts | null)[]> {
  const fresh = rows.filter((row) => !known.has(row));
  if (fresh.length > 0) {
    const { reader } = context.database;
    const kept = reader.rows<{ itemId: string; facts: string }>(
      `SELECT item_id AS "itemId", facts AS "facts" FROM item_standing
       WHERE ${reader.dialect.isAnyOf('item_id')}`,
      [listParameter([...new Set(fresh.map(itemIdOf))])],
    );
    const byItem = kept.then((all) => new Map(all.map(({ itemId, facts }) => [itemId, facts])));
    const parsed = new Map<string, StandingFacts>();
    for (const row of fresh) {
      const own = byItem.then((facts) => {
        const id = itemIdOf(row);
        const text = facts.get(id);
        if (text === undefined) return null;
        const again = parsed.get(id) ?? (JSON.parse(text) as StandingFacts);
        parsed.set(id, again);
        return again;
      });
      known.set(row, own);
    }
  }
  return Promise.all(rows.map((row) => known.get(row) as Promise<StandingFacts | null>));
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
    const { zone } = await todayAtBench(context.database.reader, context.nowMs);
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
