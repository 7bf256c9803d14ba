import type { JudgedReading } from './judgedReading.js';
import { latestReadings } from './latestReadings.js';

/**
 * UNTESTED: no reading could be judged.
 * PASSED_ON_TESTER: the tester found nothing against it; that does not prove it.
 * PROVEN_IN_CIRCUIT: a latest in-circuit reading is within limits and no latest reading is outside.
 * SUSPECT: the tester's latest word is against it, the circuit's later word is for it. Neither
 *   overrules the other, so someone must look again. Or a trend reaches a limit soon.
 * REJECTED: a latest reading is outside its limits, in circuit, or on the tester with no later
 *   in-circuit reading that speaks for it.
 */
export type ComponentState =
  'UNTESTED' | 'PASSED_ON_TESTER' | 'PROVEN_IN_CIRCUIT' | 'SUSPECT' | 'REJECTED';

/** What a state rests on. */
export type StandingGround =
  'NOTHING_JUDGED' | 'WITHIN_LIMITS' | 'OUTSIDE_LIMITS' | 'CONTRADICTION' | 'TREND';

export interface ComponentStanding {
  readonly state: ComponentState;
  readonly ground: StandingGround;
  /** The readings that say so: those against it, those for it, or both when it is suspect. */
  readonly readingIds: readonly string[];
}

/**
 * The state of a component from its readings. Only the latest reading of each quantity on each tier
 * counts, so a later good one replaces an earlier bad one of the same quantity and tier. A tester
 * can reject, never prove (common practice, no source).
 * @param nearingLimit the readings of each trend that reaches a limit soon
 */
export function componentState(
  readings: readonly JudgedReading[],
  nearingLimit: readonly (readonly string[])[] = [],
): ComponentStanding {
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
      ? standing('SUSPECT', 'CONTRADICTION', [...against, ...contradicting])
      : standing('REJECTED', 'OUTSIDE_LIMITS', against);
  }
  if (nearingLimit.length > 0) {
    return { state: 'SUSPECT', ground: 'TREND', readingIds: [...new Set(nearingLimit.flat())] };
  }
  if (provingReadings.length > 0) {
    return standing('PROVEN_IN_CIRCUIT', 'WITHIN_LIMITS', provingReadings);
  }
  return latest.length > 0
    ? standing('PASSED_ON_TESTER', 'WITHIN_LIMITS', latest)
    : standing('UNTESTED', 'NOTHING_JUDGED', []);
}

function standing(
  state: ComponentState,
  ground: StandingGround,
  readings: readonly JudgedReading[],
): ComponentStanding {
  return { state, ground, readingIds: readings.map((reading) => reading.readingId) };
}
