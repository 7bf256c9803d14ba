import { listParameter, postgresDialect, sqliteDialect } from '../../db/dialect.js';
import { queryInWork } from '../../db/queryInWork.js';
import { searchTokens } from '../../db/searchTokens.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';

interface ItemWords {
  id: string;
  words: string | null;
}

const rowsAtOnce = 500;

/** Keeps the text that items are found by, for the items whose words have changed. */
export async function refreshItemText(work: UnitOfWork): Promise<void> {
  const changed = (table: string) => [
    ...new Set(
      work.writes.filter((write) => write.table === table).map(({ recordId }) => recordId),
    ),
  ];
  const items = changed('item');
  const models = changed('model');
  if (items.length === 0 && models.length === 0) return;
  const dialect = work.engine === 'sqlite' ? sqliteDialect : postgresDialect;
  const rows = await queryInWork<ItemWords>(
    work,
    `SELECT item.id AS "id",
       COALESCE(item.inventory_number, '') || ' ' || COALESCE(item.name, '') || ' ' ||
       COALESCE(item.serial_number, '') || ' ' || COALESCE(item.note, '') || ' ' ||
       COALESCE(item.role, '') || ' ' || COALESCE(model.maker, '') || ' ' ||
       COALESCE(model.designation, '') || ' ' || COALESCE(model.description, '') AS "words"
     FROM item LEFT JOIN model ON model.id = item.model_id
     WHERE ${dialect.isAnyOf('item.id')} OR ${dialect.isAnyOf('item.model_id')}`,
    [listParameter(items), listParameter(models)],
  );
  for (let start = 0; start < rows.length; start += rowsAtOnce) {
    await keepText(work, rows.slice(start, start + rowsAtOnce));
  }
}

async function keepText(work: UnitOfWork, rows: readonly ItemWords[]): Promise<void> {
  await queryInWork(
    work,
    `INSERT INTO item_text (item_id, body) VALUES ${rows.map(() => '(?, ?)').join(', ')}
     ON CONFLICT (item_id) DO UPDATE SET body = excluded.body`,
    rows.flatMap(({ id, words }) => [id, searchTokens(words ?? '').join(' ')]),
  );
}
