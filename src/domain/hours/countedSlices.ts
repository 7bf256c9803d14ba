import { compareText } from '../compareText.js';
import { MinHeap } from '../minHeap.js';
import { OverlapList, type Overlap, type RankedInterval } from './overlapList.js';
import { workedIntervals, type Interval } from './workedIntervals.js';
import type { WorkSession } from './workSession.js';

/** A stretch of one person's time, counted once and given to one session. */
export interface Slice extends Interval {
  readonly sessionId: string;
  readonly personId: string;
  readonly itemId: string;
  readonly taskId: string | null;
  readonly taskKind: string;
  readonly zone: string;
}

export interface CountedTime {
  /** By person, then in time order; no two of the same person overlap. */
  readonly slices: Slice[];
  /** Pairs of one person's sessions that claim the same time. */
  readonly overlaps: Overlap[];
  /** False when there were more overlapping pairs than are listed; the slices are complete. */
  readonly isOverlapListComplete: boolean;
  /** Seconds claimed by sessions beyond what was counted: the time saved from double counting. */
  readonly repeatedSeconds: number;
}

/**
 * The time that counts: net of breaks, and each moment of a person once across all sessions, given
 * to the session that started first (at equal starts, the lower id) of those at work just then.
 * Running sessions count up to `nowMs`, and nothing counts after it. Session ids must be unique.
 */
export function countedSlices(sessions: readonly WorkSession[], nowMs: number): CountedTime {
  const slices: Slice[] = [];
  const overlaps = new OverlapList();
  let claimedMs = 0;
  let countedMs = 0;

  for (const [, ofPerson] of sessionsByPerson(sessions)) {
    const ordered = ofPerson.sort(
      (a, b) => a.startedAtMs - b.startedAtMs || compareText(a.id, b.id),
    );
    const worked: RankedInterval[] = [];
    ordered.forEach((session, rank) => {
      for (const { startedAtMs, endedAtMs } of workedIntervals(session, nowMs)) {
        worked.push({ rank, startedAtMs, endedAtMs });
        claimedMs += endedAtMs - startedAtMs;
      }
    });
    worked.sort((a, b) => a.startedAtMs - b.startedAtMs || a.rank - b.rank);
    overlaps.collect(worked, ordered);
    countEachMomentOnce(worked, (rank, startedAtMs, endedAtMs) => {
      countedMs += endedAtMs - startedAtMs;
      slices.push(toSlice(ordered[rank]!, startedAtMs, endedAtMs));
    });
  }
  return {
    slices,
    overlaps: overlaps.pairs(),
    isOverlapListComplete: overlaps.isComplete,
    repeatedSeconds: (claimedMs - countedMs) / 1000,
  };
}

/** Sweeps one person's stretches, sorted by start; the lowest rank at work owns the moment. */
function countEachMomentOnce(
  worked: readonly RankedInterval[],
  count: (rank: number, startedAtMs: number, endedAtMs: number) => void,
): void {
  const atWork = new MinHeap();
  const endByRank = new Map<number, number>();
  let next = 0;
  let cursor = -Infinity;
  while (next < worked.length || atWork.smallest !== undefined) {
    if (atWork.smallest === undefined) cursor = Math.max(cursor, worked[next]!.startedAtMs);
    for (; next < worked.length && worked[next]!.startedAtMs <= cursor; next += 1) {
      atWork.push(worked[next]!.rank);
      endByRank.set(worked[next]!.rank, worked[next]!.endedAtMs);
    }
    const owner = atWork.smallest!;
    const ownerEnd = endByRank.get(owner)!;
    if (ownerEnd <= cursor) {
      atWork.pop();
      continue;
    }
    let until = ownerEnd;
    // A later session takes nothing from the owner; only one of lower rank, back from a break, does.
    for (; next < worked.length && worked[next]!.startedAtMs < until; next += 1) {
      if (worked[next]!.rank < owner) {
        until = worked[next]!.startedAtMs;
        break;
      }
      atWork.push(worked[next]!.rank);
      endByRank.set(worked[next]!.rank, worked[next]!.endedAtMs);
    }
    count(owner, cursor, until);
    cursor = until;
  }
}

function sessionsByPerson(sessions: readonly WorkSession[]): [string, WorkSession[]][] {
  const byPerson = new Map<string, WorkSession[]>();
  for (const session of sessions) {
    const known = byPerson.get(session.personId);
    if (known === undefined) byPerson.set(session.personId, [session]);
    else known.push(session);
  }
  return [...byPerson].sort(([a], [b]) => compareText(a, b));
}

function toSlice(session: WorkSession, startedAtMs: number, endedAtMs: number): Slice {
  const { id, personId, itemId, taskId, taskKind, zone } = session;
  return { sessionId: id, personId, itemId, taskId, taskKind, zone, startedAtMs, endedAtMs };
}
