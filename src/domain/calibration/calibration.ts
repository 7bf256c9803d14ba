import type { FinishedTask } from './finishedTask.js';
import { shrinkGroups } from './shrinkGroups.js';
import { typicalHours } from './typicalHours.js';

/** What the history of one kind of work says of its estimates. */
export interface KindCalibration {
  readonly kind: string;
  readonly taskCount: number;
  /** Geometric mean of actual over typical hours. */
  readonly rawRatio: number;
  /** 0 to 1: how much the kind's own ratio counts against the collection's. */
  readonly weight: number;
  /** What its estimates are multiplied by. */
  readonly multiplier: number;
}

export interface Calibration {
  readonly taskCount: number;
  /** Geometric mean of actual over typical hours, of all tasks; null without history. */
  readonly rawRatio: number | null;
  /** 0 to 1: how much that ratio counts against 1. */
  readonly weight: number;
  /** What the estimates of a kind without history are multiplied by. */
  readonly multiplier: number;
  /** The multiplier lies within these with a chance of 95 %, on the assumptions made. */
  readonly multiplierLow: number;
  readonly multiplierHigh: number;
  readonly kinds: readonly KindCalibration[];
}

/**
 * One task's log ratio scatters by about half (a factor of 1.6 either way), and is so taken until
 * the history says otherwise: it counts as three values. Our own choice, no source.
 */
const PRIOR_SCATTER = { variance: 0.25, degrees: 3 };
/**
 * Collectors' log ratios scatter about 0 by 0.3: most run over or under by less than a third. One
 * collection cannot show how collections differ, so this is our own choice, no source.
 */
const COLLECTORS_VARIANCE = 0.3 ** 2;
/** A ratio beyond ten to one is a slip of recording, not of judgement; it counts as ten. */
const WIDEST_RATIO = 10;

/** One finished task, as the calibration takes it. */
export interface RatedTask {
  readonly kind: string;
  /** Log of actual over typical hours, within ten to one either way. */
  readonly logRatio: number;
}

export function ratedTask({ kind, estimate, actualHours }: FinishedTask): RatedTask {
  const ratio = actualHours / typicalHours(estimate);
  return { kind, logRatio: Math.log(Math.min(WIDEST_RATIO, Math.max(1 / WIDEST_RATIO, ratio))) };
}

/**
 * How far the collector's estimates were off, by kind of work: each kind's ratio is drawn towards
 * the collection's by as much as its history is thin, and the collection's towards 1.
 */
export function calibration(history: readonly RatedTask[]): Calibration {
  const byKind = new Map<string, number[]>();
  for (const { kind, logRatio } of history) {
    const ratios = byKind.get(kind);
    if (ratios === undefined) byKind.set(kind, [logRatio]);
    else ratios.push(logRatio);
  }
  const shrunk = shrinkGroups(byKind, PRIOR_SCATTER);
  const weight = COLLECTORS_VARIANCE / (COLLECTORS_VARIANCE + shrunk.grandMeanVariance);
  const collectionLog = weight * shrunk.grandMean;
  const halfWidth = 1.96 * Math.sqrt(COLLECTORS_VARIANCE * (1 - weight));
  return {
    taskCount: history.length,
    rawRatio: history.length === 0 ? null : Math.exp(shrunk.grandMean),
    weight,
    multiplier: Math.exp(collectionLog),
    multiplierLow: Math.exp(collectionLog - halfWidth),
    multiplierHigh: Math.exp(collectionLog + halfWidth),
    kinds: [...shrunk.groups]
      .map(([kind, group]) => ({
        kind,
        taskCount: group.count,
        rawRatio: Math.exp(group.mean),
        weight: group.weight,
        multiplier: Math.exp(group.weight * group.mean + (1 - group.weight) * collectionLog),
      }))
      .sort((x, y) => y.taskCount - x.taskCount || (x.kind < y.kind ? -1 : 1)),
  };
}

/** What estimates of a kind of work are multiplied by. */
export const multiplierOf = (of: Calibration, kind: string): number =>
  of.kinds.find((known) => known.kind === kind)?.multiplier ?? of.multiplier;
