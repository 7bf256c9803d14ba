/** One need of an item for a part; the grounds may speak of the same need. */
export interface BillNeed {
  /** Places that lack one, or whose part is to be replaced. */
  readonly places: number;
  /** Wanted by open tasks. */
  readonly tasks: number;
  /** Still open on the wanted list. */
  readonly wanted: number;
}

export interface BillQuantities {
  readonly needed: number;
  readonly toGet: number;
}

/**
 * How many of a part an item needs and how many are still to be got. A task that fills a place and a
 * want for it are one need and not three, so the largest of the three counts and not their sum.
 * @param spares to have at hand beyond the need; @param covered free on the shelf or put aside for it
 */
export function billQuantities(need: BillNeed, spares: number, covered: number): BillQuantities {
  const needed = Math.max(need.places, need.tasks, need.wanted);
  return { needed, toGet: Math.max(0, needed + spares - covered) };
}
