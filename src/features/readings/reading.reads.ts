import { childPages } from '../../api/kit/childPages.js';
import { one } from '../../api/kit/relations.js';
import { selectColumns } from '../../api/kit/selectColumns.js';
import { tableReads } from '../../api/kit/tableReads.js';
import type { Relation, Row } from '../../api/kit/typeReads.js';
import { judgeReading, type JudgeableReading } from './judgeReading.js';
import { readLimitsOfSubjects } from './limitsOfSubjects.reads.js';

const columns = selectColumns('reading', [
  'id',
  'version',
  'componentId',
  'itemId',
  'quantity',
  'value',
  'unit',
  'tier',
  'instrument',
  'method',
  'takenAt',
  'takenById',
  'note',
]);

type ReadingRow = Row & JudgeableReading & { componentId: string | null; itemId: string | null };

const verdict: Relation = async ({ database }, parents) => {
  const readings = parents as readonly ReadingRow[];
  const idsIn = (key: 'componentId' | 'itemId'): string[] => [
    ...new Set(readings.flatMap((reading) => reading[key] ?? [])),
  ];
  const limits = await readLimitsOfSubjects(database.reader, idsIn('componentId'), idsIn('itemId'));
  const values = readings.map((reading) =>
    judgeReading(reading, limits.get(reading.componentId ?? reading.itemId ?? '') ?? []),
  );
  return { values, children: [], childType: null };
};

export const readingReads = tableReads('Reading', 'reading', columns, {
  verdict,
  component: one('Component', 'componentId'),
  item: one('Item', 'itemId'),
  takenBy: one('Party', 'takenById'),
});

const latestFirst = (parentColumn: string): Relation =>
  childPages('Reading', {
    table: 'reading',
    columns,
    parentColumn,
    sortColumn: 'taken_at',
    sortName: 'takenAt',
    direction: 'DESC',
  });

export const readingRelationsOfItem = { readings: latestFirst('item_id') };
export const readingRelationsOfComponent = { readings: latestFirst('component_id') };
