import type { HoursLeft } from './hoursLeft.js';

const CELLS = 1024;
/** Cells at both ends in which a quantile bends too much to be taken as straight. */
const BENT = 16;

/**
 * Adds hours at given probabilities to a row of sums, one a trial. The quantile is tabulated at
 * 1024 points and taken as linear between them, and as it is within the 16 cells at either end.
 */
export function drawHours(left: HoursLeft, uniforms: Float64Array, sums: Float64Array): void {
  if (left.varianceHours === 0) {
    const hours = left.meanHours;
    for (let trial = 0; trial < sums.length; trial += 1) sums[trial]! += hours;
    return;
  }
  const table = new Float64Array(CELLS - 2 * BENT + 1);
  for (let point = 0; point < table.length; point += 1) {
    table[point] = left.hoursAt((point + BENT) / CELLS);
  }
  for (let trial = 0; trial < sums.length; trial += 1) {
    const place = uniforms[trial]! * CELLS - BENT;
    const cell = Math.floor(place);
    if (cell < 0 || cell >= table.length - 1) {
      sums[trial]! += left.hoursAt(uniforms[trial]!);
    } else {
      const low = table[cell]!;
      sums[trial]! += low + (place - cell) * (table[cell + 1]! - low);
    }
  }
}
