import type { Overlap } from '../../domain/hours/overlapList.js';
import type { MonthTally } from '../../domain/hours/tallySeconds.js';
import { workedIntervals } from '../../domain/hours/workedIntervals.js';
import type { WorkSession } from '../../domain/hours/workSession.js';
import type { HoursInvested } from './hoursInvested.type.js';
import { hourSums } from './hourSums.js';
import { hundredths, shownBasis } from './standingFacts.js';

export interface HoursInputs {
  /** Sessions of the item or project, running ones too. */
  sessions: readonly WorkSession[];
  /** Their counted time. */
  tallies: readonly MonthTally[];
  /** Pairs that claim the same time, of whatever item. */
  overlaps: readonly Overlap[];
}

/** Hours invested, from time that has been counted once. */
export function hoursStanding(inputs: HoursInputs, nowMs: number): HoursInvested {
  const { sessions, tallies } = inputs;
  const own = new Set(sessions.map(({ id }) => id));
  const running = sessions.filter(({ endedAtMs }) => endedAtMs === null);
  const overlaps = inputs.overlaps.filter(
    (pair) => own.has(pair.firstSessionId) || own.has(pair.secondSessionId),
  );
  const seconds = tallies.reduce((sum, tally) => sum + tally.seconds, 0);
  const finished = sessions.filter(({ endedAtMs }) => endedAtMs !== null);
  const repeatedSeconds = claimedSeconds(finished, nowMs) - seconds;
  return {
    ...hourSums(tallies),
    repeatedHours: hundredths(repeatedSeconds / 3600),
    repeatedSeconds,
    runningSince: running.map(({ startedAtMs }) => new Date(startedAtMs).toISOString()),
    basis: shownBasis(
      {
        method:
          'Time between start and end of each finished session, less its breaks; time that two sessions of one person claim counts once, for the one that started first.',
        counted: [
          { what: 'finished sessions', count: finished.length },
          { what: 'breaks taken off', count: sessions.flatMap(({ breaks }) => breaks).length },
          { what: 'overlapping pairs of sessions', count: overlaps.length },
          { what: 'running timers not yet counted', count: running.length },
        ],
      },
      nowMs,
    ),
  };
}

/** Net of breaks, whoever else claims the same time. */
const claimedSeconds = (sessions: readonly WorkSession[], nowMs: number): number =>
  sessions
    .flatMap((session) => workedIntervals(session, nowMs))
    .reduce((sum, { startedAtMs, endedAtMs }) => sum + (endedAtMs - startedAtMs) / 1000, 0);
