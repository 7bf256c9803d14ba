import type { ApiContext } from '../../api/kit/apiContext.js';
import { groupedBy } from '../../db/groupedBy.js';
import { listParameter } from '../../db/dialect.js';
import { multiplierOf } from '../../domain/calibration/calibration.js';
import { earnedShare } from '../../domain/earnedValue/earnedShare.js';
import { pertMoments } from '../../domain/estimates/pertMoments.js';
import { remainingHours } from '../../domain/estimates/remainingHours.js';
import { scaledEstimate } from '../../domain/forecast/scaledEstimate.js';
import type { NextTaskFacts, TaskToChoose } from '../../domain/nextTasks/rankNextTasks.js';
import { estimateHistory } from '../calibration/finishedTasks.reads.js';
import { shownItem } from '../items/shownItem.js';
import { readinessRanks } from '../standing/writeStandings.js';
import { readTasksForItems, type TaskOfItem } from '../tasks/tasksForItems.reads.js';
import { readWorkedHours } from '../templates/workedHours.reads.js';
import { readHoldReasons, type HoldReasons } from './holdReasons.reads.js';

interface ItemRow {
  id: string;
  inventoryNumber: string;
  name: string | null;
  rank: number | null;
}

/** Everything that the choice of the next task rests on, at a fixed number of statements. */
export async function readNextTaskFacts(
  context: ApiContext,
  itemId: string | null,
): Promise<NextTaskFacts & Pick<HoldReasons, 'hazards'>> {
  const { reader } = context.database;
  const query = reader.rows.bind(reader);
  const items = await reader.rows<ItemRow>(
    `SELECT item.id AS "id", item.inventory_number AS "inventoryNumber", item.name AS "name",
       item_standing.readiness_rank AS "rank"
     FROM item LEFT JOIN item_standing ON item_standing.item_id = item.id
     WHERE item.retired_at IS NULL AND EXISTS (SELECT 1 FROM project
       WHERE project.item_id = item.id AND project.status IN ('PLANNED', 'ACTIVE'))
       ${itemId === null ? '' : 'AND item.id = ?'} ORDER BY item.inventory_number`,
    itemId === null ? [] : [itemId],
  );
  const itemIds = items.map(({ id }) => id);
  const all = await readTasksForItems(query, reader.dialect, itemIds);
  const planned = all.filter(
    ({ projectStatus }) => projectStatus === 'PLANNED' || projectStatus === 'ACTIVE',
  );
  const open = planned.filter(({ state }) => state !== 'DONE' && state !== 'DROPPED');
  const openIds = open.map(({ id }) => id);
  const spent = await readWorkedHours(query, reader.dialect, openIds, context.nowMs);
  const { calibration } = await estimateHistory(context);
  const reasons = await readHoldReasons(reader, open, openIds);
  const projects = await reader.rows<{ id: string; title: string }>(
    `SELECT id AS "id", title AS "title" FROM project WHERE ${reader.dialect.isAnyOf('item_id')}`,
    [listParameter(itemIds)],
  );
  const budgets = groupedBy(planned, ({ projectId }) => projectId);
  return {
    tasks: planned.map((task) =>
      toChoose(task, spent.get(task.id) ?? 0, multiplierOf(calibration, task.kind)),
    ),
    edges: planned.flatMap(({ id, predecessorIds }) =>
      predecessorIds.map((beforeId) => ({ beforeId, afterId: id })),
    ),
    items: new Map(
      items.map((item) => [
        item.id,
        {
          id: item.id,
          name: shownItem(item),
          isReadyForUse: item.rank === readinessRanks.ON_AIR_READY,
          lacksOnlyChecks: item.rank === readinessRanks.CHECKS_DUE,
        },
      ]),
    ),
    projects: new Map(
      projects.map(({ id, title }) => [
        id,
        { id, title, budgetedHours: budgetOf(budgets.get(id) ?? []) },
      ]),
    ),
    ...reasons,
  };
}

const budgetOf = (tasks: readonly TaskOfItem[]): number =>
  tasks
    .filter(({ state }) => state !== 'DROPPED')
    .reduce((sum, { estimate }) => sum + pertMoments(estimate).meanHours, 0);

function toChoose(task: TaskOfItem, spentHours: number, multiplier: number): TaskToChoose {
  const { id, projectId, itemId, title, kind, state, estimate, earningRule } = task;
  const { share } = earnedShare(earningRule, state);
  return {
    id,
    projectId,
    itemId,
    title,
    kind,
    state,
    leftHours: remainingHours({
      state,
      estimate: scaledEstimate(estimate, multiplier),
      spentHours,
    }).meanHours,
    unearnedHours: pertMoments(estimate).meanHours * (1 - share),
  };
}
