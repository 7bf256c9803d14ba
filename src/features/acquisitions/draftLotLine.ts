import { checkedRecordId } from '../../api/kit/checkedRecordId.js';
import { itemTypes } from '../../api/kit/globalId.js';
import type { Checklist } from '../../db/checklist.js';
import { draftNewItem } from './draftNewItem.js';
import type { LotLineInput } from './lotLine.inputs.js';
import type { LotLineDraft } from './lotDraft.js';
import { readStatedShare } from './readStatedShare.js';
import { readStatedValue } from './readStatedValue.js';

/** One line as given; what is wrong with it goes to the checklist. Nothing is written. */
export function draftLotLine(
  check: Checklist,
  input: LotLineInput,
  currency: string,
  path: string[],
): LotLineDraft {
  const { itemId, newItem, sundries } = input;
  const named = [itemId, newItem, sundries].filter(
    (thing) => thing !== null && thing !== undefined,
  );
  check.that(
    named.length === 1,
    'A line is one thing: give `itemId`, `newItem` or `sundries`, exactly one of the three.',
    path,
  );
  return {
    itemId: checkedRecordId(check, itemTypes, itemId, [...path, 'itemId']),
    newItem: newItem ? draftNewItem(check, newItem, [...path, 'newItem']) : null,
    sundries: typeof sundries === 'string' ? check.words(sundries, [...path, 'sundries']) : null,
    statedShare: readStatedShare(check, input.statedShare, [...path, 'statedShare']),
    statedValueMinorUnits: readStatedValue(check, input.statedValue, currency, [
      ...path,
      'statedValue',
    ]),
  };
}
