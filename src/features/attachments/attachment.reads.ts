import { childPages } from '../../api/kit/childPages.js';
import { list, one } from '../../api/kit/relations.js';
import { selectColumns } from '../../api/kit/selectColumns.js';
import { tableReads } from '../../api/kit/tableReads.js';
import type { Relation, Row } from '../../api/kit/typeReads.js';
import { listParameter } from '../../db/dialect.js';

const columns = selectColumns('attachment', [
  'id',
  'version',
  'fileId',
  'subjectType',
  'subjectId',
  'role',
  'caption',
  'beforeId',
  'ordinal',
  'detachedAt',
  'recordedAt',
]);

const fileColumns = selectColumns('stored_file', [
  'id',
  'digest',
  'byteLength',
  'mediaType',
  'originalName',
  'widthPixels',
  'heightPixels',
  'takenAt',
  'keptAt',
]);

const subject: Relation = async (context, attachments) => {
  const wanted = new Map<string, string[]>();
  for (const row of attachments) {
    const type = String(row['subjectType']);
    wanted.set(type, [...(wanted.get(type) ?? []), String(row['subjectId'])]);
  }
  const found = await Promise.all(
    [...wanted].map(async ([typeName, ids]) => {
      const rows = (await context.reads.get(typeName)?.byIds(context, ids)) ?? [];
      for (const row of rows) row.__typename ??= typeName;
      return rows;
    }),
  );
  const children = found.flat();
  const byId = new Map(children.map((row) => [row.id, row]));
  const values = attachments.map((row) => byId.get(String(row['subjectId'])) ?? null);
  return { values, children, childType: 'Node' };
};

export const attachmentReads = tableReads('Attachment', 'attachment', columns, {
  file: one('StoredFile', 'fileId'),
  before: one('Attachment', 'beforeId'),
  afters: list('Attachment', {
    table: 'attachment',
    columns,
    parentColumn: 'before_id',
    where: 'attachment.detached_at IS NULL',
    orderBy: 'attachment.ordinal, attachment.id',
  }),
  subject,
});

export const storedFileReads = tableReads('StoredFile', 'stored_file', fileColumns);

/** Of every record: ids are unique in the whole collection, so the type need not be asked. */
export const attachmentsOfRecord: Relation = childPages('Attachment', {
  table: 'attachment',
  columns,
  parentColumn: 'subject_id',
  sortColumn: 'ordinal',
  sortName: 'ordinal',
  sortKind: 'count',
  direction: 'ASC',
  where: 'attachment.detached_at IS NULL',
});

/** The first picture of each item: one that shows all of it before any other. */
const coverPicture: Relation = async ({ database: { reader } }, items) => {
  const rows = await reader.rows<Row>(
    `SELECT * FROM (
       SELECT ${columns}, ROW_NUMBER() OVER (
         PARTITION BY attachment.subject_id
         ORDER BY CASE attachment.role WHEN 'OVERALL' THEN 0 WHEN 'AFTER' THEN 1 ELSE 2 END,
           attachment.ordinal, attachment.id) AS "place"
       FROM attachment JOIN stored_file ON stored_file.id = attachment.file_id
       WHERE ${reader.dialect.isAnyOf('attachment.subject_id')}
         AND attachment.detached_at IS NULL AND stored_file.width_pixels IS NOT NULL
     ) AS numbered WHERE "place" = 1`,
    [listParameter(items.map(({ id }) => id))],
  );
  const byItem = new Map(rows.map((row) => [row['subjectId'], row]));
  const values = items.map(({ id }) => byItem.get(id) ?? null);
  return { values, children: rows, childType: 'Attachment' };
};

export const attachmentRelationsOfItem = { coverPicture };
