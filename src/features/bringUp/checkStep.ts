import type { Checklist } from '../../db/checklist.js';
import { nameKey } from '../../domain/nameKey.js';
import { convertUnit } from '../readings/ucum.js';
import type { RecordBringUpStepInput } from './bringUp.inputs.js';
import type { ProcedureStep } from './procedureShape.js';

const mostReadings = 100;

/** A reading of a step with what the step asks of it. */
export type CheckedReading = ReturnType<typeof checkStep>[number];

/**
 * What is recorded of a step must answer all that it asks, and nothing else.
 * @returns the readings, each with what the step asks of it
 */
export function checkStep(
  check: Checklist,
  step: ProcedureStep,
  { holds, readings }: Pick<RecordBringUpStepInput, 'holds' | 'readings'>,
) {
  const { statements } = step;
  check.that(
    holds.length === statements.length,
    `“${step.title}” makes ${statements.length} statements and you answered ${holds.length}: ${statements.join(' / ')}`,
    ['holds'],
  );
  check.that(
    readings.length <= mostReadings,
    `Send at most ${mostReadings} readings; these are ${readings.length}.`,
    ['readings'],
  );
  const named = readings.map((reading, index) => {
    const path = ['readings', String(index)];
    const asked = step.readings.find(
      ({ quantity }) => nameKey(quantity) === nameKey(reading.quantity),
    );
    if (!asked) {
      const wanted = step.readings.map(({ quantity }) => quantity).join(', ');
      check.refuse(
        `“${step.title}” does not ask for “${reading.quantity.slice(0, 80)}”. It asks for: ${wanted || 'no reading'}.`,
        [...path, 'quantity'],
      );
      return [];
    }
    check.that(
      convertUnit(reading.value, reading.unit, asked.unit) !== null,
      `${asked.quantity} is asked for in ${asked.unit}; “${reading.unit.slice(0, 40)}” measures something else.`,
      [...path, 'unit'],
    );
    return [{ ...reading, quantity: asked.quantity, tier: asked.tier }];
  });
  const given = new Set(named.flat().map(({ quantity }) => quantity));
  const missing = step.readings.filter(({ quantity }) => !given.has(quantity));
  check.that(
    missing.length === 0,
    `Not read yet: ${missing.map(({ quantity, unit }) => `${quantity} (${unit})`).join(', ')}.`,
    ['readings'],
  );
  return named.flat();
}
