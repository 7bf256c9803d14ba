import { pastInstant } from '../../api/kit/pastInstant.js';
import type { Checklist } from '../../db/checklist.js';
import { shortText } from '../../db/shortText.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { isComparable, limitsApplying, type JudgeableReading } from './judgeReading.js';
import type { KeptLimit } from './limitsOfSubjects.reads.js';
import type { ReadingInput } from './reading.inputs.js';
import { ucumProblem } from './ucum.js';

/** What is measured, with what, how and when: the part that is the same for new and corrected. */
export function checkReading(
  work: UnitOfWork,
  check: Checklist,
  input: Omit<ReadingInput, 'componentId' | 'itemId' | 'takenById'>,
  limits: readonly KeptLimit[],
  path: string[],
) {
  const quantity = check.words(input.quantity, [...path, 'quantity'], 80).replace(/\s+/g, ' ');
  const problem = ucumProblem(input.unit);
  if (problem !== null) check.refuse(problem, [...path, 'unit']);
  else refuseForeignUnit(check, { ...input, quantity }, limits, [...path, 'unit']);
  return {
    quantity,
    value: input.value,
    unit: input.unit,
    tier: input.tier,
    instrument: shortText(check, input.instrument, [...path, 'instrument'], 200),
    method: shortText(check, input.method, [...path, 'method'], 200),
    takenAt: pastInstant(check, work, input.takenAt, [...path, 'takenAt']),
    note: check.text(input.note, [...path, 'note']),
  };
}

/** A reading in ohms of what is limited in siemens would be judged by nobody. */
function refuseForeignUnit(
  check: Checklist,
  reading: JudgeableReading,
  limits: readonly KeptLimit[],
  path: string[],
): void {
  const foreign = limitsApplying(reading, limits).find((limit) => !isComparable(reading, limit));
  if (!foreign) return;
  const message =
    `The limit for ${reading.quantity} is in ${foreign.unit}; ${reading.unit} measures something ` +
    `else. Give the reading in ${foreign.unit} or a multiple of it.`;
  check.refuse(message, path);
}
