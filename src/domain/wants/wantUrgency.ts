/**
 * STOPS_WORK: an open task waits for it. STOPS_A_SET: it belongs in a required position of a set
 * that is not known to be filled. NOTHING_WAITS: neither.
 */
export type WantUrgency = 'STOPS_WORK' | 'STOPS_A_SET' | 'NOTHING_WAITS';

export interface WantFacts {
  /** Open tasks that cannot go on: the one it is for, and all that come after it. */
  readonly openTasksWaiting: number;
  readonly isForRequiredPosition: boolean;
  readonly isPositionFilled: boolean;
}

/** How badly something is wanted, by what it blocks. */
export function wantUrgency(facts: WantFacts): WantUrgency {
  if (facts.openTasksWaiting > 0) return 'STOPS_WORK';
  return facts.isForRequiredPosition && !facts.isPositionFilled ? 'STOPS_A_SET' : 'NOTHING_WAITS';
}

const rank: Record<WantUrgency, number> = { STOPS_WORK: 0, STOPS_A_SET: 1, NOTHING_WAITS: 2 };

/** The most urgent first; of two alike the one that more tasks wait for. */
export function byUrgency(
  left: { readonly urgency: WantUrgency; readonly openTasksWaiting: number },
  right: { readonly urgency: WantUrgency; readonly openTasksWaiting: number },
): number {
  return rank[left.urgency] - rank[right.urgency] || right.openTasksWaiting - left.openTasksWaiting;
}
