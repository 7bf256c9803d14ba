import type { Checklist } from '../../db/checklist.js';
import { ucumProblem } from '../readings/ucum.js';
import type { SweepColumn } from './sweepColumn.js';

const mostQuantities = 20;

/** The columns as they are kept; what is wrong with them goes to the checklist. */
export function checkColumns(check: Checklist, columns: readonly SweepColumn[]): SweepColumn[] {
  check.that(
    columns.length >= 1 && columns.length <= mostQuantities,
    `Send from 1 to ${mostQuantities}; these are ${columns.length}.`,
    ['quantities'],
  );
  return columns.map(({ quantity, unit }, index) => {
    const path = ['quantities', String(index)];
    const problem = ucumProblem(unit);
    if (problem !== null) check.refuse(problem, [...path, 'unit']);
    const words = check.words(quantity, [...path, 'quantity'], 80);
    return { quantity: words.replace(/\s+/g, ' '), unit };
  });
}
