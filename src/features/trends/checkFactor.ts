import type { Checklist } from '../../db/checklist.js';

/** Beyond these two instruments measure different things, or a comma is in the wrong place. */
const largest = 1000;

export function checkFactor(check: Checklist, factor: string, path: string[]): void {
  const value = Number(factor);
  check.that(
    value >= 1 / largest && value <= largest,
    `A comparison factor lies between ${1 / largest} and ${largest}; this is ${factor}.`,
    path,
  );
}
