import { checkedRecordId } from '../../api/kit/checkedRecordId.js';
import { itemTypes } from '../../api/kit/globalId.js';
import { Checklist } from '../../db/checklist.js';
import { listParameter } from '../../db/dialect.js';
import { insertRows } from '../../db/insertRow.js';
import { rowSourceInWork, type RowSource } from '../../db/rowSource.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { checkReading } from './checkReading.js';
import { readLimitsOfSubjects } from './limitsOfSubjects.reads.js';
import { ReadingEntity } from './reading.entity.js';
import type { ReadingInput, RecordReadingsInput } from './reading.inputs.js';

const mostReadings = 200;

/** All readings are kept, or none and every problem is told. @returns their ids, in order. */
export async function recordReadings(
  work: UnitOfWork,
  { readings }: RecordReadingsInput,
): Promise<string[]> {
  const check = new Checklist(work);
  check.that(
    readings.length >= 1 && readings.length <= mostReadings,
    `Send from 1 to ${mostReadings} readings at a time; these are ${readings.length}.`,
    ['readings'],
  );
  check.done();
  const source = rowSourceInWork(work);
  const subjects = readings.map((reading, index) => subjectOf(check, reading, pathOf(index)));
  const known = {
    componentId: await idsThere(
      source,
      'component',
      subjects.map((one) => one.componentId),
    ),
    itemId: await idsThere(
      source,
      'item',
      subjects.map((one) => one.itemId),
    ),
    takenById: await idsThere(
      source,
      'party',
      subjects.map((one) => one.takenById),
    ),
  };
  const limits = await readLimitsOfSubjects(source, [...known.componentId], [...known.itemId]);
  const rows = readings.map((reading, index) => {
    const subject = subjects[index] ?? nobody;
    for (const field of ['componentId', 'itemId', 'takenById'] as const) {
      const id = subject[field];
      if (id === null || known[field].has(id)) continue;
      const what = { componentId: 'component', itemId: 'item', takenById: 'party' }[field];
      const message = `There is no ${what} with this id.`;
      check.add({ code: 'NOT_FOUND', message, path: [...pathOf(index), field] });
    }
    const held = limits.get(subject.componentId ?? subject.itemId ?? '') ?? [];
    return { ...subject, ...checkReading(work, check, reading, held, pathOf(index)) };
  });
  check.done();
  const kept = await insertRows(work, ReadingEntity, rows);
  return kept.map(({ id }) => id);
}

interface Subject {
  componentId: string | null;
  itemId: string | null;
  takenById: string | null;
}
const nobody: Subject = { componentId: null, itemId: null, takenById: null };

const pathOf = (index: number): string[] => ['readings', String(index)];

function subjectOf(check: Checklist, reading: ReadingInput, path: string[]): Subject {
  const { componentId, itemId, takenById } = reading;
  check.that(
    (typeof componentId === 'string') !== (typeof itemId === 'string'),
    'Say what was measured: a component or an item, one of the two.',
    path,
  );
  return {
    componentId: checkedRecordId(check, 'Component', componentId, [...path, 'componentId']),
    itemId: checkedRecordId(check, itemTypes, itemId, [...path, 'itemId']),
    takenById: checkedRecordId(check, 'Party', takenById, [...path, 'takenById']),
  };
}

async function idsThere(
  { rows, dialect }: RowSource,
  table: string,
  ids: readonly (string | null)[],
): Promise<Set<string>> {
  const asked = listParameter([...new Set(ids.filter((id) => id !== null))]);
  const found = await rows<{ id: string }>(
    `SELECT id AS "id" FROM ${table} WHERE ${dialect.isAnyOf('id')}`,
    [asked],
  );
  return new Set(found.map(({ id }) => id));
}
