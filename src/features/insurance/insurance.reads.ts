import { computedReads } from '../../api/kit/computedReads.js';
import { heldRows } from '../../api/kit/heldRows.js';
import { one } from '../../api/kit/relations.js';

export const insuranceReads = [
  computedReads('InsuranceSchedule', { items: heldRows('InsuredItem', 'items') }),
  computedReads('InsuredItem', { item: one('Item', 'itemId') }),
] as const;
