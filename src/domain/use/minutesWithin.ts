import type { UseSpell } from './useSpell.js';

const MINUTE_MS = 60_000;

/**
 * Minutes of use between two instants, in whole minutes; a spell that reaches over an edge counts
 * with the part that lies inside.
 */
export function minutesWithin(
  spells: readonly UseSpell[],
  fromMs: number,
  untilMs: number,
): number {
  const insideMs = spells.reduce((sum, { startedAtMs, minutes }) => {
    const start = Math.max(startedAtMs, fromMs);
    const end = Math.min(startedAtMs + minutes * MINUTE_MS, untilMs);
    return sum + Math.max(0, end - start);
  }, 0);
  return Math.round(insideMs / MINUTE_MS);
}
