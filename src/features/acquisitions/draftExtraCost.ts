import type { Checklist } from '../../db/checklist.js';
import { readSpent } from '../money/readSpent.js';
import type { ExtraCostInput } from './acquisition.inputs.js';
import { whyNoNegativePrice } from './whyNoNegativePrice.js';

/** An extra cost as it is kept; what is wrong with it goes to the checklist. */
export function draftExtraCost(check: Checklist, input: ExtraCostInput, path: string[]) {
  const paid = readSpent(check, input.amount, [...path, 'amount'], whyNoNegativePrice);
  return {
    description: check.words(input.description, [...path, 'description']),
    amountMinorUnits: paid.minorUnits,
    currency: paid.currency,
  };
}
