import { Entity, Index } from 'typeorm';
import {
  CountColumn,
  IdColumn,
  InstantColumn,
  JsonColumn,
  LargeCountColumn,
} from '../../db/columns.js';

/**
 * How an item stands, computed from its records in the same transaction as each write that bears
 * on it, so that lists filter and sort on it in SQL. Never typed in; `reglow recompute` rebuilds it.
 */
@Entity({ name: 'item_standing' })
@Index(['readinessRank', 'itemId'])
@Index(['investedSeconds', 'itemId'])
export class ItemStandingEntity {
  @IdColumn()
  itemId!: string;

  @InstantColumn()
  computedAt!: string;

  @CountColumn()
  investedSeconds!: number;

  /** What its sessions claim and what was counted for an earlier session of the same person. */
  @CountColumn()
  repeatedSeconds!: number;

  /** Hundredths of a percent; −1 when nothing is budgeted. */
  @CountColumn()
  completionBasisPoints!: number;

  @CountColumn()
  budgetedMinutes!: number;

  @CountColumn()
  earnedMinutes!: number;

  /** Hundredths of a percent; −1 when the model has no fit-out. */
  @CountColumn()
  completenessBasisPoints!: number;

  @CountColumn()
  requiredPositions!: number;

  @CountColumn()
  presentPositions!: number;

  /** 0 do not connect, 1 not ready, 2 checks due, 3 on-air ready (until `checksValidUntil`). */
  @CountColumn()
  readinessRank!: number;

  /** From this instant on, a rank of 3 counts as 2. */
  @InstantColumn({ nullable: true })
  checksValidUntil!: string | null;

  @CountColumn()
  openTasks!: number;

  /** Open tasks that have passed their pessimistic figure. */
  @CountColumn()
  refutedTasks!: number;

  @CountColumn()
  expectedRemainingMinutes!: number;

  /** Variance of the remaining work, in square minutes. */
  @LargeCountColumn()
  remainingSquareMinutes!: number;

  /** The whole answer with every basis, as the API shows it. */
  @JsonColumn()
  facts!: Record<string, unknown>;
}
