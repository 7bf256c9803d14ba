import { dateOfDay } from '../dates/dayNumber.js';
import type { LocalDate } from '../dates/localDate.js';
import { NEVER } from './finishDays.js';

/**
 * The first day by which the given share of trials is done; null when fewer ever are. No day
 * between two days is made up: it is one that a trial gave.
 */
export function dateQuantile(days: Float64Array, probability: number): LocalDate | null {
  const sorted = days.slice().sort();
  const day = sorted[Math.max(0, Math.ceil(probability * sorted.length) - 1)];
  return day === undefined || day >= NEVER ? null : dateOfDay(day);
}
