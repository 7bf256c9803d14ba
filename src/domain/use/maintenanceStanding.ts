import { minutesWithin } from './minutesWithin.js';
import type { UseSpell } from './useSpell.js';

const DAY_MS = 86_400_000;

/** What is to be done again and again: after so much use, so many days, whichever is first. */
export interface MaintenanceRule {
  readonly everyUseMinutes: number | null;
  /** Days of 24 hours. */
  readonly everyDays: number | null;
  /** From when it counts: when it was last done, or else when the rule began. */
  readonly sinceMs: number;
}

export interface MaintenanceStanding {
  readonly isDue: boolean;
  readonly usedMinutes: number;
  /** Below 0 when it is overdue by use; null when use does not matter. */
  readonly minutesLeft: number | null;
  /** The day on which the calendar makes it due; null when the calendar does not matter. */
  readonly dueAtMs: number | null;
  /** How much of the interval is spent, the further one of the two: 1 is due. */
  readonly share: number;
}

/** How near a rule is to falling due at an instant. Reaching the interval is being due. */
export function maintenanceStanding(
  rule: MaintenanceRule,
  spells: readonly UseSpell[],
  nowMs: number,
): MaintenanceStanding {
  const { everyUseMinutes, everyDays, sinceMs } = rule;
  const usedMinutes = minutesWithin(spells, sinceMs, nowMs);
  const byUse = everyUseMinutes === null ? 0 : usedMinutes / everyUseMinutes;
  const byDays = everyDays === null ? 0 : (nowMs - sinceMs) / (everyDays * DAY_MS);
  const share = Math.max(byUse, byDays, 0);
  return {
    isDue: share >= 1,
    usedMinutes,
    minutesLeft: everyUseMinutes === null ? null : everyUseMinutes - usedMinutes,
    dueAtMs: everyDays === null ? null : sinceMs + everyDays * DAY_MS,
    share,
  };
}
