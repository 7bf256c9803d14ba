import type { Checklist } from '../../db/checklist.js';

const firstYear = 1890;
const lastYear = 2100;

/** Years of making: four digits, and the right way round. */
export function checkYearsMade(
  check: Checklist,
  years: { firstYearMade: number | null; lastYearMade: number | null },
): void {
  for (const name of ['firstYearMade', 'lastYearMade'] as const) {
    const year = years[name];
    const holds = year === null || (year >= firstYear && year <= lastYear);
    check.that(holds, `Write the year with four digits, ${firstYear} to ${lastYear}.`, [name]);
  }
  const { firstYearMade: first, lastYearMade: last } = years;
  if (first !== null && last !== null && first > last) {
    check.refuse(`It cannot have been made last in ${last} and first in ${first}.`, [
      'lastYearMade',
    ]);
  }
}
