import { childPages } from '../../api/kit/childPages.js';
import { computedReads } from '../../api/kit/computedReads.js';
import { one } from '../../api/kit/relations.js';
import { selectColumns } from '../../api/kit/selectColumns.js';
import { tableReads } from '../../api/kit/tableReads.js';
import type { Relation, Row, TypeReads } from '../../api/kit/typeReads.js';
import { listParameter } from '../../db/dialect.js';
import { readingsByIds } from '../readings/readingsByIds.js';
import { powerStanding } from './powerStanding.js';
import type { Procedure } from './procedureShape.js';
import { readStepsOfRuns, type RunOfProcedure, type StepOfRun } from './recordedSteps.reads.js';
import { whyNoPower } from './whyNoPower.js';

const columns = selectColumns('bring_up', [
  'id',
  'version',
  'itemId',
  'procedure',
  'status',
  'startedAt',
  'endedAt',
  'startedById',
  'finalCheckId',
  'reason',
  'note',
]);
const table = tableReads('BringUp', 'bring_up', columns);

/** The procedure is kept as JSON text. */
const opened = (row: Row): Row & RunOfProcedure => ({
  ...row,
  itemId: row['itemId'] as string,
  procedure:
    typeof row['procedure'] === 'string'
      ? (JSON.parse(row['procedure']) as Procedure)
      : (row['procedure'] as Procedure),
});

const steps: Relation = async ({ database }, parents) => {
  const runs = parents.map(opened);
  const byRun = await readStepsOfRuns(database.reader, runs);
  const values = runs.map(({ id }) => (byRun.get(id) ?? []).map((step) => shownStep(id, step)));
  return { values, children: values.flat(), childType: 'BringUpStep' };
};

function shownStep(runId: string, { step, outcome, latest, readings, earlier }: StepOfRun): Row {
  return {
    id: `${runId} ${step.key}`,
    plan: step,
    outcome,
    holds: latest?.holds ?? [],
    readingIds: latest?.readingIds ?? [],
    verdicts: readings.map(({ quantity, judgement: { word, limit } }) => ({
      quantity,
      word,
      limit,
    })),
    doneAt: latest?.doneAt ?? null,
    doneById: latest?.doneById ?? null,
    findingId: latest?.findingId ?? null,
    note: latest?.note ?? null,
    earlierVersions: earlier,
  };
}

const power: Relation = async ({ database: { reader } }, parents) => {
  const runs = parents.map(opened);
  const items = await reader.rows<{ id: string; name: string }>(
    `SELECT id AS "id", COALESCE(name, inventory_number) AS "name" FROM item
     WHERE ${reader.dialect.isAnyOf('id')}`,
    [listParameter([...new Set(runs.map(({ itemId }) => itemId))])],
  );
  const reasons = await whyNoPower(reader, items);
  const byRun = await readStepsOfRuns(reader, runs);
  const values = runs.map(({ id, itemId }) =>
    powerStanding(reasons.get(itemId) ?? [], byRun.get(id) ?? []),
  );
  return { values, children: [], childType: null };
};

export const bringUpReads: TypeReads = {
  ...table,
  byIds: async (context, ids, asked) => (await table.byIds(context, ids, asked)).map(opened),
  relations: {
    item: one('Item', 'itemId'),
    startedBy: one('Party', 'startedById'),
    finalCheck: one('FinalCheck', 'finalCheckId'),
    steps,
    power,
  },
};

export const bringUpStepReads = computedReads('BringUpStep', {
  readings: readingsByIds,
  doneBy: one('Party', 'doneById'),
  finding: one('Finding', 'findingId'),
});

const latestFirst = childPages('BringUp', {
  table: 'bring_up',
  columns,
  parentColumn: 'item_id',
  sortColumn: 'started_at',
  sortName: 'startedAt',
  direction: 'DESC',
});

/** A page brings the rows as they are kept: the procedure is opened in them. */
const bringUps: Relation = async (...asked) => {
  const page = await latestFirst(...asked);
  for (const row of page.children) Object.assign(row, opened(row));
  return page;
};

export const bringUpRelationsOfItem = { bringUps };
