import type { LocalDate } from '../../domain/dates/localDate.js';

const farthestAheadMs = 14 * 3_600_000;

/** The day that it is, at an instant, where the day begins first (UTC+14). */
export const latestDayAt = (nowMs: number): LocalDate =>
  new Date(nowMs + farthestAheadMs).toISOString().slice(0, 10);
