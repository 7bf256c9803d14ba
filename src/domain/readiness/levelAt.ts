import type { ReadinessLevel } from './readinessLevel.js';

/** The level at an instant, from the kept level and the first lapse alone: enough for a list. */
export function levelAt(
  standing: { readonly level: ReadinessLevel; readonly checksValidUntilMs: number | null },
  nowMs: number,
): ReadinessLevel {
  const { level, checksValidUntilMs } = standing;
  const hasLapsed = checksValidUntilMs !== null && nowMs >= checksValidUntilMs;
  return level === 'ON_AIR_READY' && hasLapsed ? 'CHECKS_DUE' : level;
}
