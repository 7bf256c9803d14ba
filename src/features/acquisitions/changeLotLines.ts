import { checkedRecordId } from '../../api/kit/checkedRecordId.js';
import { itemTypes } from '../../api/kit/globalId.js';
import { changeRow, type RowChanges } from '../../db/changeRow.js';
import type { Checklist } from '../../db/checklist.js';
import { rowSourceInWork } from '../../db/rowSource.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { checkLotItems } from './checkLotItems.js';
import { LotLineEntity } from './lotLine.entity.js';
import type { ChangeLotLineInput } from './lotLine.inputs.js';
import type { KeptLot, KeptLotLine } from './lots.reads.js';
import { readStatedShare } from './readStatedShare.js';
import { readStatedValue } from './readStatedValue.js';

interface ChangedLines {
  /** All lines of the lot as they will be. */
  lines: KeptLotLine[];
  keepLines: () => Promise<void>;
}

/** What a lot's lines become by a change; nothing is written before `keepLines`. */
export async function changeLotLines(
  work: UnitOfWork,
  check: Checklist,
  lot: KeptLot,
  inputs: readonly ChangeLotLineInput[],
  currency: string,
): Promise<ChangedLines> {
  const pathOf = (index: number) => ['lines', String(index)];
  const changes = inputs.map((input, index) => changesOf(check, input, currency, pathOf(index)));
  const before = new Map(lot.lines.map((line) => [line.id, line]));
  const changed = new Map<string, RowChanges<LotLineEntity>>();
  const itemsTaken = changes.map(({ id, values }, index) => {
    const line = id === null ? undefined : before.get(id);
    if (id === null) return null;
    if (!line) {
      const message = 'There is no line with this id in the lot.';
      check.add({ code: 'NOT_FOUND', message, path: [...pathOf(index), 'id'] });
      return null;
    }
    check.that(!changed.has(id), 'This line is changed twice.', [...pathOf(index), 'id']);
    changed.set(id, values);
    const after = { ...line, ...values };
    check.that(
      (after.itemId === null) !== (after.sundries === null),
      'A line is an item or sundries: give one of the two, and null for the other.',
      pathOf(index),
    );
    return after.itemId === line.itemId ? null : after.itemId;
  });
  await checkLotItems(rowSourceInWork(work), check, itemsTaken, pathOf);
  const isOtherCurrency = currency !== lot.price.currency;
  // A value in the old currency is no value in the new one: each must be stated again.
  const kept = (line: KeptLotLine): KeptLotLine => ({
    ...line,
    ...(isOtherCurrency && { statedValueMinorUnits: null }),
    ...changed.get(line.id),
  });
  const lines = lot.lines.map(kept);
  const versions = new Map(changes.map(({ id, version }) => [id, version]));
  return {
    lines,
    keepLines: async () => {
      for (const { id, itemId, sundries, statedShare, statedValueMinorUnits } of lines) {
        if (!changed.has(id) && !isOtherCurrency) continue;
        const values = { itemId, sundries, statedShare, statedValueMinorUnits };
        await changeRow(work, LotLineEntity, id, versions.get(id) ?? null, values);
      }
    },
  };
}

function changesOf(
  check: Checklist,
  input: ChangeLotLineInput,
  currency: string,
  path: string[],
): { id: string | null; version: number; values: RowChanges<LotLineEntity> } {
  const at = (field: string) => [...path, field];
  const { itemId, sundries, statedShare, statedValue } = input;
  return {
    id: checkedRecordId(check, 'LotLine', input.id, at('id')),
    version: input.version,
    values: {
      ...(itemId !== undefined && {
        itemId: checkedRecordId(check, itemTypes, itemId, at('itemId')),
      }),
      ...(sundries !== undefined && {
        sundries: sundries === null ? null : check.words(sundries, at('sundries')),
      }),
      ...(statedShare !== undefined && {
        statedShare: readStatedShare(check, statedShare, at('statedShare')),
      }),
      ...(statedValue !== undefined && {
        statedValueMinorUnits: readStatedValue(check, statedValue, currency, at('statedValue')),
      }),
    },
  };
}
