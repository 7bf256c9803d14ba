import { grouped, one } from '../../api/kit/relations.js';
import type { Relation, Row, TypeReads } from '../../api/kit/typeReads.js';
import { listParameter, type Dialect } from '../../db/dialect.js';
import type { RowSource } from '../../db/rowSource.js';
import { readOnShelf, readPutAside } from './onShelf.reads.js';

export interface NeededPart {
  id: string;
  parentId: string;
  partTypeId: string;
  designation: string;
  quantity: number;
  /** What lies ready for this task: put aside for it, or free for anybody. */
  onShelf: number;
  putAside: number;
}

/** The parts that tasks need, each with how many lie ready, in three statements. */
export async function readNeededParts(
  query: RowSource['rows'],
  dialect: Dialect,
  taskIds: readonly string[],
): Promise<NeededPart[]> {
  const parts = await query<Omit<NeededPart, 'onShelf' | 'putAside'>>(
    `SELECT task_part.id AS "id", task_part.task_id AS "parentId",
       task_part.part_type_id AS "partTypeId", part_type.designation AS "designation",
       task_part.quantity AS "quantity"
     FROM task_part JOIN part_type ON part_type.id = task_part.part_type_id
     WHERE ${dialect.isAnyOf('task_part.task_id')} ORDER BY part_type.designation, task_part.id`,
    [listParameter(taskIds)],
  );
  const partTypeIds = [...new Set(parts.map(({ partTypeId }) => partTypeId))];
  const shelf = await readOnShelf(query, dialect, partTypeIds);
  const aside = await readPutAside(query, dialect, taskIds);
  return parts.map((part) => {
    const putAside = aside.get(`${part.parentId} ${part.partTypeId}`) ?? 0;
    return { ...part, putAside, onShelf: putAside + (shelf.get(part.partTypeId) ?? 0) };
  });
}

const partsNeeded: Relation = async ({ database: { reader } }, tasks) => {
  const parts = await readNeededParts(
    (sql, parameters) => reader.rows(sql, parameters),
    reader.dialect,
    tasks.map(({ id }) => id),
  );
  const children = parts.map((part): Row => ({ ...part }));
  return { values: grouped(tasks, children), children, childType: 'PartNeeded' };
};

export const partRelationsOfTask = { partsNeeded };

/** Read with their task or not at all. */
export const partNeededReads: TypeReads = {
  typeName: 'PartNeeded',
  byIds: () => Promise.resolve([]),
  relations: { partType: one('PartType', 'partTypeId') },
};
