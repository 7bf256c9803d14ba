import type { JudgedReading } from './judgedReading.js';

/**
 * The latest judged reading of each quantity on each tier, oldest first. A reading with no limit to
 * judge it says nothing and replaces nothing. Of two at the same instant the one outside its limits
 * counts, then the lower id, so that the order of the input never matters.
 */
export function latestReadings(readings: readonly JudgedReading[]): JudgedReading[] {
  const latest = new Map<string, JudgedReading>();
  for (const reading of [...readings].sort(byTimeThenGoodFirst)) {
    if (reading.verdict === 'NO_LIMIT') continue;
    latest.set(JSON.stringify([reading.quantityCode, reading.tier]), reading);
  }
  return [...latest.values()].sort(byTimeThenGoodFirst);
}

function byTimeThenGoodFirst(left: JudgedReading, right: JudgedReading): number {
  return (
    left.takenAtMs - right.takenAtMs ||
    Number(isOutside(left)) - Number(isOutside(right)) ||
    (left.readingId > right.readingId ? -1 : left.readingId < right.readingId ? 1 : 0)
  );
}

function isOutside(reading: JudgedReading): boolean {
  return reading.verdict === 'BELOW_LIMIT' || reading.verdict === 'ABOVE_LIMIT';
}
