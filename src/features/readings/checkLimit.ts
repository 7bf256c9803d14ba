import type { Checklist } from '../../db/checklist.js';
import { limitProblems } from '../../domain/condition/limitProblems.js';
import type { LimitEntity } from './limit.entity.js';
import { ucumProblem } from './ucum.js';

/** A limit that can judge a reading: a unit, and ends the right way round. */
export function checkLimit(
  check: Checklist,
  limit: Pick<LimitEntity, 'quantity' | 'tier' | 'lower' | 'upper' | 'unit' | 'source'>,
): void {
  const { quantity, tier, lower, upper, unit, source } = limit;
  const asRule = { quantityCode: quantity, tier, lower, upper, unitCode: unit, source };
  for (const { field, message } of limitProblems(asRule)) check.refuse(message, [field]);
  const problem = ucumProblem(unit);
  if (problem !== null) check.refuse(problem, ['unit']);
}
