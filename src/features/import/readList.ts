import { setImmediate } from 'node:timers/promises';
import type { Dialect } from '../../db/dialect.js';
import type { RowSource } from '../../db/rowSource.js';
import { decodeList } from './decodeList.js';
import type { ImportOptions } from './importOptions.js';
import type { TakenColumn } from './importReport.js';
import type { ItemDraft } from './itemDraft.js';
import { knownNumbers } from './knownNumbers.js';
import { delimiterMarks } from './listDelimiter.js';
import { ListNames } from './listNames.js';
import type { ListProblems } from './listProblems.js';
import { ListRow } from './listRow.js';
import type { ListSource } from './listSource.js';
import { mapColumns } from './mapColumns.js';
import { readItemDraft } from './readItemDraft.js';
import { readRecords } from './readRecords.js';
import type { ResolvedItem } from './resolvedItem.js';
import type { Survey } from './surveyList.js';

export interface ReadList {
  source: ListSource;
  survey: Survey;
  options: ImportOptions;
  query: RowSource['rows'];
  dialect: Dialect;
  problems: ListProblems;
  onProgress(rowsRead: number, bytesRead: number): void;
  /** Given the sound rows, a batch at a time. */
  onBatch(batch: readonly ResolvedItem[], names: ListNames): Promise<void>;
}

export interface ListRead {
  rowsRead: number;
  columns: TakenColumn[];
  names: ListNames;
  /** Rows of which the purchase is known in part only. */
  purchasesInNotes: number;
}

/** How many rows are held at a time; between batches others get their turn. */
const rowsAtOnce = 100;

/** Reads a list once from its beginning: columns, rows, names, in bounded memory. */
export async function readList(list: ReadList): Promise<ListRead> {
  const { source, survey, options, problems } = list;
  const names = await ListNames.load(list.query);
  const lineOfNumber = new Map<string, number>();
  let bytesRead = 0;
  let rowsRead = 0;
  let purchasesInNotes = 0;
  let columns: TakenColumn[] = [];
  let batch: { row: ListRow; draft: ItemDraft }[] = [];

  const finishBatch = async () => {
    const known = await knownNumbers(
      list.query,
      list.dialect,
      batch.map(({ draft }) => draft.inventoryNumber),
    );
    const resolved = batch.map(({ row, draft }) => {
      if (known.has(draft.inventoryNumber)) {
        row.refuse('INVENTORY_NUMBER', `The collection has “${draft.inventoryNumber}” already.`);
      }
      return names.resolve(draft, options.kind, (field, message) => {
        row.refuse(field, message);
      });
    });
    await list.onBatch(resolved, names);
    batch = [];
    list.onProgress(rowsRead, bytesRead);
    await setImmediate();
  };

  const text = decodeList(source, survey.encoding, (count) => (bytesRead += count));
  const records = readRecords(text, delimiterMarks[survey.delimiter], (line, message) => {
    problems.add(line, null, message);
  });
  for await (const { line, cells } of records) {
    if (columns.length === 0) {
      const before = problems.count;
      columns = mapColumns(cells, line, options, problems);
      if (problems.count > before) break;
      continue;
    }
    if (cells.every((cell) => cell.trim() === '')) continue;
    rowsRead++;
    const row = new ListRow(line, cells, columns, problems);
    const draft = readItemDraft(row, options);
    if (draft === null) continue;
    if (draft.purchase === null && (row.text('ACQUIRED_ON') ?? row.text('SELLER')) !== null) {
      purchasesInNotes++;
    }
    const twinLine = lineOfNumber.get(draft.inventoryNumber);
    if (twinLine === undefined) lineOfNumber.set(draft.inventoryNumber, line);
    else {
      row.refuse('INVENTORY_NUMBER', `“${draft.inventoryNumber}” stands in line ${twinLine} too.`);
      continue;
    }
    batch.push({ row, draft });
    if (batch.length === rowsAtOnce) await finishBatch();
  }
  if (batch.length > 0) await finishBatch();
  if (rowsRead === 0 && problems.count === 0) {
    problems.add(null, null, 'The list has a header and no rows below it.');
  }
  return { rowsRead, columns, names, purchasesInNotes };
}
