import type { Interval } from './workedIntervals.js';
import type { WorkSession } from './workSession.js';

/** A worked stretch of one session; `rank` orders one person's sessions by start, then id. */
export interface RankedInterval extends Interval {
  readonly rank: number;
}

/** Two sessions of one person that were both at work for the given time, net of breaks. */
export interface Overlap {
  readonly personId: string;
  /** The session that started first, to which the shared time is given. */
  readonly firstSessionId: string;
  readonly secondSessionId: string;
  readonly seconds: number;
}

// Pairs grow with the square of sessions that all overlap, as in a mistaken import; a list longer
// than this helps nobody and would stall the count, so it ends here and says that it does.
const MOST_PAIRS_LISTED = 10_000;

/** Collects the pairs of sessions that claim the same time, person by person. */
export class OverlapList {
  isComplete = true;
  readonly #pairs: Overlap[] = [];

  /** Takes one person's stretches sorted by start; `rank` is the index in `ordered`. */
  collect(worked: readonly RankedInterval[], ordered: readonly WorkSession[]): void {
    const secondsByPair = new Map<string, number>();
    const room = MOST_PAIRS_LISTED - this.#pairs.length;
    let atWork: RankedInterval[] = [];
    for (const interval of worked) {
      if (!this.isComplete) break;
      atWork = atWork.filter((other) => other.endedAtMs > interval.startedAtMs);
      for (const other of atWork) {
        const sharedUntil = Math.min(other.endedAtMs, interval.endedAtMs);
        const first = Math.min(interval.rank, other.rank);
        const second = Math.max(interval.rank, other.rank);
        const key = `${first} ${second}`;
        const known = secondsByPair.get(key);
        if (known === undefined && secondsByPair.size === room) {
          this.isComplete = false;
          break;
        }
        secondsByPair.set(key, (known ?? 0) + (sharedUntil - interval.startedAtMs) / 1000);
      }
      atWork.push(interval);
    }
    for (const [key, seconds] of secondsByPair) {
      const [first, second] = key.split(' ').map((rank) => ordered[Number(rank)]!);
      this.#pairs.push({
        personId: first!.personId,
        firstSessionId: first!.id,
        secondSessionId: second!.id,
        seconds,
      });
    }
  }

  /** The pairs found, by person and then in the order in which they first clash. */
  pairs(): Overlap[] {
    return [...this.#pairs];
  }
}
