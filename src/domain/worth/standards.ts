/** Conditions that a value may be for. */
export type Standard = 'NOT_WORKING' | 'WORKING' | 'WORKING_AND_CLEAN' | 'AS_MADE' | 'FOR_SHOW';

/** The ladder, lowest first. FOR_SHOW is no rung: a set for the eye need not work. */
const ladder: readonly Standard[] = ['NOT_WORKING', 'WORKING', 'WORKING_AND_CLEAN', 'AS_MADE'];

/** Place on the ladder from 0; null beside it. */
export function rungOf(standard: Standard): number | null {
  const rung = ladder.indexOf(standard);
  return rung < 0 ? null : rung;
}

/** What a project that aims at a standard could stop at: that standard, and lower rungs that work. */
export function feasibleStandards(target: Standard): Standard[] {
  const rung = rungOf(target);
  return rung === null ? [target] : ladder.slice(1, rung + 1);
}

/** Whether reaching a standard takes what is needed from another one on; null: what all need. */
export function isNeededFor(standard: Standard, neededFrom: Standard | null): boolean {
  if (neededFrom === null || neededFrom === standard) return true;
  const [rung, least] = [rungOf(standard), rungOf(neededFrom)];
  return rung !== null && least !== null && rung >= least;
}
