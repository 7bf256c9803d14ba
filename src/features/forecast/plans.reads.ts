import { listParameter } from '../../db/dialect.js';
import type { RowSource } from '../../db/rowSource.js';

/** A project with what its forecast takes for granted. */
export interface PlannedProject {
  id: string;
  itemId: string;
  title: string;
  status: string;
  inventoryNumber: string;
  priority: number | null;
  recordedAt: string;
  /** Who does the work; null when neither the plan nor the collection says. */
  personId: string | null;
  correlationPercent: number;
  seed: string;
}

/** A set that is bad is bad all over: some correlation is usual. Our own choice, no source. */
export const usualCorrelationPercent = 20;

const select = `SELECT project.id AS "id", project.item_id AS "itemId", project.title AS "title",
    project.status AS "status", item.inventory_number AS "inventoryNumber",
    project_plan.priority AS "priority", project.recorded_at AS "recordedAt",
    COALESCE(project_plan.worked_by_id, (SELECT owner_id FROM collection LIMIT 1)) AS "personId",
    COALESCE(project_plan.correlation_percent, ${usualCorrelationPercent}) AS "correlationPercent",
    COALESCE(project_plan.seed, item.inventory_number) AS "seed"
  FROM project JOIN item ON item.id = project.item_id
  LEFT JOIN project_plan ON project_plan.project_id = project.id`;

export const readPlans = ({ rows, dialect }: RowSource, projectIds: readonly string[]) =>
  rows<PlannedProject>(`${select} WHERE ${dialect.isAnyOf('project.id')}`, [
    listParameter(projectIds),
  ]);

/** The projects that wait for work, in the order of the queue; deferred ones do not wait. */
export async function readQueue(
  { rows }: RowSource,
  personId: string | null,
): Promise<PlannedProject[]> {
  const open = await rows<PlannedProject>(
    `${select} WHERE project.status IN ('PLANNED', 'ACTIVE') ORDER BY project.recorded_at, project.id`,
  );
  return open
    .filter((project) => project.personId === personId)
    .sort((x, y) => (x.priority ?? Infinity) - (y.priority ?? Infinity) || 0);
}
