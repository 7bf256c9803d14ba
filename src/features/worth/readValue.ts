import { checkedRecordId } from '../../api/kit/checkedRecordId.js';
import { itemTypes } from '../../api/kit/globalId.js';
import type { MoneyInput } from '../../api/kit/money.type.js';
import type { Checklist } from '../../db/checklist.js';
import { checkPastDay } from '../money/checkPastDay.js';
import { readSpent } from '../money/readSpent.js';
import type { NoteValueInput } from './worth.inputs.js';
import type { ValueNoteEntity } from './valueNote.entity.js';

const whyNotNegative = 'A value is above zero; for what costs money to be rid of, note nothing.';
type ValueRow = Omit<ValueNoteEntity, 'id' | 'version' | 'recordedAt' | 'changedAt' | 'struckAt'>;

/** A value note as a person gave it; what is wrong goes to the checklist. */
export async function readValue(
  check: Checklist,
  input: NoteValueInput,
  now: string,
  at: string[] = [],
): Promise<ValueRow> {
  const modelId = checkedRecordId(check, 'Model', input.modelId, [...at, 'modelId']);
  const itemId = checkedRecordId(check, itemTypes, input.itemId, [...at, 'itemId']);
  const isOfOne = (typeof input.modelId === 'string') !== (typeof input.itemId === 'string');
  check.that(isOfOne, 'Say what was valued: a model or an item, one of the two.', [
    ...at,
    'itemId',
  ]);
  await check.exists('model', modelId, [...at, 'modelId']);
  await check.exists('item', itemId, [...at, 'itemId']);
  checkPastDay(check, input.valuedOn, now, [...at, 'valuedOn']);
  const likely = readSpent(check, input.likely, [...at, 'likely'], whyNotNegative);
  check.that(likely.minorUnits !== 0, whyNotNegative, [...at, 'likely', 'amount']);
  const end = (money: MoneyInput | null | undefined, name: string): number | null => {
    if (!money) return null;
    const read = readSpent(check, money, [...at, name], whyNotNegative);
    const isSame = read.currency === likely.currency;
    check.that(isSame, 'All three are in one currency.', [...at, name, 'currency']);
    return read.minorUnits;
  };
  const [low, high] = [end(input.low, 'low'), end(input.high, 'high')];
  check.that((low === null) === (high === null), 'Give both ends, or neither.', [...at, 'low']);
  if (low !== null && high !== null) {
    const rises = low > 0 && low <= likely.minorUnits && likely.minorUnits <= high;
    check.that(rises, 'Low, likely and high must rise, from above zero.', [...at, 'low']);
  }
  return {
    modelId,
    itemId,
    basis: input.basis,
    standard: input.standard,
    valuedOn: input.valuedOn,
    lowMinorUnits: low,
    likelyMinorUnits: likely.minorUnits,
    highMinorUnits: high,
    currency: likely.currency,
    source: check.words(input.source, [...at, 'source']),
    note: check.text(input.note, [...at, 'note']),
  };
}
