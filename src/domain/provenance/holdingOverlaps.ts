import type { LocalDate } from '../dates/localDate.js';
import type { ChainEvent } from './chainEvent.js';
import { firmHoldings } from './firmHoldings.js';

/** A time in which, by what is recorded, several people had the one thing. */
export interface HoldingOverlap {
  readonly from: LocalDate;
  /** The day on which one of them, or all, gave it up. */
  readonly to: LocalDate;
  /** Two or more, each once. */
  readonly partyIds: readonly string[];
}

/**
 * When several people surely held a thing at once, whatever the true dates are, with all of them:
 * cut wherever one of them comes or goes. A day on which it passes from one to the other is no
 * overlap.
 */
export function holdingOverlaps(events: readonly ChainEvent[]): HoldingOverlap[] {
  const firm = firmHoldings(events).flatMap(({ partyId, came, went }) =>
    came.latest !== null && went.earliest !== null
      ? [{ partyId, from: came.latest, to: went.earliest }]
      : [],
  );
  const cuts = [...new Set(firm.flatMap(({ from, to }) => [from, to]))].sort();
  return cuts.flatMap((from, index): HoldingOverlap[] => {
    const to = cuts[index + 1];
    if (to === undefined) return [];
    const there = firm.filter((one) => one.from <= from && to <= one.to);
    const partyIds = [...new Set(there.map(({ partyId }) => partyId))].sort();
    return partyIds.length > 1 ? [{ from, to, partyIds }] : [];
  });
}
