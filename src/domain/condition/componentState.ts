import type { JudgedReading } from './judgedReading.js';
import { latestReadings } from './latestReadings.js';

/**
 * UNTESTED: no reading could be judged.
 * PASSED_ON_TESTER: the tester found nothing against it; that does not prove it.
 * PROVEN_IN_CIRCUIT: a latest in-circuit reading is within limits and no latest reading is outside.
 * SUSPECT: the tester's latest word is against it, the circuit's later word is for it. Neither
 *   overrules the other, so someone must look again.
 * REJECTED: a latest reading is outside its limits, in circuit, or on the tester with no later
 *   in-circuit reading that speaks for it.
 */
export type ComponentState =
  'UNTESTED' | 'PASSED_ON_TESTER' | 'PROVEN_IN_CIRCUIT' | 'SUSPECT' | 'REJECTED';

export interface ComponentStanding {
  readonly state: ComponentState;
  /** The readings that say so: those against it, those for it, or both when it is suspect. */
  readonly readingIds: readonly string[];
}

/**
 * The state of a component from its readings. Only the latest reading of each quantity on each tier
 * counts, so a later good one replaces an earlier bad one of the same quantity and tier. A tester
 * can reject, never prove (common practice, no source).
 */
export function componentState(readings: readonly JudgedReading[]): ComponentStanding {
  const latest = latestReadings(readings);
  const against = latest.filter((reading) => reading.verdict !== 'WITHIN_LIMITS');
  const provingReadings = latest.filter(
    (reading) => reading.tier === 'IN_CIRCUIT' && reading.verdict === 'WITHIN_LIMITS',
  );
  if (against.length > 0) {
    const lastAgainstMs = Math.max(...against.map((reading) => reading.takenAtMs));
    const contradicting = provingReadings.filter((reading) => reading.takenAtMs >= lastAgainstMs);
    const onlyTheTesterObjects = against.every((reading) => reading.tier === 'TESTER');
    return onlyTheTesterObjects && contradicting.length > 0
      ? standing('SUSPECT', [...against, ...contradicting])
      : standing('REJECTED', against);
  }
  if (provingReadings.length > 0) return standing('PROVEN_IN_CIRCUIT', provingReadings);
  return latest.length > 0 ? standing('PASSED_ON_TESTER', latest) : standing('UNTESTED', []);
}

function standing(state: ComponentState, readings: readonly JudgedReading[]): ComponentStanding {
  return { state, readingIds: readings.map((reading) => reading.readingId) };
}
