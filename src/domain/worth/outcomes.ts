import type { Standard } from './standards.js';
import type { UncertainAmount } from './uncertainAmount.js';

/** Finishing to a standard: what it will then be worth, and what that takes from here. */
export interface Finish {
  readonly standard: Standard;
  readonly value: UncertainAmount;
  /** Expected cost to come, own time included where it has a price, in minor units. */
  readonly expectedCost: number;
}

/** What a decision looks forward to, in minor units of one currency. What was spent is not in it. */
export interface Prospects {
  readonly finishes: readonly Finish[];
  /** As it stands; null when nothing says. */
  readonly asItStands: UncertainAmount | null;
  /** Expected, after selling effort; null when no price of a part is known. */
  readonly partsNet: number | null;
  /** Expected worth of what would be needed of its parts one day; null as above. */
  readonly spares: number | null;
  /** Share of a price, 0 to 1, that selling takes. */
  readonly saleCostShare: number;
  /** Chance, 0 to 1, that finishing reaches the standard. */
  readonly successChance: number;
  /** What the owner says that having it finished is worth beyond its price. */
  readonly premium: number;
}

export type OutcomeKind = 'FINISH' | 'LEAVE' | 'SELL' | 'PART_OUT' | 'KEEP_FOR_SPARES';

export interface Outcome {
  readonly kind: OutcomeKind;
  readonly standard: Standard | null;
  /** Expected worth afterwards, without the premium. */
  readonly worth: number;
  /** Expected premium: what the owner states, times the chance of success; 0 unless finished. */
  readonly premium: number;
  readonly cost: number;
  /** Worth and premium less cost: what the choice is expected to leave, from here. */
  readonly gain: number;
}

/** What is left when finishing fails: the set as it stands, else its parts, else nothing. */
export const salvageOf = ({ asItStands, partsNet }: Prospects): number =>
  asItStands?.mean ?? Math.max(0, partsNet ?? 0);

/**
 * Every choice with what it is expected to leave, looking forward only: money and hours already
 * spent are the same under each, and so in none. A finish that fails leaves the set as it stands.
 *
 * Source of the rule: the analysis of incremental cash flows in any textbook of engineering economy
 * (sunk costs are left out); the terms are our own.
 */
export function outcomesOf(prospects: Prospects): Outcome[] {
  const { finishes, asItStands, partsNet, spares, saleCostShare, successChance } = prospects;
  const salvage = salvageOf(prospects);
  const plain = (kind: OutcomeKind, worth: number | null): Outcome[] =>
    worth === null ? [] : [{ kind, standard: null, worth, premium: 0, cost: 0, gain: worth }];
  return [
    ...finishes.map(({ standard, value, expectedCost }): Outcome => {
      const worth = successChance * value.mean + (1 - successChance) * salvage;
      const premium = successChance * prospects.premium;
      const gain = worth + premium - expectedCost;
      return { kind: 'FINISH', standard, worth, premium, cost: expectedCost, gain };
    }),
    ...plain('LEAVE', asItStands?.mean ?? null),
    ...plain('SELL', asItStands && asItStands.mean * (1 - saleCostShare)),
    ...plain('PART_OUT', partsNet),
    ...plain('KEEP_FOR_SPARES', spares),
  ];
}

/** The best of some outcomes, the first of equals; null of none. */
export const bestOf = (outcomes: readonly Outcome[]): Outcome | null =>
  outcomes.reduce<Outcome | null>(
    (best, one) => (best === null || one.gain > best.gain ? one : best),
    null,
  );

/**
 * The most that it makes sense to spend from here on finishing: what it would then be worth, with
 * the premium, less what the best other choice leaves. Never below zero.
 */
export function mostToSpend(finish: Outcome, outcomes: readonly Outcome[]): number {
  const other = bestOf(outcomes.filter(({ kind }) => kind !== 'FINISH'));
  return Math.max(0, finish.worth + finish.premium - Math.max(0, other?.gain ?? 0));
}
