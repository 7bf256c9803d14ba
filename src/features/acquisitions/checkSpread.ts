import type { Checklist } from '../../db/checklist.js';
import { lotProblems } from '../../domain/money/lotProblems.js';
import type { LotSpread } from '../../domain/money/lotWeights.js';

/**
 * The lot can be spread over its lines; every fault goes to the checklist.
 * @param pathOf where the line is in the input; null: the input does not name it
 */
export function checkSpread(
  check: Checklist,
  lot: LotSpread,
  pathOf: (line: number) => string[] | null,
): void {
  for (const { line, field, message } of lotProblems(lot)) {
    const path = line === null ? null : pathOf(line);
    if (path !== null) check.refuse(message, field === null ? path : [...path, field]);
    else if (line === null) check.refuse(message, ['lines']);
    else check.refuse(`Line ${line + 1} of the lot: ${message}`, ['lines']);
  }
}
