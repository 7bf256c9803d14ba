import { listParameter } from '../../db/dialect.js';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { hazardGuide } from '../hazards/hazardGuide.js';
import type { HazardKind } from '../hazards/hazardKind.js';
import type { whatNext } from '../nextTasks/whatNext.js';
import type { ReportBlock } from './reportBlock.js';

type Next = Awaited<ReturnType<typeof whatNext>>;

interface NamedTask {
  id: string;
  title: string;
  inventoryNumber: string;
  hazardKinds: string;
}

/** What can be done next and why, what is held back, and the usual cautions beside the step. */
export async function nextBlocks(
  { database: { reader } }: ApiContext,
  { suggestions, heldBack }: Next,
): Promise<ReportBlock[]> {
  const ids = [...suggestions, ...heldBack].map(({ taskId }) => taskId);
  const tasks = await reader.rows<NamedTask>(
    `SELECT task.id AS "id", task.title AS "title", item.inventory_number AS "inventoryNumber",
       task.hazard_kinds AS "hazardKinds"
     FROM task JOIN project ON project.id = task.project_id JOIN item ON item.id = project.item_id
     WHERE ${reader.dialect.isAnyOf('task.id')}`,
    [listParameter(ids)],
  );
  const byId = new Map(tasks.map((task) => [task.id, task]));
  const lines = suggestions.flatMap(({ taskId, leftMinutes, reasons, hazards }) => {
    const task = byId.get(taskId);
    if (!task) return [];
    const why = reasons.map(({ message }) => message).join(' ');
    return [
      `${task.inventoryNumber}: ${task.title}, about ${(leftMinutes / 60).toFixed(1)} h left. ${[...hazards, why].join(' ')}${cautionsOf(task)}`,
    ];
  });
  const held = heldBack.flatMap(({ taskId, reasons }) => {
    const task = byId.get(taskId);
    return task ? [`${task.inventoryNumber}: ${task.title} waits. ${reasons.join(' ')}`] : [];
  });
  if (lines.length + held.length === 0) return [{ kind: 'WORDS', text: 'Nothing is planned.' }];
  return [{ kind: 'LIST', items: [...lines, ...held] }];
}

function cautionsOf({ hazardKinds }: NamedTask): string {
  const kinds = JSON.parse(hazardKinds) as HazardKind[];
  const cautions = [...new Set(kinds.flatMap((kind) => hazardGuide(kind).cautions))];
  return cautions.length === 0 ? '' : ` Caution: ${cautions.join(' ')}`;
}
