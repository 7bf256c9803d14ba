import { list, one } from '../../api/kit/relations.js';
import { selectColumns } from '../../api/kit/selectColumns.js';
import { tableReads } from '../../api/kit/tableReads.js';
import type { Relation } from '../../api/kit/typeReads.js';
import { groupedBy } from '../../db/groupedBy.js';
import { reckonProjects } from '../costToCome/reckonProjects.js';
import { reckonItems } from '../worth/worthOfItems.js';
import { readItemCosts, readOpenInquiries, readTargets } from './goingOnFacts.reads.js';
import { shownGoingOn } from './shownGoingOn.js';

const columns = selectColumns('inquiry', [
  'id',
  'version',
  'projectId',
  'kind',
  'description',
  'resolves',
  'costMinorUnits',
  'costCurrency',
  'minutes',
  'doneAt',
  'outcome',
  'struckAt',
]);

export const inquiryReads = tableReads('Inquiry', 'inquiry', columns, {
  project: one('Project', 'projectId'),
});

const goingOn: Relation = async (context, parents) => {
  const { reader } = context.database;
  const ids = parents.map(({ id }) => id);
  const projects = await reckonProjects(context, ids);
  const itemIds = [...new Set(projects.map(({ project }) => project.itemId))];
  const items = await reckonItems(context, itemIds);
  const targets = new Map((await readTargets(reader, ids)).map(({ id, target }) => [id, target]));
  const spent = groupedBy(await readItemCosts(reader, itemIds), ({ itemId }) => itemId);
  const inquiries = groupedBy(await readOpenInquiries(reader, ids), ({ projectId }) => projectId);
  const shown = projects.map((project) => {
    const { id, itemId } = project.project;
    const item = items.get(itemId);
    const target = targets.get(id);
    if (!item || !target) return [id, null] as const;
    const facts = {
      item,
      project,
      target,
      spent: (spent.get(itemId) ?? []).map(({ amount, currency }) => ({
        minorUnits: Number(amount),
        currency,
      })),
      inquiries: inquiries.get(id) ?? [],
    };
    return [id, shownGoingOn(facts, context.nowMs)] as const;
  });
  const byId = new Map(shown);
  const values = ids.map((id) => byId.get(id) ?? null);
  return { values, children: [], childType: null };
};

/** What a decision adds to a project. */
export const goingOnRelationsOfProject: Record<string, Relation> = {
  goingOn,
  inquiries: list('Inquiry', {
    table: 'inquiry',
    columns,
    parentColumn: 'project_id',
    orderBy: 'inquiry.recorded_at, inquiry.id',
  }),
};
