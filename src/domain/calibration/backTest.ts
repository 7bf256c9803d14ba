import { compareText } from '../compareText.js';
import { remainingHours } from '../estimates/remainingHours.js';
import { scaledEstimate } from '../forecast/scaledEstimate.js';
import { calibration, multiplierOf, ratedTask } from './calibration.js';
import type { FinishedTask } from './finishedTask.js';

/** TOO_FEW: not enough to say. Otherwise how the share within the p80s compares with 80 %. */
export type BackTestVerdict = 'TOO_FEW' | 'TOO_OPTIMISTIC' | 'AS_STATED' | 'TOO_CAUTIOUS';

export interface CalibrationPoint {
  /** The chance that was stated, 0 to 1. */
  readonly stated: number;
  /** The share of tasks that took no longer than the hours forecast at that chance. */
  readonly observed: number;
  /** One standard error of the share, were the stated chance right. */
  readonly standardError: number;
}

export interface BackTest {
  readonly taskCount: number;
  readonly verdict: BackTestVerdict;
  readonly curve: readonly CalibrationPoint[];
  /** Mean pinball loss over the points of the curve, in hours: the less the better. */
  readonly pinballHours: number;
  /** The same for the estimates as they were entered. */
  readonly uncalibratedPinballHours: number;
}

export const STATED_CHANCES = [0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 0.95] as const;
const FEWEST_TASKS = 10;

/**
 * What the forecasts would have said of each finished task before it began, knowing only tasks
 * finished before it, and how often they were right.
 *
 * Pinball loss: R. Koenker and G. Bassett, "Regression Quantiles", Econometrica 46(1), 1978.
 */
export function backTest(history: readonly FinishedTask[]): BackTest {
  const ordered = [...history].sort(
    (x, y) => x.finishedAtMs - y.finishedAtMs || compareText(x.id, y.id),
  );
  const count = ordered.length;
  const rated = ordered.map(ratedTask);
  const within = STATED_CHANCES.map(() => 0);
  let loss = 0;
  let uncalibratedLoss = 0;
  ordered.forEach((task, index) => {
    const factor = multiplierOf(calibration(rated.slice(0, index)), task.kind);
    const forecast = hoursOf(task, factor);
    const asEntered = hoursOf(task, 1);
    STATED_CHANCES.forEach((chance, point) => {
      const hours = forecast.hoursAt(chance);
      if (task.actualHours <= hours) within[point]! += 1;
      loss += pinball(chance, task.actualHours, hours);
      uncalibratedLoss += pinball(chance, task.actualHours, asEntered.hoursAt(chance));
    });
  });
  const values = Math.max(1, count * STATED_CHANCES.length);
  const curve = STATED_CHANCES.map((stated, point) => ({
    stated,
    observed: count === 0 ? 0 : within[point]! / count,
    standardError: count === 0 ? 0 : Math.sqrt((stated * (1 - stated)) / count),
  }));
  return {
    taskCount: count,
    verdict: verdictOf(count, curve),
    curve: count === 0 ? [] : curve,
    pinballHours: loss / values,
    uncalibratedPinballHours: uncalibratedLoss / values,
  };
}

const hoursOf = ({ estimate }: FinishedTask, factor: number) =>
  remainingHours({
    state: 'NOT_STARTED',
    estimate: scaledEstimate(estimate, factor),
    spentHours: 0,
  });

const pinball = (chance: number, actual: number, forecast: number): number =>
  actual >= forecast ? chance * (actual - forecast) : (1 - chance) * (forecast - actual);

/** Two standard errors: a right forecast is called wrong about once in twenty times. */
function verdictOf(count: number, curve: readonly CalibrationPoint[]): BackTestVerdict {
  const p80 = curve.find(({ stated }) => stated === 0.8);
  if (count < FEWEST_TASKS || p80 === undefined) return 'TOO_FEW';
  const off = p80.observed - p80.stated;
  if (Math.abs(off) <= 2 * p80.standardError) return 'AS_STATED';
  return off < 0 ? 'TOO_OPTIMISTIC' : 'TOO_CAUTIOUS';
}
