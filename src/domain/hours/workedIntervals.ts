import type { WorkSession } from './workSession.js';

/** A stretch of time, its end not included, in epoch milliseconds. */
export interface Interval {
  readonly startedAtMs: number;
  readonly endedAtMs: number;
}

/**
 * The stretches of a session in which there was work: breaks taken out, nothing after `nowMs`.
 *
 * The clock is read in whole seconds (fractions cut off), so that however time is split afterwards
 * its parts add up to the whole. A session that ends before it starts has no stretches.
 */
export function workedIntervals(
  session: Pick<WorkSession, 'startedAtMs' | 'endedAtMs' | 'breaks'>,
  nowMs: number,
): Interval[] {
  const end = toWholeSecond(Math.min(session.endedAtMs ?? nowMs, nowMs));
  let cursor = toWholeSecond(session.startedAtMs);
  const worked: Interval[] = [];
  const breaks =
    session.breaks.length < 2
      ? session.breaks
      : [...session.breaks].sort((a, b) => a.startedAtMs - b.startedAtMs);
  for (const pause of breaks) {
    const breakStart = Math.min(toWholeSecond(pause.startedAtMs), end);
    const breakEnd = toWholeSecond(pause.endedAtMs ?? Infinity);
    if (breakEnd <= breakStart) continue;
    if (breakStart > cursor) worked.push({ startedAtMs: cursor, endedAtMs: breakStart });
    cursor = Math.max(cursor, breakEnd);
  }
  if (end > cursor) worked.push({ startedAtMs: cursor, endedAtMs: end });
  return worked;
}

function toWholeSecond(instantMs: number): number {
  return Math.floor(instantMs / 1000) * 1000;
}
